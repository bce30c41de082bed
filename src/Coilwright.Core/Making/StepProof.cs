using System.Collections.Frozen;
using System.Collections.Immutable;
using Coilwright.Core.Pieces;
using Coilwright.Core.Readings;

namespace Coilwright.Core.Making;

/// <summary>A text of a pattern, and what does not agree between it and the piece.</summary>
/// <param name="Where">The step's id, or the name of a part of the pattern's notes.</param>
/// <param name="Text">The text.</param>
/// <param name="Marks">What does not agree; never empty in a list of what was found.</param>
public sealed record ProofOfText(string Where, string Text, ImmutableArray<ProofMark> Marks);

/// <summary>What the texts of a pattern may truly say: of a step, and of the piece as a whole.</summary>
public static class StepProof
{
    /// <summary>What the words of a step may say.</summary>
    /// <remarks>Counts: each run's, a kind's in one time, in the whole step, so far and in the whole piece. Lengths: those of the piece that are worked with, and the wire so far.</remarks>
    public static ProofFacts Of(PatternStep step, ImmutableArray<PatternStep> steps, Reckoned reckoned)
    {
        var whole = OfPiece(steps, reckoned);
        var counts = reckoned.Counts.ToDictionary(k => k.Letter, _ => new HashSet<int>(), StringComparer.Ordinal);
        ImmutableArray<string> mustName = [];
        ImmutableArray<(int, string)> inOrder = [];
        HashSet<int> numbers = [step.Number, step.BeadsSoFar, .. step.Turn is { } turn ? (int[])[turn] : []];
        if (step.Strung is { } strung)
        {
            foreach (var part in strung.Parts) Mention(part, counts, numbers, reckoned);
            numbers.UnionWith([strung.Times, strung.Beads, strung.Beads / strung.Times]);
            var kinds = strung.Kinds.ToArray();
            foreach (var kind in reckoned.Counts.Where(k => kinds.Contains(k.KindIndex)))
            {
                var here = kinds.Count(k => k == kind.KindIndex);
                counts[kind.Letter].UnionWith([here / strung.Times, here, kind.Count, reckoned.Piece.Order.Kinds.Take(strung.End).Count(k => k == kind.KindIndex)]);
            }
            mustName = [.. kinds.Distinct().Select(k => LetterOf(reckoned, k))];
            if (strung.Parts.All(p => p is RunPart)) inOrder = [.. strung.Parts.Cast<RunPart>().Select(r => (r.Count, LetterOf(reckoned, r.Kind)))];
        }
        else
            // Words on wire and ends may speak of the beads beside them.
            foreach (var kind in reckoned.Counts) counts[kind.Letter].UnionWith([1, kind.Count]);
        return whole with
        {
            Counts = counts.ToFrozenDictionary(c => c.Key, c => c.Value.ToImmutableHashSet(), StringComparer.Ordinal),
            MustName = mustName,
            InOrder = inOrder,
            Numbers = whole.Numbers.Union(numbers),
            LengthsMm = [.. whole.LengthsMm, step.LengthSoFarMm, LengthOf(step, reckoned)],
        };
    }

