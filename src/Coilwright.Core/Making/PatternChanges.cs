using System.Collections.Immutable;
using Coilwright.Core.Pieces;
using Coilwright.Core.Readings;

namespace Coilwright.Core.Making;

/// <summary>A kind of bead of which another count is strung, or that has another key letter.</summary>
/// <param name="Bead">Its id.</param>
/// <param name="OldLetter">Its letter before; null where it was not strung.</param>
/// <param name="NewLetter">Its letter now; null where it is not strung any more.</param>
/// <param name="Old">How many were strung, 0 or more.</param>
/// <param name="New">How many are.</param>
public sealed record KindChange(string Bead, string? OldLetter, string? NewLetter, int Old, int New)
{
    /// <summary>Whether it is strung in both, under another letter.</summary>
    public bool HasOtherLetter => OldLetter is not null && NewLetter is not null && OldLetter != NewLetter;
}

/// <summary>A figure that a pattern tells of the whole piece.</summary>
public enum PatternFigure
{
    /// <summary>The wrist that it is for, mm.</summary>
    WristMm,

    /// <summary>Wire to cut, mm.</summary>
    CutMm,

    /// <summary>Loops to cut.</summary>
    LoopsToCut,

    /// <summary>Wire under all beads with the coil at rest, mm.</summary>
    BeadedMm,

    /// <summary>Turns worn.</summary>
    TurnsWorn,

    /// <summary>Round on the inside, off the wrist, mm.</summary>
    InsideMm,

    /// <summary>How far the ends lie over each other, mm; negative is a gap.</summary>
    EndsOverlapMm,

    /// <summary>Mass, g.</summary>
    MassG,
}

/// <summary>A figure that is another one.</summary>
/// <param name="Figure">Which.</param>
/// <param name="Old">What it was; null where it was not known.</param>
/// <param name="New">What it is; null likewise.</param>
public sealed record FigureChange(PatternFigure Figure, double? Old, double? New);

/// <summary>A step that is another one.</summary>
/// <param name="Old">The step before; null where it is new.</param>
/// <param name="New">The step now; null where it is gone.</param>
public sealed record StepChange(PatternStep? Old, PatternStep? New)
{
    /// <summary>Whether something else is done: other beads, another letter, another length of wire, words of hers. False where it only comes at another place.</summary>
    public required bool DoesOtherwise { get; init; }

    /// <summary>Whether it comes before a step that it came after.</summary>
    public required bool IsMoved { get; init; }

    /// <summary>Her own words for it before; null where she wrote none.</summary>
    public string? OldWords { get; init; }

    /// <summary>Her own words for it now; null likewise.</summary>
    public string? NewWords { get; init; }
}

/// <summary>A step that is done as before, with other figures to check it by.</summary>
/// <param name="Old">The step before.</param>
/// <param name="New">The step now.</param>
public sealed record CheckChange(PatternStep Old, PatternStep New);

/// <summary>What a pattern says otherwise than an earlier version of it.</summary>
/// <remarks>
/// <para>Whoever holds the old pattern strikes the old steps that are listed, writes each new one in at its number, and has the new pattern: steps that are not listed keep their
/// order. Counts that are not listed are as they were.</para>
/// <para>Beads are the same when their ids are: a bead of another id is another bead. Steps are known again as a maker's words are (<see cref="StepTexts"/>). Figures differ
/// from a millionth on; which of them a reader sees at all is the language's business.</para>
/// </remarks>
/// <param name="Old">The version before.</param>
/// <param name="New">The version now.</param>
public sealed record PatternChanges(Reckoned Old, Reckoned New)
{
    private const double Least = 1e-6;

    /// <summary>Kinds of bead with another count or letter, in the order of the new letters, then those that are gone.</summary>
    public required ImmutableArray<KindChange> Kinds { get; init; }

    /// <summary>Figures of the whole.</summary>
    public required ImmutableArray<FigureChange> Figures { get; init; }

