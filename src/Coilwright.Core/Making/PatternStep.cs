using System.Collections.Immutable;
using Coilwright.Core.Readings;

namespace Coilwright.Core.Making;

/// <summary>What a step asks for.</summary>
public enum StepAction
{
    /// <summary>Cut the wire.</summary>
    CutWire,

    /// <summary>Finish the end that is strung first.</summary>
    FirstEnd,

    /// <summary>String beads.</summary>
    StringBeads,

    /// <summary>Trim and finish the other end.</summary>
    LastEnd,

    /// <summary>Try it on.</summary>
    TryOn,
}

/// <summary>A caution that stands in the step where it applies. Its sentence is the language's.</summary>
public enum Caution
{
    /// <summary>What memory wire is cut with.</summary>
    Cutters,

    /// <summary>Cut pieces fly.</summary>
    FlyingPieces,

    /// <summary>The coil is not pulled straight.</summary>
    Springs,

    /// <summary>Sharp ends are filed.</summary>
    SharpEnds,

    /// <summary>An adult cuts and bends when children make pieces.</summary>
    AdultCuts,

    /// <summary>Loose beads are small parts.</summary>
    SmallParts,
}

/// <summary>One step of a written pattern: one action, with what to check it against.</summary>
/// <param name="Id">What it is called wherever something is tied to it: her own words, a tester's note, the place kept at the bench.</param>
/// <param name="Number">Its number, from 1.</param>
/// <param name="Action">What it asks for.</param>
/// <param name="Turn">The turn on which its first bead lies, from 1; null where no beads are strung.</param>
/// <param name="Strung">What it strings; null for wire and ends.</param>
/// <param name="BeadsSoFar">Beads on the wire when it is done.</param>
/// <param name="LengthSoFarMm">Wire under them with the coil at rest, as it is strung, mm: what a tape along the wire reads. 0 before the first bead.</param>
/// <param name="Cautions">Cautions that apply here, in the order they are met.</param>
public sealed record PatternStep(string Id, int Number, StepAction Action, int? Turn, StringingStep? Strung, int BeadsSoFar, double LengthSoFarMm,
    ImmutableArray<Caution> Cautions);

/// <summary>The steps of a written pattern, from the wire to the wrist.</summary>
/// <remarks>Data alone: which sentence says a step is the language's business, unless the maker wrote one of her own.</remarks>
public static class PatternSteps
{
    /// <summary>Ids of the steps that string nothing.</summary>
    public const string CutId = "cut", FirstEndId = "first-end", LastEndId = "last-end", TryOnId = "try-on";

    /// <summary>The steps of a piece on the wrist that it was reckoned on.</summary>
    /// <remarks>The wire is cut and its first end finished before anything is strung: what slides off is strung twice.</remarks>
    public static ImmutableArray<PatternStep> Of(Reckoned reckoned)
    {
        var steps = ImmutableArray.CreateBuilder<PatternStep>();
        Add(CutId, StepAction.CutWire, Caution.Cutters, Caution.FlyingPieces, Caution.AdultCuts);
        Add(FirstEndId, StepAction.FirstEnd, Caution.SharpEnds);
        var along = 0.0;
        foreach (var strung in StringingSteps.Of(reckoned.Piece.Order, reckoned.Lie))
        {
            for (var i = strung.First; i < strung.End; i++) along += reckoned.RelaxedSharesMm[i];
            steps.Add(new PatternStep(strung.Id, steps.Count + 1, StepAction.StringBeads, reckoned.Lie.TurnWithOverlap(strung.First), strung, strung.End, along,
                strung.First == 0 ? [Caution.Springs, Caution.SmallParts] : []));
        }
        Add(LastEndId, StepAction.LastEnd, Caution.Cutters, Caution.FlyingPieces, Caution.SharpEnds);
        Add(TryOnId, StepAction.TryOn);
        return steps.ToImmutable();

        void Add(string id, StepAction action, params ImmutableArray<Caution> cautions)
        {
            var before = steps.Count == 0 ? null : steps[^1];
            steps.Add(new PatternStep(id, steps.Count + 1, action, null, null, before?.BeadsSoFar ?? 0, before?.LengthSoFarMm ?? 0, cautions));
        }
    }
}