    /// <summary>What texts on the piece as a whole may say: its counts, turns, sizes, wire and weight.</summary>
    public static ProofFacts OfPiece(ImmutableArray<PatternStep> steps, Reckoned reckoned)
    {
        var (piece, wire, fit) = (reckoned.Piece, reckoned.Wire, reckoned.Fit);
        var ends = new[] { piece.Ends.Start, piece.Ends.Finish };
        List<double> lengths =
        [
            piece.Wire.WireMm, 2 * piece.Wire.RelaxedRadiusMm - piece.Wire.WireMm, 2 * piece.Wire.RelaxedRadiusMm, 2 * piece.Wire.RelaxedRadiusMm + piece.Wire.WireMm, piece.Wire.LoopMm,
            piece.Wearer.WristMm, reckoned.WristMm, reckoned.Worn.CircumferenceMm, reckoned.Worn.WirePerTurnMm, fit.InsideRelaxedMm, Math.Abs(fit.EndsOverlapMm),
            // To cut is said rounded up.
            wire.CutMm, Math.Ceiling(wire.CutMm), wire.BeadedMm, wire.EndsMm, wire.GripMm, wire.SpareMm, wire.GripMm + wire.SpareMm, wire.TrimStartMm, wire.TrimFinishMm, reckoned.RuledMm, reckoned.RelaxedBeadedMm,
            .. ends.SelectMany(e => (double[])[e.InsideMm, e.WireUsedMm(piece.Wire.WireMm), e.OutsideMm(piece.Wire.WireMm) ?? e.InsideMm, e.DangleMm ?? e.InsideMm]),
            .. reckoned.Counts.SelectMany(k => (double[])[k.Bead.LengthMm, k.Bead.WidthMm, k.Bead.ThicknessMm, k.Bead.BoreMm ?? 0]),
        ];
        if (reckoned.Wrists is { FromMm: { } from, ToMm: { } to }) lengths.AddRange([from, to]);
        List<double> masses = [.. new[] { reckoned.Mass.TotalG, reckoned.Mass.BeadsG, reckoned.Mass.WireG, reckoned.Mass.PerTurnG, reckoned.Mass.PostageG }.OfType<double>()];
        var turns = steps.Max(s => s.Turn ?? 0);
        return new ProofFacts
        {
            Counts = reckoned.Counts.ToFrozenDictionary(k => k.Letter, k => ImmutableHashSet.Create(k.Count), StringComparer.Ordinal),
            MustName = [],
            InOrder = [],
            Numbers = [piece.Order.Count, turns, (int)Math.Round(fit.TurnsDesigned ?? fit.OverlapTurns), reckoned.Counts.Length, steps.Length],
            Amounts = [wire.LoopsToCut, fit.TurnsWorn],
            LengthsMm = [.. lengths.Where(mm => mm > 0).Distinct()],
            MassesG = [.. masses],
        };
    }

    /// <summary>Every text of hers that does not agree with the piece.</summary>
    /// <param name="steps">The steps.</param>
    /// <param name="texts">Her words, beside their steps.</param>
    /// <param name="others">Texts on the piece as a whole, by name.</param>
    /// <param name="reckoned">The piece.</param>
    /// <param name="language">Her language.</param>
    public static ImmutableArray<ProofOfText> Read(ImmutableArray<PatternStep> steps, MatchedTexts texts, IEnumerable<(string Where, string Text)> others, Reckoned reckoned, ProofLanguage language)
    {
        var found = ImmutableArray.CreateBuilder<ProofOfText>();
        var whole = OfPiece(steps, reckoned);
        foreach (var (where, text) in others)
        {
            var marks = ProofReading.Read(text, whole, language);
            Add(where, text, where == PatternNotes.ByField ? [.. marks.Where(m => m.Slip != ProofSlip.LetterUnknown)] : marks);
        }
        for (var s = 0; s < steps.Length; s++)
        {
            if (texts.OfStep[s] is not { } own) continue;
            var marks = ProofReading.Read(own.Text, Of(steps[s], steps, reckoned), language);
            if (texts.Changed.Contains(steps[s].Id))
                marks = [new ProofMark(ProofSlip.WrittenForOther, 0, 0, own.At.Strings, StepTexts.Strings(steps[s], reckoned.Piece)), .. marks];
            Add(steps[s].Id, own.Text, marks);
        }
        foreach (var gone in texts.Homeless) Add(gone.At.Step, gone.Text, [new ProofMark(ProofSlip.StepGone, 0, 0, gone.At.Strings, "")]);
        return found.ToImmutable();

        void Add(string where, string text, ImmutableArray<ProofMark> marks)
        {
            if (!marks.IsEmpty) found.Add(new ProofOfText(where, text, marks));
        }
    }

    private static double LengthOf(PatternStep step, Reckoned reckoned)
    {
        var along = 0.0;
        if (step.Strung is { } strung)
            for (var i = strung.First; i < strung.End; i++) along += reckoned.RelaxedSharesMm[i];
        return along;
    }

    private static void Mention(StepPart part, Dictionary<string, HashSet<int>> counts, HashSet<int> numbers, Reckoned reckoned)
    {
        switch (part)
        {
            case RunPart run:
                counts[LetterOf(reckoned, run.Kind)].Add(run.Count);
                break;
            case RepeatPart repeat:
                numbers.Add(repeat.Times);
                foreach (var inner in repeat.Parts) Mention(inner, counts, numbers, reckoned);
                break;
            case BetweenPart between:
                counts[LetterOf(reckoned, between.Kind)].UnionWith([1, between.Count]);
                foreach (var inner in between.Between) Mention(inner, counts, numbers, reckoned);
                break;
        }
    }

    private static string LetterOf(Reckoned reckoned, int kind) => reckoned.Counts.First(k => k.KindIndex == kind).Letter;
}
