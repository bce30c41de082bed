using System.Collections.Immutable;
using System.Globalization;
using Coilwright.Core.Arrangement;
using Coilwright.Core.Editing;
using Coilwright.Core.Measures;
using Coilwright.Core.Pieces;
using Coilwright.Core.Stringing;
using Coilwright.Core.StringingMaterials.MemoryWire;

namespace Coilwright.Wording;

/// <summary>What came of looking for a better order, in a maker's words.</summary>
public sealed class IdeaSentences(Arranged arranged, Language language)
{
    // What is less is not told: lengths are shown in tenths of a millimetre, wire is cut by the millimetre, and a degree is half a millimetre on a wrist.
    private const double LeastShownMm = 0.05, LeastCutMm = 0.5, LeastTurnDeg = 1;

    private readonly IdeaWords _words = language.Ideas;
    private readonly BeadNames _names = new(arranged.Before);

    private bool ByMean => arranged.JudgedBy == JudgedBy.Mean;

    /// <summary>How the piece does as it is, and why there are no ideas where there are none.</summary>
    public IEnumerable<string> Now()
    {
        if (arranged.WhyNone is NoIdeas.NoWish or NoIdeas.NoGap)
        {
            yield return arranged.WhyNone == NoIdeas.NoWish ? _words.NoWish : _words.NoGap;
            yield break;
        }
        yield return language.Sentence(ByMean ? _words.Now : _words.NowNineteen, ("against", arranged.BeforeJudged.Loss), ("wrists", arranged.Wrists.Length));
        yield return Failing(arranged.BeforeJudged.FailingMm, _words.NowHolds, _words.NowFails);
        if (arranged.WhyNone == NoIdeas.NoneAllowed)
            yield return arranged.Conflict.Length switch
            {
                0 => _words.NoneFound,
                1 => language.Sentence(_words.OneNotKept, ("rule", Rule(arranged.Conflict[0]))),
                _ => language.Sentence(_words.NoneAllowed, ("rules", string.Join(_words.And, arranged.Conflict.Select(Rule)))),
            };
        if (arranged.WhyNone == NoIdeas.None && !arranged.Conflict.IsEmpty)
            yield return language.Sentence(_words.OnlyOtherwise, ("rules", string.Join(_words.And, arranged.Conflict.Select(Rule))));
        if (arranged.WhyNone == NoIdeas.NoneBetter) yield return _words.NoneBetter;
    }

    /// <summary>What an idea is called.</summary>
    public string Heading(Idea idea) => idea.Kind switch
    {
        IdeaKind.SmallestCure => _words.SmallestCure,
        IdeaKind.FewBeads => _words.FewBeads,
        IdeaKind.OneSwap => _words.OneSwap,
        IdeaKind.StandIn => _words.StandIn,
        IdeaKind.OtherOrder => _words.OtherOrder,
        IdeaKind.OtherStart => _words.OtherStart,
        IdeaKind.OtherCoil => _words.OtherCoil,
        _ => _words.Best,
    };

    /// <summary>What an idea moves, puts in and takes out, one after the other.</summary>
    public IEnumerable<string> Changes(Idea idea)
    {
        var order = arranged.Before.Piece.Order;
        if (idea.Edit is ReplaceEverywhere replace)
            yield return language.Sentence(_words.InsteadEverywhere, ("bead", _names.Of(replace.Bead)), ("with", _names.Of(replace.With)), ("beads", idea.Changed));
        if (idea.Edit is SetWearer worn)
        {
            var by = Angles.NormalizedDeg(worn.Wearer.StartAngleDeg - arranged.Before.Piece.Wearer.StartAngleDeg);
            yield return language.Sentence(by > 0 ? _words.StartOn : _words.StartBack, ("by", by), ("angleDeg", worn.Wearer.StartAngleDeg));
        }
        if (idea.Edit is SetWire wired)
        {
            var coil = wired.Wire;
            yield return language.Sentence(coil.LoopMm > arranged.Before.Piece.Wire.LoopMm ? _words.LargerCoil : _words.SmallerCoil, ("mm", coil.SizeMm),
                ("how", coil.Datum switch { CoilDatum.Inside => _words.CoilInside, CoilDatum.CentreLine => _words.CoilCentre, _ => _words.CoilLoop }));
        }
        if (idea.Edit is Restring restring)
        {
            foreach (var swap in restring.Swaps)
            {
                yield return language.Sentence(_words.ChangePlaces, ("one", Row(order, swap.First, swap.Count)), ("other", Row(order, swap.OtherFirst, swap.OtherCount)));
                order = RowSwaps.Done(order, [swap]);
            }
            foreach (var standIn in restring.StandIns)
                yield return language.Sentence(_words.Instead, ("bead", _names.Of(standIn.Bead)), ("with", _names.Of(standIn.With)), ("row", Row(order, standIn.First, standIn.Count)));
        }
        foreach (var run in idea.Runs) yield return Change(run, order);
    }

