using System.Collections.Immutable;
using Coilwright.Core.Fit;
using Coilwright.Core.Measures;
using Coilwright.Core.Readings;

namespace Coilwright.Wording;

/// <summary>One reading in words.</summary>
/// <param name="Name">Its name for programs, as <c>fit</c>.</param>
/// <param name="Heading">Its heading.</param>
/// <param name="Says">What it comes to: one sentence.</param>
/// <param name="More">What else there is to say of it.</param>
public sealed record ReadingInWords(string Name, string Heading, string Says, ImmutableArray<string> More);

/// <summary>The readings of a piece in a maker's words, for a page or a report to lay out.</summary>
/// <remarks>Chooses sentences by the readings and fills them; reckons nothing.</remarks>
public sealed class ReadingSentences(Reckoned reckoned, Language language, ReckonRequest? request = null)
{
    // A band narrower than this is nothing to tell: a cut end is filed by as much.
    private const double LeastBandMm = 2;

    // A focal or a repeat less than half a millimetre off is on its place as far as anyone can see or bend.
    private const double OnPlaceWithinMm = 0.5;

    private readonly ReportWords _words = language.Report;
    private readonly BeadNames _names = new(reckoned);

    /// <summary>What the piece is.</summary>
    public IEnumerable<string> Piece()
    {
        yield return Say(_words.ForWrist, ("wristMm", reckoned.WristMm));
        yield return Say(_words.BeadsOnWire, ("beads", reckoned.Piece.Order.Count), ("kinds", reckoned.Counts.Length),
            ("wireMm", reckoned.Piece.Wire.WireMm), ("gauge", reckoned.Piece.Wire.GaugeName));
    }

    /// <summary>The readings that a maker asks for first: fit, focal, lining up, weight, wire.</summary>
    public IEnumerable<ReadingInWords> Main()
    {
        yield return new("fit", _words.Fit, Fits(), [.. FitMore()]);
        if (reckoned.Focal is { } focal) yield return new("focal", _words.Focal, FocalLies(focal), [.. FocalMore(focal)]);
        yield return new("liningUp", _words.LiningUp, language.Terms.LiningUp[reckoned.LiningUp.Word], [.. LiningUpMore()]);
        yield return new("wire", _words.Wire, language.LengthUp(reckoned.Wire.CutMm), [.. WireMore()]);
        yield return new("weight", _words.Weight, Weight(), [.. WeightMore()]);
    }

    /// <summary>Whether it fits, and if not, why.</summary>
    public string Fits() => reckoned.Fit.Fits
        ? Say(_words.Fits)
        : Say(_words.FitsNot, ("reasons", string.Join(_words.ReasonsJoin,
            reckoned.Notices.Where(n => n.Severity == Severity.Stop).Select(n => language.Say(n, _names.Of).Short).Distinct())));

    /// <summary>What else there is to say of the fit.</summary>
    public IEnumerable<string> FitMore()
    {
        var (fit, wrists) = (reckoned.Fit, reckoned.Wrists);
        yield return Say(_words.TurnsWorn, ("turns", Turns(fit.TurnsWorn)), ("from", Turns(fit.TurnsWornFrom)), ("to", Turns(fit.TurnsWornTo)));
        if (fit.TurnsDesigned is { } designed) yield return Say(_words.TurnsDesigned, ("turns", designed));
        yield return Say(fit.EndsMeet ? _words.EndsMeet : fit.EndsOverlapMm > 0 ? _words.EndsOverlap : _words.EndsApart, ("mm", Math.Abs(fit.EndsOverlapMm)),
            ("turns", fit.OverlapTurns));
        var spread = reckoned.Spread;
        if (spread.LengthMm.To - spread.LengthMm.From >= LeastBandMm)
            yield return Say(_words.LengthBand, ("fromMm", spread.LengthMm.From), ("toMm", spread.LengthMm.To));
        if (spread.FitsShare is { } share) yield return Say(_words.ComesOut, ("share", language.Number(share * 100, 0)));
        yield return Say(_words.FreeInside, ("mm", fit.InsideRelaxedMm));
        yield return Say(_words.Suits.Of(wrists), ("fromMm", wrists.FromMm), ("toMm", wrists.ToMm));
        foreach (var (hidden, end) in fit.EndLoopHidden.Zip([_words.Start, _words.Finish]))
            if (hidden is { } isHidden) yield return Say(isHidden ? _words.LoopHidden : _words.LoopShows, ("end", end));
    }

