using System.Collections.Immutable;
using Coilwright.Core.Beads;
using Coilwright.Core.Pricing;
using Coilwright.Core.Readings;

namespace Coilwright.Core.Batches;

/// <summary>A tray to count beads out into.</summary>
/// <param name="Wells">Wells in it, 1 or more.</param>
/// <param name="Rounds">How many rounds of 6 mm one well holds, as the maker counted it, 1 or more. Of other beads as many as take the same room.</param>
public sealed record CountingTray(int Wells, int Rounds)
{
    /// <summary>Our choice where nobody counted: a tray of twelve wells, a small heap in each.</summary>
    public static readonly CountingTray Usual = new(12, 40);

    /// <summary>Most wells, and most rounds in a well, that are planned with.</summary>
    public const int Most = 1_000;

    // The round that a well is measured with, mm.
    private const double RoundMm = 6;

    /// <summary>How many of a bead one well holds, by the box round it; 0 when not even one.</summary>
    public int Holds(Bead bead) => (int)Math.Min(int.MaxValue, Rounds * (RoundMm * RoundMm * RoundMm) / (bead.LengthMm * bead.WidthMm * bead.ThicknessMm) + 1e-9);
}

/// <summary>What lies in one well of the trays of one piece.</summary>
/// <param name="Tray">The tray, from 1.</param>
/// <param name="Well">The well in it, from 1.</param>
/// <param name="Turn">The turn that it is strung on; null where a well is for the whole piece.</param>
/// <param name="Kind">The kind.</param>
/// <param name="Count">How many.</param>
public sealed record TrayWell(int Tray, int Well, int? Turn, KindCount Kind, int Count);

/// <summary>A step of work of a batch.</summary>
/// <param name="Step">The step, as it was timed.</param>
/// <param name="Minutes">How long it takes for the whole batch.</param>
public sealed record BatchStep(TimedStep Step, decimal Minutes)
{
    /// <summary>The steps of some that are made together; those that are timed for something else are left out.</summary>
    /// <param name="costs">The maker's timed steps.</param>
    /// <param name="sold">What is made.</param>
    /// <param name="count">How many, 1 or more.</param>
    public static ImmutableArray<BatchStep> All(CostSheet costs, Sold sold, int count) =>
        [.. costs.Steps.Where(s => s.For.Contains(sold)).Select(s => new BatchStep(s, s.PerBatch ? s.Minutes : s.Minutes * count))];
}

/// <summary>So many pieces alike, made together: what is counted out into which well, the wire to cut, how long it takes.</summary>
/// <remarks>Wells are filled in the order of stringing. By turns where that takes no more trays than by kinds, as then no well is gone back to. What no well
/// holds lies beside the tray. Times are the maker's own; nothing is guessed of a step that was not timed.</remarks>
public sealed record BatchPlan
{
    /// <summary>The readings of one.</summary>
    public required Reckoned Reckoned { get; init; }

    /// <summary>How many are made, 1 or more.</summary>
    public required int Count { get; init; }

    /// <summary>The tray.</summary>
    public required CountingTray Tray { get; init; }

    /// <summary>The wells of one piece, in the order of stringing.</summary>
    public required ImmutableArray<TrayWell> Wells { get; init; }

    /// <summary>Kinds of which one bead fills more than a well: they lie beside the tray.</summary>
    public required ImmutableArray<KindCount> Beside { get; init; }

    /// <summary>Steps of work of finished pieces that were timed.</summary>
    public required ImmutableArray<BatchStep> Steps { get; init; }

    /// <summary>Trays for one piece; 0 when all lies beside.</summary>
    public int TraysEach => Wells.IsEmpty ? 0 : Wells[^1].Tray;

    /// <summary>Whether wells are filled turn by turn.</summary>
    public bool IsByTurn => Wells.Any(w => w.Turn is not null);

    /// <summary>Time for all, minutes.</summary>
    public decimal Minutes => Steps.Sum(s => s.Minutes);

    /// <summary>Time for one, a share of what is done once in it, minutes.</summary>
    public decimal MinutesEach => Minutes / Count;

    /// <summary>Wire to cut for all, mm.</summary>
    public double CutMm => Count * Reckoned.Wire.CutMm;

    /// <summary>Plans it.</summary>
    /// <param name="reckoned">The readings of one.</param>
    /// <param name="count">How many, 1 or more.</param>
    /// <param name="tray">The tray.</param>
    /// <param name="costs">The maker's timed steps.</param>
    /// <exception cref="ArgumentOutOfRangeException">There are none to be made, or the tray has no well.</exception>
    public static BatchPlan Of(Reckoned reckoned, int count, CountingTray tray, CostSheet costs)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(count, 1);
        ArgumentOutOfRangeException.ThrowIfLessThan(tray.Wells, 1, nameof(tray));
        ArgumentOutOfRangeException.ThrowIfLessThan(tray.Rounds, 1, nameof(tray));
        var (byTurn, byKind) = (Fill(reckoned, tray, i => reckoned.Lie.TurnWithOverlap(i)), Fill(reckoned, tray, _ => null));
        return new BatchPlan
        {
            Reckoned = reckoned,
            Count = count,
            Tray = tray,
            Wells = Trays(byTurn) <= Trays(byKind) ? byTurn : byKind,
            Beside = [.. reckoned.Counts.Where(k => tray.Holds(k.Bead) == 0)],
            Steps = BatchStep.All(costs, Sold.Piece, count),
        };

        static int Trays(ImmutableArray<TrayWell> wells) => wells.IsEmpty ? 0 : wells[^1].Tray;
    }

    private static ImmutableArray<TrayWell> Fill(Reckoned reckoned, CountingTray tray, Func<int, int?> turnOf)
    {
        var kinds = reckoned.Counts.ToDictionary(k => k.KindIndex);
        var heaps = new List<(int? Turn, KindCount Kind, int Count)>();
        var order = reckoned.Piece.Order.Kinds;
        for (var i = 0; i < order.Length; i++)
        {
            var (turn, kind) = (turnOf(i), kinds[order[i]]);
            if (tray.Holds(kind.Bead) == 0) continue;
            var at = heaps.FindIndex(h => h.Turn == turn && h.Kind == kind);
            if (at < 0) heaps.Add((turn, kind, 1));
            else heaps[at] = heaps[at] with { Count = heaps[at].Count + 1 };
        }
        var wells = ImmutableArray.CreateBuilder<TrayWell>();
        foreach (var (turn, kind, all) in heaps)
            for (var left = all; left > 0;)
            {
                var count = Math.Min(left, tray.Holds(kind.Bead));
                wells.Add(new TrayWell(wells.Count / tray.Wells + 1, wells.Count % tray.Wells + 1, turn, kind, count));
                left -= count;
            }
        return wells.ToImmutable();
    }
}