    /// <summary>What an idea brings and costs.</summary>
    public IEnumerable<string> Effects(Idea idea)
    {
        yield return language.Sentence(_words.Brings, ("before", arranged.BeforeJudged.Loss), ("after", idea.Judged.Loss));
        yield return Failing(idea.Judged.FailingMm, _words.Holds, _words.Fails);
        var longer = idea.After.Lie.BeadedMm - arranged.Before.Lie.BeadedMm;
        yield return Math.Abs(longer) < LeastShownMm ? _words.SameLength
            : language.Sentence(longer > 0 ? _words.Longer : _words.Shorter, ("mm", longer));
        if (idea.After.Wire.CutMm is var after && Math.Abs(after - arranged.Before.Wire.CutMm) >= LeastCutMm)
            yield return language.Sentence(_words.Cut, ("before", arranged.Before.Wire.CutMm), ("after", after));
        if (idea.After.Focal is { } focal && arranged.Before.Focal is { } was && (focal.Turn != was.Turn || Math.Abs(Angles.NormalizedDeg(focal.AngleDeg - was.AngleDeg)) >= LeastTurnDeg))
            yield return language.Sentence(_words.Focal, ("turn", focal.Turn), ("angleDeg", focal.AngleDeg));
    }

    /// <summary>What is known of better or smaller ones.</summary>
    public string Proof(Idea idea) => (idea.Kind, idea.IsProven) switch
    {
        (IdeaKind.SmallestCure, true) => _words.NoSmaller,
        (IdeaKind.SmallestCure, false) => _words.PerhapsSmaller,
        (IdeaKind.FewBeads, true) => _words.NoBetterFew,
        (IdeaKind.Best, true) => _words.NoBetter,
        (IdeaKind.FewBeads, false) => _words.PerhapsAnother,
        (IdeaKind.OneSwap, true) => _words.NoBetterSwap,
        (IdeaKind.OneSwap, false) => _words.PerhapsAnotherSwap,
        (IdeaKind.StandIn, _) => _words.NoBetterStandIn,
        (IdeaKind.OtherStart, _) when arranged.Before.Piece.Wishes.Free.StartAngle is { } range =>
            language.Sentence(_words.NoBetterStart, ("from", range.FromDeg), ("to", range.ToDeg), ("step", range.StepDeg)),
        (IdeaKind.OtherCoil, _) => _words.NoBetterCoil,
        (IdeaKind.OtherOrder, _) when !ByMean => _words.PerhapsAnotherNineteen,
        (IdeaKind.Best, false) when !ByMean => _words.PerhapsBetterNineteen,
        (IdeaKind.OtherOrder, _) => arranged.BestOrder is { IsProven: true } ? _words.NoBetterOrder : _words.PerhapsAnotherOrder,
        _ => language.Sentence(_words.PerhapsBetter, ("gap", arranged.Best!.GapToBound)),
    };

    /// <summary>What was looked through.</summary>
    public IEnumerable<string> Details()
    {
        if (arranged.WhyNone is NoIdeas.NoWish or NoIdeas.NoGap) yield break;
        if (!arranged.Gaps.IsEmpty) yield return language.Sentence(_words.Ways, ("gaps", arranged.Gaps.Length), ("ways", WaysText(arranged.Ways)));
        if (arranged.FreeGroups > 0) yield return language.Sentence(_words.GroupWays, ("groups", arranged.FreeGroups), ("ways", WaysText(arranged.GroupWays)));
        if (arranged.WasStopped) yield return _words.Stopped;
    }