    /// <summary>Steps, in the order in which they are strung; one that is gone stands before the step that took its number.</summary>
    public required ImmutableArray<StepChange> Steps { get; init; }

    /// <summary>Steps whose figures to check by alone are others, in the order in which they are strung.</summary>
    public required ImmutableArray<CheckChange> Checks { get; init; }

    /// <summary>Testers' notes that are settled now and were not before.</summary>
    public required ImmutableArray<TesterNote> Settled { get; init; }

    /// <summary>Compares two versions.</summary>
    public static PatternChanges Of(Reckoned old, Reckoned now)
    {
        var kinds = KindsOf(old, now);
        var (steps, checks) = StepsOf(old, now, kinds);
        return new PatternChanges(old, now)
        {
            Kinds = kinds,
            Figures = [.. FiguresOf(old).Zip(FiguresOf(now)).Where(f => Differ(f.First.Value, f.Second.Value)).Select(f => new FigureChange(f.First.Figure, f.First.Value, f.Second.Value))],
            Steps = steps,
            Checks = checks,
            Settled = [.. now.Piece.Pattern.Testers.Where(t => t.Settled && !old.Piece.Pattern.Testers.Any(o => o.Settled && o.Note == t.Note && o.By == t.By))],
        };
    }

    private static ImmutableArray<KindChange> KindsOf(Reckoned old, Reckoned now)
    {
        var (before, after) = (old.Counts.ToDictionary(k => k.Bead.Id, StringComparer.Ordinal), now.Counts.ToDictionary(k => k.Bead.Id, StringComparer.Ordinal));
        return [.. now.Counts.Select(k => k.Bead.Id).Concat(old.Counts.Select(k => k.Bead.Id).Where(id => !after.ContainsKey(id)))
            .Select(id => (Id: id, Old: before.GetValueOrDefault(id), New: after.GetValueOrDefault(id)))
            .Where(k => k.Old?.Count != k.New?.Count || k.Old?.Letter != k.New?.Letter)
            .Select(k => new KindChange(k.Id, k.Old?.Letter, k.New?.Letter, k.Old?.Count ?? 0, k.New?.Count ?? 0))];
    }

    private static IEnumerable<(PatternFigure Figure, double? Value)> FiguresOf(Reckoned r) =>
    [
        (PatternFigure.WristMm, r.WristMm), (PatternFigure.CutMm, r.Wire.CutMm), (PatternFigure.LoopsToCut, r.Wire.LoopsToCut), (PatternFigure.BeadedMm, r.RelaxedBeadedMm),
        (PatternFigure.TurnsWorn, r.Fit.TurnsWorn), (PatternFigure.InsideMm, r.Fit.InsideRelaxedMm), (PatternFigure.EndsOverlapMm, r.Fit.EndsOverlapMm), (PatternFigure.MassG, r.Mass.TotalG),
    ];