    /// <summary>Where the focal lies.</summary>
    public string FocalLies(FocalPlace focal) => Say(_words.FocalLies, ("bead", _names.Of(focal.BeadId)), ("number", focal.Index + 1),
        ("turn", focal.Turn), ("angleDeg", focal.AngleDeg));

    /// <summary>How far the focal lies from the top, and what centres it.</summary>
    public IEnumerable<string> FocalMore(FocalPlace focal)
    {
        if (Math.Abs(focal.OffMm) < OnPlaceWithinMm) yield return Say(_words.FocalCentred);
        else
        {
            yield return Say(focal.OffMm > 0 ? _words.FocalPast : _words.FocalBefore, ("mm", focal.OffMm));
            yield return Say(focal.OffMm > 0 ? _words.FocalTurnBack : _words.FocalTurnOn, ("mm", focal.OffMm), ("deg", focal.MoveStartDeg));
        }
        var (from, to) = (Angles.NormalizedDeg(focal.AngleFromDeg), Angles.NormalizedDeg(focal.AngleToDeg));
        if (language.Place(from) != language.Place(to)) yield return Say(_words.FocalBand, ("fromDeg", from), ("toDeg", to));
    }

    /// <summary>What else there is to say of how it lines up.</summary>
    public IEnumerable<string> LiningUpMore()
    {
        var report = reckoned.LiningUp;
        yield return Cover();
        if (reckoned.Spread.Cover is { } band) yield return Say(_words.CoverBand, ("from", band.From), ("to", band.To));
        if (report.GroupsAreRuns) yield return Say(_words.GroupsAreRuns);
        if (report.HiddenMm > OnPlaceWithinMm) yield return Say(_words.Hidden, ("mm", report.HiddenMm));
        if (reckoned.Repeat is { } repeat)
        {
            yield return Say(_words.Repeat, ("beads", repeat.Beads), ("mm", repeat.LengthMm));
            yield return Say(
                Math.Abs(repeat.DriftMm) < OnPlaceWithinMm ? _words.RepeatLinesUp : repeat.DriftMm > 0 ? _words.RepeatFallsBack : _words.RepeatRunsAhead,
                ("mm", repeat.DriftMm));
        }
        foreach (var sentence in WishOverWrists()) yield return sentence;
    }

    /// <summary>What the curve over wrists says: how it lines up on this wrist, and on which wrists that is not as wished.</summary>
    public IEnumerable<string> OverWrists() => [language.Terms.LiningUp[reckoned.LiningUp.Word], Cover(), .. WishOverWrists()];

    private string Cover() => reckoned.LiningUp.Cover is { } cover
        ? Say(_words.Cover, ("cover", cover))
        : Say(_words.NoCover, ("why", language.SayWhyNot(reckoned.LiningUp.WhyNull.GetValueOrDefault("cover", ""))));

    /// <summary>On which wrists it fails what she wishes of it, or that there are none; nothing where she has no wish.</summary>
    public IEnumerable<string> WishOverWrists()
    {
        foreach (var stretch in reckoned.Wrists.WishFails)
            yield return Say((stretch.FailsMix, stretch.FailsColumns) switch
            {
                (true, false) => _words.MixFails,
                (false, true) => _words.ColumnsFail,
                _ => _words.BothFail,
            }, ("fromMm", stretch.FromMm), ("toMm", stretch.ToMm));
        if (reckoned.Wrists.WishFails.IsEmpty && reckoned.Piece.Wishes.AnyOfLiningUp)
            yield return Say(_words.WishMet, ("fromMm", reckoned.Curve[0].WristMm), ("toMm", reckoned.Curve[^1].WristMm));
    }

    /// <summary>What else there is to say of the wire to cut.</summary>
    public IEnumerable<string> WireMore()
    {
        yield return Say(_words.Loops, ("loops", reckoned.Wire.LoopsToCut));
        foreach (var sentence in TrimAndLeftOver()) yield return sentence;
    }

