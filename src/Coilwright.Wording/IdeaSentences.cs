using System.Collections.Immutable;
using System.Globalization;
using Coilwright.Core.Arrangement;
using Coilwright.Core.Editing;
using Coilwright.Core.Measures;

namespace Coilwright.Wording;

/// <summary>What came of looking for a better order, in a maker's words.</summary>
public sealed class IdeaSentences(Arranged arranged, Language language)
{
    // What is less is not told: lengths are shown in tenths of a millimetre, wire is cut by the millimetre, and a degree is half a millimetre on a wrist.
    private const double LeastShownMm = 0.05, LeastCutMm = 0.5, LeastTurnDeg = 1;

    private readonly IdeaWords _words = language.Ideas;
    private readonly BeadNames _names = new(arranged.Before);

    /// <summary>How the piece does as it is, and why there are no ideas where there are none.</summary>
    public IEnumerable<string> Now()
    {
        if (arranged.WhyNone is NoIdeas.NoWish or NoIdeas.NoGap)
        {
            yield return arranged.WhyNone == NoIdeas.NoWish ? _words.NoWish : _words.NoGap;
            yield break;
        }
        yield return language.Sentence(_words.Now, ("against", arranged.BeforeJudged.Loss), ("wrists", arranged.Wrists.Length));
        yield return Failing(arranged.BeforeJudged.FailingMm, _words.NowHolds, _words.NowFails);
        if (arranged.WhyNone == NoIdeas.NoneAllowed) yield return language.Sentence(_words.NoneAllowed, ("rules", string.Join(_words.And, arranged.Conflict.Select(Rule))));
        if (arranged.WhyNone == NoIdeas.NoneBetter) yield return _words.NoneBetter;
    }

    /// <summary>What an idea is called.</summary>
    public string Heading(Idea idea) => idea.Kind switch
    {
        IdeaKind.SmallestCure => _words.SmallestCure,
        IdeaKind.FewBeads => _words.FewBeads,
        _ => _words.Best,
    };

    /// <summary>What an idea puts in and takes out, run by run.</summary>
    public IEnumerable<string> Changes(Idea idea) => idea.Edit.Runs.Select(Change);

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
        _ => language.Sentence(_words.PerhapsBetter, ("gap", arranged.Best!.GapToBound)),
    };

    /// <summary>What was looked through.</summary>
    public IEnumerable<string> Details()
    {
        if (arranged.WhyNone is NoIdeas.NoWish or NoIdeas.NoGap) yield break;
        yield return language.Sentence(_words.Ways, ("gaps", arranged.Gaps.Length), ("ways", WaysText));
        if (arranged.WasStopped) yield return _words.Stopped;
    }

    private string WaysText => arranged.Ways < 1e6 ? arranged.Ways.ToString("0", CultureInfo.InvariantCulture)
        : "10^" + Math.Floor(Math.Log10(arranged.Ways)).ToString("0", CultureInfo.InvariantCulture);

    private string Change(RunCount run)
    {
        var piece = arranged.Before.Piece;
        var bead = _names.Of(piece.Beads[piece.Order.Kinds[run.First]].Id);
        var where = new GapPlaces(arranged.Before, language).Of(run.First, run.Count);
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

    private string Rule(CountRule rule) => rule.BeadId is { } id ? language.Fill(_words.RuleOnHand, ("bead", _names.Of(id))) : _words.RuleLength;
}