    /// <summary>How many beads change and what then lies against the wish at best, by the tables; empty where there is nothing to weigh.</summary>
    public IEnumerable<(string Beads, string Loss)> Front()
    {
        if (!ByMean || arranged.Best is not { } best || arranged.LeastLossByChange.Length < 2) yield break;
        foreach (var (loss, changed) in arranged.LeastLossByChange.Select((loss, changed) => (loss, changed)))
            if (double.IsFinite(loss)) yield return (changed == 0 ? _words.FrontNone : changed.ToString(CultureInfo.InvariantCulture), Percent(loss));
        var closed = Percent(best.Loss) == Percent(best.Bound);
        yield return (_words.FrontAny, closed ? Percent(best.Loss) : language.Fill(_words.FrontBound, ("loss", Percent(best.Loss)), ("bound", Percent(best.Bound))));

        // A bead of a hundred shows in the first decimal.
        string Percent(double share) => language.Number(100 * share, 1) + " %";
    }

    private static string WaysText(double ways) => ways < 1e6 ? ways.ToString("0", CultureInfo.InvariantCulture)
        : "10^" + Math.Floor(Math.Log10(ways)).ToString("0", CultureInfo.InvariantCulture);

    // A group by its name and where it stands, or beads by theirs.
    private string Row(StringingOrder order, int first, int count)
    {
        var group = order.Groups.FirstOrDefault(g => g.First == first && g.Count == count);
        // Counted among the groups that stand in no other.
        var outermost = order.Groups.Where(g => !order.Groups.Any(o => o != g && o.First <= g.First && o.End >= g.End && o.Count > g.Count)).OrderBy(g => g.First).ToList();
        return language.Fill(_words.Row, ("name", group?.Name ?? _names.Of(arranged.Before.Piece.Beads[order.Kinds[first]].Id)),
            ("place", group is null ? null : outermost.FindIndex(g => g.First == first) + 1), ("first", first + 1), ("last", count > 1 ? first + count : null), ("one", count > 1 ? null : first + 1));
    }

    private string Change(RunCount run, StringingOrder order)
    {
        var bead = _names.Of(arranged.Before.Piece.Beads[order.Kinds[run.First]].Id);
        var where = new GapPlaces(arranged.Before, language).Of(run.First, run.Count, order);
        return language.Sentence(run.To > run.Count ? _words.More : _words.Fewer, ("by", Math.Abs(run.To - run.Count)), ("to", run.To), ("bead", bead), ("where", where));
    }

    private string Failing(ImmutableArray<double> wrists, string none, string some) => wrists.IsEmpty ? none
        : language.Sentence(some, ("wrists", string.Join(_words.And, Stretches(wrists).Select(s => s.From == s.To ? language.Fill("{mm:exact}", ("mm", s.From))
            : language.Fill("{from:mm}", ("from", s.From)) + " – " + language.Fill("{to:exact}", ("to", s.To))))));

    // Wrists that stand next to each other among those looked at are told as one stretch.
    private IEnumerable<(double From, double To)> Stretches(ImmutableArray<double> wrists)
    {
        var all = arranged.Wrists.Select(w => w.WristMm).Distinct().Order().ToArray();
        for (var i = 0; i < all.Length;)
        {
            if (!wrists.Contains(all[i]))
            {
                i++;
                continue;
            }
            var first = i;
            while (i < all.Length && wrists.Contains(all[i])) i++;
            yield return (all[first], all[i - 1]);
        }
    }

    private string Rule(CountRule rule) => rule switch
    {
        { BeadId: { } id } => language.Fill(_words.RuleOnHand, ("bead", _names.Of(id))),
        { Rule: { } of } => new RuleSentences(language, _names.Of).Of(of),
        { Code: "focal" } => language.Fill(_words.RuleFocal, ("withinDeg", arranged.Before.Piece.Wishes.FocalWithinDeg)),
        _ => arranged.Before.Piece.Wishes.Free.Turns is { } turns ? language.Fill(_words.RuleTurns, ("least", turns.Least), ("most", turns.Most)) : _words.RuleLength,
    };
}
