using System.Collections.Immutable;
using Coilwright.Core.Measures;
using Coilwright.Core.StringingMaterials.MemoryWire;

namespace Coilwright.Core.Pieces;

/// <summary>What may change of a piece when a better order is looked for. What is not named here stays as it is strung.</summary>
/// <remarks>Nothing said, groups are never touched: what is free is how many spacers or connectors stand in each run between them.</remarks>
public sealed record FreeToChange
{
    /// <summary>Nothing said: every run of one spacer or connector between groups may take or give a few, as far as the data's choice reaches.</summary>
    public static FreeToChange Usual { get; } = new();

    /// <summary>How many beads one run of a kind may have, by bead id; empty: the usual.</summary>
    public ImmutableSortedDictionary<string, RunRange> Runs { get; init; } = ImmutableSortedDictionary<string, RunRange>.Empty;

    /// <summary>By how much the beaded length on the wearer's wrist may change, mm; null: by as much as the ends may differ from what is wanted.</summary>
    public double? LengthWithinMm { get; init; }

    /// <summary>Beads of a kind that are to hand, those already strung counted in, by bead id; a kind that is not named is not limited.</summary>
    public ImmutableSortedDictionary<string, int> OnHand { get; init; } = ImmutableSortedDictionary<string, int>.Empty;

    /// <summary>Whether runs that mirror each other about the middle of the piece keep equal counts.</summary>
    public bool MirroredHalves { get; init; }

    /// <summary>Other coils of the same wire that the piece, or another size of it, may be strung on; empty: the piece's own alone.</summary>
    public ImmutableArray<CoilSize> Coils { get; init; } = [];

    /// <summary>Where else the starting end may lie; null: only where it does. Not used where the piece is turned so that its focal is on top.</summary>
    public StartRange? StartAngle { get; init; }

    /// <summary>How many turns it may be worn in on the wearer's wrist; null: what <see cref="LengthWithinMm"/> leaves.</summary>
    public TurnsRange? Turns { get; init; }

    /// <summary>Whether groups may change places with each other. Each stays whole; one with a focal in it stays where it is.</summary>
    public bool GroupOrder { get; init; }

    /// <summary>Beads that may stand in for others.</summary>
    public ImmutableArray<StandIn> StandIns { get; init; } = [];

    /// <summary>Whether nothing is said that is not the usual.</summary>
    public bool IsUsual => Runs.IsEmpty && LengthWithinMm is null && OnHand.IsEmpty && !MirroredHalves && !GroupOrder && StandIns.IsDefaultOrEmpty && Coils.IsDefaultOrEmpty
        && StartAngle is null && Turns is null;

    /// <summary>The same after a kind of bead was renamed; or taken out, with no new id.</summary>
    public FreeToChange Renamed(string id, string? to)
    {
        var (runs, onHand) = (Runs.Remove(id), OnHand.Remove(id));
        if (to is not null && Runs.TryGetValue(id, out var range)) runs = runs.SetItem(to, range);
        if (to is not null && OnHand.TryGetValue(id, out var beads)) onHand = onHand.SetItem(to, beads);
        var standIns = to is null ? StandIns.RemoveAll(s => s.Bead == id || s.With == id)
            : [.. StandIns.Select(s => s with { Bead = s.Bead == id ? to : s.Bead, With = s.With == id ? to : s.With })];
        return this with { Runs = runs, OnHand = onHand, StandIns = standIns };
    }
}

/// <summary>The size of a coil.</summary>
/// <param name="Datum">What <paramref name="SizeMm"/> is.</param>
/// <param name="SizeMm">Diameter, or a loop's length, mm.</param>
public readonly record struct CoilSize(CoilDatum Datum, double SizeMm);

/// <summary>Places round the wrist where the starting end may lie: a grid, so that every one of them can be tried.</summary>
/// <param name="FromDeg">The first, degrees, 0 the top, positive the way the beads run.</param>
/// <param name="ToDeg">The last; when below <paramref name="FromDeg"/> the range crosses the underside.</param>
/// <param name="StepDeg">From one to the next, degrees, above 0.</param>
public sealed record StartRange(double FromDeg, double ToDeg, double StepDeg = StartRange.UsualStepDeg)
{
    /// <summary>The step where nothing is said, degrees: two to three millimetres on a wrist, less than a bead.</summary>
    public const double UsualStepDeg = 5;

    /// <summary>Each place once, degrees in (-180, 180], from the first to the last. The last is there also where the step leaps over it.</summary>
    public ImmutableArray<double> Places
    {
        get
        {
            var span = ToDeg - FromDeg + (ToDeg < FromDeg ? 360 : 0);
            // A hair, so that a step that divides the range does not make its last place twice.
            var steps = (int)Math.Ceiling(span / StepDeg - 1e-9);
            return [.. Enumerable.Range(0, steps + 1).Select(i => Angles.NormalizedDeg(FromDeg + Math.Min(span, i * StepDeg))).Distinct()];
        }
    }
}

/// <summary>How many turns a piece may be worn in, ends included.</summary>
/// <param name="Least">The fewest, above 0.</param>
/// <param name="Most">The most.</param>
public readonly record struct TurnsRange(double Least, double Most);

/// <summary>How many beads a run may have, ends included.</summary>
/// <param name="Least">The fewest, 1 or more: with none left two groups would run into one.</param>
/// <param name="Most">The most.</param>
public readonly record struct RunRange(int Least, int Most);

/// <summary>A bead of the piece that may stand in for another.</summary>
/// <param name="Bead">Id of the bead that may go.</param>
/// <param name="With">Id of the bead that may come.</param>
/// <param name="Everywhere">Whether in the whole piece or not at all; else group by group, in all of a group or none of it.</param>
public sealed record StandIn(string Bead, string With, bool Everywhere);

/// <summary>A wrist and how much it counts among others.</summary>
/// <param name="WristMm">Round the wrist, mm.</param>
/// <param name="Weight">Its weight, above 0; only the ratio to the others counts.</param>
public readonly record struct WeighedWrist(double WristMm, double Weight);
