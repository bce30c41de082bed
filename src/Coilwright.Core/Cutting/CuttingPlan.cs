using System.Collections.Immutable;

namespace Coilwright.Core.Cutting;

/// <summary>A length as it is counted off a coil: whole loops from the end, and so much more.</summary>
/// <param name="Loops">Whole loops.</param>
/// <param name="RestMm">What follows them, whole mm, rounded up.</param>
public readonly record struct LoopMark(int Loops, int RestMm)
{
    /// <summary>Counts a length off.</summary>
    /// <param name="mm">The length, mm.</param>
    /// <param name="loopMm">One loop at rest, mm.</param>
    public static LoopMark Of(double mm, double loopMm)
    {
        // A hair is added, so that a length of exactly so many loops has no loop's length left over.
        var loops = (int)Math.Floor(mm / loopMm + 1e-9);
        return new LoopMark(loops, (int)Math.Ceiling(Math.Max(0, mm - loops * loopMm) - 1e-6));
    }
}

/// <summary>One cut of a coil.</summary>
/// <param name="Piece">Index of the piece in the plan.</param>
/// <param name="LengthMm">Its length, whole mm.</param>
/// <param name="Mark">The length counted from the coil's end as it is then.</param>
/// <param name="FromMm">Where it begins, mm from the end that the first cut was counted from.</param>
public readonly record struct WireCutMark(int Piece, int LengthMm, LoopMark Mark, int FromMm);

/// <summary>Coils that are cut alike.</summary>
/// <param name="Lot">Index of the lot in the plan.</param>
/// <param name="Times">How many coils, 1 or more.</param>
/// <param name="Cuts">What is cut from each, in order from one end.</param>
/// <param name="LeftMm">What is left of each, whole mm.</param>
/// <param name="Left">The same in loops.</param>
/// <param name="IsKept">Whether that is long enough to keep.</param>
public sealed record CutCoil(int Lot, int Times, ImmutableArray<WireCutMark> Cuts, int LeftMm, LoopMark Left, bool IsKept);

/// <summary>Why a length was not cut.</summary>
public enum WhyNotCut
{
    /// <summary>There is no wire of its kind: thickness, coil and steel.</summary>
    NoSuchWire,

    /// <summary>It is longer than any coil of its kind.</summary>
    LongerThanAny,

    /// <summary>There is too little wire.</summary>
    TooLittle,
}

/// <summary>Lengths that were not cut.</summary>
/// <param name="Piece">Index of the piece.</param>
/// <param name="Count">How many.</param>
/// <param name="LengthMm">Length of all of them, whole mm.</param>
/// <param name="Why">Why.</param>
public readonly record struct NotCut(int Piece, int Count, long LengthMm, WhyNotCut Why);

/// <summary>How many more of a lot would do for everything.</summary>
/// <param name="Lot">Index of the lot.</param>
/// <param name="Count">How many more.</param>
/// <param name="IsProven">Whether fewer would not.</param>
public readonly record struct MoreWouldDo(int Lot, int Count, bool IsProven);

/// <summary>What a plan keeps small.</summary>
public enum CuttingAim
{
    /// <summary>What the new coils cost that are begun: where every new one has a price.</summary>
    Cost,

    /// <summary>How many new coils are begun.</summary>
    NewCoils,
}

/// <summary>Which coil is cut into what.</summary>
/// <remarks>
/// <para>Everything that comes out is cut at the least cost, or with the fewest coils begun, where offcuts cost nothing. When not everything comes out, the least length is
/// missing and nothing is said of cost. Among plans equal in that, shorter coils are begun before longer ones and what is left is gathered in few pieces; that is not proven.</para>
/// <para>Whole millimetres: a length is rounded up, a coil down. A loop is counted at rest. Model: docs/theory/cutting.md.</para>
/// </remarks>
public sealed record CuttingPlan
{
    /// <summary>What was asked for.</summary>
    public required ImmutableArray<WireDemand> Pieces { get; init; }

    /// <summary>The wire that there was.</summary>
    public required ImmutableArray<WireLot> Lots { get; init; }

    /// <summary>What a cut takes away, whole mm.</summary>
    public required int LossMm { get; init; }

    /// <summary>The coils that are cut, offcuts first.</summary>
    public required ImmutableArray<CutCoil> Coils { get; init; }

    /// <summary>What was not cut, in the order of the pieces.</summary>
    public required ImmutableArray<NotCut> NotCut { get; init; }

    /// <summary>Of lots that there are too few of, how many more would do; empty when everything comes out or more of them does not help.</summary>
    public required ImmutableArray<MoreWouldDo> More { get; init; }

    /// <summary>What was kept small.</summary>
    public required CuttingAim Aim { get; init; }

    /// <summary>What the new coils cost that are begun; null while a new one has no price.</summary>
    public required decimal? Cost { get; init; }

    /// <summary>No plan costs less; null like <see cref="Cost"/>, or when not everything comes out.</summary>
    public required decimal? LeastCost { get; init; }

    /// <summary>No plan begins fewer new coils; null where it was the cost that was kept small, or when not everything comes out.</summary>
    public required int? LeastNewCoils { get; init; }

    /// <summary>No plan leaves less missing, mm, of what is not cut for too little wire.</summary>
    public required long LeastMissingMm { get; init; }

    /// <summary>Whether no plan does better at what was kept small; when not everything comes out, whether no plan leaves less missing.</summary>
    public required bool IsProven { get; init; }

    /// <summary>Whether the search was stopped.</summary>
    public required bool WasStopped { get; init; }

    /// <summary>Whether everything is cut.</summary>
    public bool ComesOut => NotCut.IsEmpty;

    /// <summary>New coils that are begun.</summary>
    public int NewCoils => Coils.Where(c => !Lots[c.Lot].IsOffcut).Sum(c => c.Times);

    /// <summary>Offcuts that are begun.</summary>
    public int OffcutsUsed => Coils.Where(c => Lots[c.Lot].IsOffcut).Sum(c => c.Times);

    /// <summary>Lengths that are cut.</summary>
    public int PiecesCut => Coils.Sum(c => c.Times * c.Cuts.Length);

    /// <summary>Wire that is left and kept, mm.</summary>
    public long KeptMm => Coils.Where(c => c.IsKept).Sum(c => (long)c.Times * c.LeftMm);

    /// <summary>Wire that is of no more use, mm: what is left and too short to keep, and what the cuts take.</summary>
    public long WasteMm => Coils.Sum(c => (long)c.Times * (Lots[c.Lot].WholeMm - c.Cuts.Sum(m => m.LengthMm) - (c.IsKept ? c.LeftMm : 0)));

    /// <summary>The wire that is there afterwards: what was not begun, and the offcuts that are kept.</summary>
    public ImmutableArray<WireLot> WireAfterwards()
    {
        var after = ImmutableArray.CreateBuilder<WireLot>();
        for (var l = 0; l < Lots.Length; l++)
        {
            var left = Lots[l].Count - Coils.Where(c => c.Lot == l).Sum(c => c.Times);
            if (left is null or > 0) after.Add(Lots[l] with { Count = left });
        }
        foreach (var coil in Coils.Where(c => c.IsKept))
        {
            var lot = Lots[coil.Lot];
            after.Add(new WireLot(lot.Name, lot.Wire, coil.LeftMm, coil.Times, null, IsOffcut: true));
        }
        return after.ToImmutable();
    }
}
