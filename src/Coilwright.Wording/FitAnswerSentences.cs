using Coilwright.Core.Alignment;
using Coilwright.Core.Listings;
using Coilwright.Core.Measures;
using Coilwright.Core.Readings;

namespace Coilwright.Wording;

/// <summary>The answer to a buyer's "will it fit me?", in her words: no degrees, no letters, mm and inches.</summary>
public sealed class FitAnswerSentences(FitAnswer answer, Language spoken)
{
    private readonly Language _language = spoken.In(LengthUnits.Both);
    private readonly FitAnswerWords _words = spoken.FitAnswer;

    /// <summary>For which wrist.</summary>
    public string For() => Say(_words.For, ("wristMm", answer.On.WristMm));

    /// <summary>Yes, with other turns, or no, and why.</summary>
    public string Answer() => answer.Why switch
    {
        WhyNotFit.None => _words.Yes,
        WhyNotFit.FewerTurns => Say(_words.FewerTurns, ("turns", Turns(answer.On.Fit.TurnsWorn)), ("designed", Turns(answer.DesignedTurns))),
        WhyNotFit.MoreTurns => Say(_words.MoreTurns, ("turns", Turns(answer.On.Fit.TurnsWorn)), ("designed", Turns(answer.DesignedTurns))),
        WhyNotFit.HangsLoose => Say(_words.HangsLoose, ("roomMm", answer.On.Worn.RoomMm)),
        WhyNotFit.UnderOneTurn => Say(_words.UnderOneTurn, ("turns", _language.Number(answer.On.Fit.TurnsWorn, 2))),
        WhyNotFit.EndsTooFar => Say(_words.EndsTooFar, ("mm", answer.EndsShortMm)),
        _ => Say(_words.NotAsItIs, ("reasons", string.Join(_language.Report.ReasonsJoin,
            answer.On.Notices.Where(n => n.Severity == Severity.Stop).Select(n => _language.Say(n, NameOf).Short).Distinct()))),
    };

    /// <summary>How it sits on her, and what to order instead.</summary>
    public IEnumerable<string> More()
    {
        if (answer.Why == WhyNotFit.NotAsItIs) yield break;
        var fit = answer.On.Fit;
        if (answer.Why != WhyNotFit.UnderOneTurn)
        {
            yield return Say(_words.Turns, ("turns", Turns(fit.TurnsWorn)), ("from", Turns(fit.TurnsWornFrom)), ("to", Turns(fit.TurnsWornTo)));
            yield return Say(fit.EndsMeet ? _words.EndsMeet : fit.EndsOverlapMm > 0 ? _words.EndsOverlap : _words.EndsApart, ("mm", Math.Abs(fit.EndsOverlapMm)));
            if (answer.On.Focal is { } focal)
            {
                yield return Say(_words.Focal, ("bead", NameOf(focal.BeadId)), ("angleDeg", focal.AngleDeg));
                var (from, to) = (Angles.NormalizedDeg(focal.AngleFromDeg), Angles.NormalizedDeg(focal.AngleToDeg));
                if (_language.Place(from) != _language.Place(to)) yield return Say(_words.FocalBand, ("fromDeg", from), ("toDeg", to));
            }
            switch (answer.On.LiningUp.Word)
            {
                case LiningUpWord.LinesUp: yield return _words.LinesUp; break;
                case LiningUpWord.Between: yield return _words.Between; break;
                case LiningUpWord.Mixed: yield return _words.Mixed; break;
            }
        }
        if (answer.IsNearBorder) yield return Say(_words.NearBorder, ("bandMm", answer.BandMm));
        if (answer.OrderOtherSize)
            yield return Say(answer.Why == WhyNotFit.HangsLoose ? _words.OrderSmallerCoil : answer.MoreBeadsMm > 0 ? _words.OrderMore : _words.OrderLess,
                ("wristMm", answer.On.WristMm), ("mm", answer.MoreBeadsMm), ("designed", Turns(answer.DesignedTurns)));
    }

    /// <summary>The whole as plain text to copy.</summary>
    public string Text() => string.Join('\n', new[] { answer.On.Piece.Title, $"{For()} {Answer()}" }.Concat(More()));

    private string NameOf(string id) => answer.On.Piece.Beads.FirstOrDefault(b => b.Id == id)?.Name ?? id;

    private string Turns(double turns) => _language.Number(turns, 1);

    private string Say(string template, params ReadOnlySpan<(string Name, object? Value)> values) => _language.Sentence(template, values);
}