    private static (ImmutableArray<StepChange>, ImmutableArray<CheckChange>) StepsOf(Reckoned old, Reckoned now, ImmutableArray<KindChange> kinds)
    {
        var (before, after) = (PatternSteps.Of(old), PatternSteps.Of(now));
        // An old step is found again as words would be that were tied to it; its id tells it from all others.
        var ofNew = StepTexts.Match(after, [.. before.Select((_, i) => new StepText(StepTexts.Anchor(before, i, old.Piece), ""))], now.Piece).OfStep;
        var placeOf = before.Select((step, i) => (step.Id, i)).ToDictionary(s => s.Id, s => s.i, StringComparer.Ordinal);
        int[] oldOf = [.. ofNew.Select(text => text is null ? -1 : placeOf[text.At.Step])];
        var inOrder = Ascending(oldOf);
        var (oldWords, newWords) = (StepTexts.Match(before, old.Piece.Pattern.Words, old.Piece).OfStep, StepTexts.Match(after, now.Piece.Pattern.Words, now.Piece).OfStep);
        var relettered = kinds.Where(k => k.HasOtherLetter).Select(k => k.Bead).ToHashSet(StringComparer.Ordinal);
        var (steps, checks) = (ImmutableArray.CreateBuilder<StepChange>(), ImmutableArray.CreateBuilder<CheckChange>());
        var kept = oldOf.ToHashSet();
        for (var n = 0; n <= after.Length; n++)
        {
            if (n < before.Length && !kept.Contains(n)) Gone(n);
            if (n == after.Length)
            {
                for (var o = n + 1; o < before.Length; o++)
                    if (!kept.Contains(o)) Gone(o);
                break;
            }
            if (oldOf[n] < 0)
            {
                steps.Add(new StepChange(null, after[n]) { DoesOtherwise = true, IsMoved = false, NewWords = newWords[n]?.Text });
                continue;
            }
            var (was, here) = (before[oldOf[n]], after[n]);
            var (oldText, newText) = (oldWords[oldOf[n]]?.Text, newWords[n]?.Text);
            var otherwise = oldText != newText || (here.Strung is { } strung
                ? StepTexts.Strings(was, old.Piece) != StepTexts.Strings(here, now.Piece) || strung.Group != was.Strung!.Group || strung.Kinds.Any(k => relettered.Contains(now.Piece.Beads[k].Id))
                : WireOf(here.Action, old).Zip(WireOf(here.Action, now)).Any(w => Differ(w.First, w.Second)));
            if (otherwise || !inOrder[n]) steps.Add(new StepChange(was, here) { DoesOtherwise = otherwise, IsMoved = !inOrder[n], OldWords = oldText, NewWords = newText });
            // The last bead is said otherwise than one that others follow.
            else if (was.BeadsSoFar != here.BeadsSoFar || Differ(was.LengthSoFarMm, here.LengthSoFarMm)
                || (was.BeadsSoFar == old.Piece.Order.Count) != (here.BeadsSoFar == now.Piece.Order.Count)) checks.Add(new CheckChange(was, here));
        }
        return (steps.ToImmutable(), checks.ToImmutable());

        void Gone(int o) => steps.Add(new StepChange(before[o], null) { DoesOtherwise = true, IsMoved = false, OldWords = oldWords[o]?.Text });
    }

    // What a step of wire and ends is told by.
    private static double?[] WireOf(StepAction action, Reckoned r) => action switch
    {
        StepAction.CutWire => [r.Wire.LoopsToCut, r.Wire.CutMm, r.Wire.BeadedMm, r.Wire.EndsMm],
        StepAction.FirstEnd => [(double)r.Piece.Ends.Start.Finish, r.Piece.Ends.Start.InsideMm, r.Piece.Ends.Start.WireUsedMm(r.Piece.Wire.WireMm), r.Piece.Ends.Start.DangleMm],
        StepAction.LastEnd => [(double)r.Piece.Ends.Finish.Finish, r.Piece.Ends.Finish.InsideMm, r.Wire.TrimFinishMm, r.Piece.Ends.Finish.DangleMm],
        _ => [],
    };

    private static bool Differ(double? one, double? other) => one is { } a && other is { } b ? Math.Abs(a - b) > Least : one is null != other is null;

    // Which of the new steps keep their order: as many as can, so that as few as can are told to be moved. Those that are new have none.
    private static bool[] Ascending(int[] oldOf)
    {
        var (longest, from) = (new int[oldOf.Length], new int[oldOf.Length]);
        var best = -1;
        for (var n = 0; n < oldOf.Length; n++)
        {
            if (oldOf[n] < 0) continue;
            (longest[n], from[n]) = (1, -1);
            for (var b = 0; b < n; b++)
                if (oldOf[b] >= 0 && oldOf[b] < oldOf[n] && longest[b] >= longest[n]) (longest[n], from[n]) = (longest[b] + 1, b);
            if (best < 0 || longest[n] > longest[best]) best = n;
        }
        var kept = new bool[oldOf.Length];
        for (var n = best; n >= 0; n = from[n]) kept[n] = true;
        return kept;
    }
}