    /// <summary>Where to trim, and what is left over of the wire that was cut.</summary>
    public IEnumerable<string> TrimAndLeftOver()
    {
        var wire = reckoned.Wire;
        yield return Say(_words.Trim, ("startMm", wire.TrimStartMm), ("finishMm", wire.TrimFinishMm));
        if (wire.GripMm == 0) yield return Say(_words.NothingForPliers);
        if (wire.SlackMm is { } slack) yield return Say(slack < 0 ? _words.CutShort : _words.LeftOver, ("mm", slack));
    }

    /// <summary>What it weighs, or why that is not known.</summary>
    public string Weight()
    {
        var mass = reckoned.Mass;
        return mass.TotalG is { } total
            ? Say(_words.WeighsInAll, ("total", Grams(total)), ("perTurn", Grams(mass.PerTurnG!.Value)), ("beads", Grams(mass.BeadsG!.Value)),
                ("wire", Grams(mass.WireG!.Value)))
            : Say(_words.WeightUnknown, ("why", language.SayWhyNot(mass.BeadsG is null ? WhyNotCodes.MassUnknown : WhyNotCodes.SteelUnknown)));
    }

    /// <summary>What it weighs for the post, where that is known.</summary>
    public IEnumerable<string> WeightMore()
    {
        if (reckoned.Mass.PostageG is { } grams) yield return Say(_words.ForThePost, ("grams", grams));
    }

    /// <summary>The engine's own figures, for whoever wants them.</summary>
    public IEnumerable<string> Details()
    {
        var (worn, report) = (reckoned.Worn, reckoned.LiningUp);
        yield return Say(_words.CoilAtRest, ("loopMm", reckoned.Piece.Wire.LoopMm));
        yield return Say(_words.WornCircumference, ("mm", Number(worn.CircumferenceMm)), ("bandMm", Number(worn.BandMm)),
            ("by", language.Terms.WornBy[worn.By]));
        yield return Say(_words.WirePerTurn, ("mm", Number(worn.WirePerTurnMm)), ("pitchMm", Number(worn.PitchMm)),
            ("reachMm", Number(worn.BearingReachMm)));
        if (report.Cover is not null || report.CoverExact is not null)
            yield return Say(_words.CoverDetail, ("cover", Ratio(report.Cover)), ("exact", Ratio(report.CoverExact)),
                ("averagingMm", Number(worn.AveragingMm)));
        if (report.Share is not null)
            yield return Say(_words.ShareDetail, ("share", Ratio(report.Share)), ("chance", Ratio(report.Chance)), ("relative", Ratio(report.Relative)));
        if (report.StrictRelative is not null) yield return Say(_words.StrictDetail, ("strict", Ratio(report.StrictRelative)));
        if (report.Rank is { } rank)
            yield return Say(_words.RankDetail, ("rank", Ratio(rank)), ("lower", language.Number(rank * 100, 0)), ("seed", (request ?? new ReckonRequest()).Seed));
        yield return Say(_words.SpreadDetail, ("draws", reckoned.Spread.Draws), ("sdMm", Number(reckoned.Spread.LengthSdMm)));
        if (reckoned.Strength is { } s)
            yield return Say(_words.StrengthDetail, ("moment", Number(s.OpeningMomentNmm)), ("stress", language.Number(s.StressMPa, 0)),
                ("strength", s.LeastStrengthMPa is { } least ? language.Number(least, 0) : null));
        foreach (var missing in report.WhyNull.GroupBy(w => w.Value, w => w.Key))
            yield return Say(_words.NotHad, ("names", string.Join(", ", missing)), ("why", language.SayWhyNot(missing.Key)));
    }

    private string Say(string template, params ReadOnlySpan<(string Name, object? Value)> values) => language.Sentence(template, values);

    private string Turns(double turns) => language.Number(turns, 2);

    private string Grams(double grams) => language.Number(grams, 1);

    private string Number(double value) => language.Number(value, 2);

    private string Ratio(double? value) => value is { } v ? language.Number(v, 3) : "-";
}
