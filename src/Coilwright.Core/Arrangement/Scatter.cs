using System.Collections.Immutable;
using Coilwright.Core.Beads;
using Coilwright.Core.Editing;
using Coilwright.Core.Fit;
using Coilwright.Core.Numerics;
using Coilwright.Core.Pieces;
using Coilwright.Core.Readings;
using Coilwright.Core.Stringing;
using Coilwright.Core.Stringing.Notation;

namespace Coilwright.Core.Arrangement;

/// <summary>Why there is no scattered order.</summary>
public enum NoScatter
{
    /// <summary>There is one.</summary>
    None,

    /// <summary>Fewer than two kinds of thing may change places.</summary>
    OneKind,

    /// <summary>No order that keeps the rules was found.</summary>
    NoneAllowed,

    /// <summary>The order cannot be written as notation, since one group's name stands for different beads.</summary>
    NotWritten,
}

/// <summary>An order without a visible repeat.</summary>
public sealed record Scattered
{
    /// <summary>The piece as it is.</summary>
    public required Reckoned Before { get; init; }

    /// <summary>How it repeats itself as it is.</summary>
    public required RepeatMeasure BeforeRepeats { get; init; }

    /// <summary>Why there is no order; then what follows is null.</summary>
    public required NoScatter Why { get; init; }

    /// <summary>The edit that comes to it.</summary>
    public SetOrderText? Edit { get; init; }

    /// <summary>The piece afterwards.</summary>
    public Reckoned? After { get; init; }

    /// <summary>How far a repeat shows in it; not at all, where the amounts and rules leave room.</summary>
    public RepeatMeasure? Repeats { get; init; }

    /// <summary>How it does under the wish for lining up; its loss is 0 where there is none.</summary>
    public OrderJudgement? Judged { get; init; }
}

/// <summary>Strings what a piece has in an order without a visible repeat: the same amounts, as by chance and yet well spread.</summary>
/// <remarks>
/// <para>Groups stay whole and change places with each other and with single beads. Spacers and connectors between them stay where they are, so that the spacing
/// stays; so do focals and groups that hold one. Rules of the order are kept. What counts as a visible repeat: <see cref="RepeatMeasure"/>.</para>
/// <para>Of a few orders that a seed gives, the one is taken that lies least against the wish for lining up. Another seed gives another order.</para>
/// </remarks>
public static class Scatter
{
    private const int Candidates = 8, Tries = 4000;

    /// <summary>Scatters a piece.</summary>
    /// <param name="piece">The piece.</param>
    /// <param name="data">Materials, steels, our choices and adults' wrists.</param>
    /// <param name="seed">The seed; the same gives the same order on any machine.</param>
    /// <param name="cancel">Stops it.</param>
    /// <exception cref="OperationCanceledException">It was stopped.</exception>
    public static Scattered Of(Piece piece, ReckoningData data, ulong seed, CancellationToken cancel = default)
    {
        var places = PlacesOf(piece);
        var things = new List<(string Name, ImmutableArray<int> Kinds, GroupRun First)>();
        var start = places.Select(place =>
        {
            var kinds = piece.Order.Kinds.AsSpan(place.First, place.Count).ToImmutableArray();
            var thing = things.FindIndex(t => t.Name == place.Name && t.Kinds.SequenceEqual(kinds));
            if (thing < 0) things.Add((place.Name, kinds, place));
            return thing < 0 ? things.Count - 1 : thing;
        }).ToArray();
        var before = new Scattered { Before = Reckoning.Of(piece, data, cancel: cancel), BeforeRepeats = RepeatMeasure.Of(start), Why = NoScatter.OneKind };
        if (things.Count < 2) return before;

        var names = piece.Order.ReadingGroups.Select(g => g.Name).Distinct(StringComparer.Ordinal).ToImmutableArray();
        var rules = piece.Wishes.Rules.IsDefault ? [] : piece.Wishes.Rules;
        var problem = new OrderProblem
        {
            Things = [.. things.Select((t, i) => new OrderThing(i, t.Kinds,
                [.. piece.Order.ReadingGroups.Where(g => g.First >= t.First.First && g.End <= t.First.End).Select(g => names.IndexOf(g.Name))]))],
            Demand = [.. things.Select((_, i) => start.Count(s => s == i))],
            Between = [.. Enumerable.Range(0, places.Length + 1).Select(p => Between(piece.Order, places, p))],
            BeadRules = new KindRules([.. piece.Beads.Select(b => b.Id)], rules),
            GroupRules = new KindRules(names, rules),
            Loss = new RepeatLoss([.. Enumerable.Range(0, things.Count)], places.Length),
            GoodEnough = 0,
        };
        var bench = BenchCorrection.Of(piece with { MeasuredRows = [] }, data.Choices.RulerErrorMm);
        var wrists = piece.Wishes.Wrists.IsDefaultOrEmpty ? data.AdultWrists : piece.Wishes.Wrists;
        var all = wrists.Sum(w => w.Weight);
        var judge = new FullJudge(piece with { Beads = bench.Kinds }, data.Choices, [.. wrists.Select(w => w with { Weight = w.Weight / all })]);
        var found = new (FoundOrder Order, StringingOrder Strung, OrderJudgement Judged)?[Candidates];
        SharedWork.Run(Candidates, (from, to) =>
        {
            for (var i = from; i < to; i++)
            {
                // Each candidate has a seed of its own, so that no two seeds share one.
                if (new OrderDescent(1, Tries, SeededDraws.Mix(unchecked(seed * Candidates + (ulong)i))).Find(problem, null, cancel) is not { } order) continue;
                cancel.ThrowIfCancellationRequested();
                var strung = Strung(piece.Order, places, [.. order.Things.Select(t => things[t].First)]);
                found[i] = (order, strung, judge.Of(strung, null));
            }
        }, cancel);
        var best = found.OfType<(FoundOrder Order, StringingOrder Strung, OrderJudgement Judged)>().OrderBy(f => f.Order.Loss).ThenBy(f => f.Judged.Loss).Cast<(FoundOrder Order, StringingOrder Strung, OrderJudgement Judged)?>().FirstOrDefault();
        if (best is not { } one) return before with { Why = NoScatter.NoneAllowed };
        if (!OrderPrinter.TryPrint(one.Strung, [.. piece.Beads.Select(b => b.Id)], out var text)) return before with { Why = NoScatter.NotWritten };
        var edit = new SetOrderText(text);
        if (PieceEditing.Apply(piece, edit, data) is not EditOutcome.Done done) return before with { Why = NoScatter.NotWritten };
        return before with
        {
            Why = NoScatter.None,
            Edit = edit,
            After = Reckoning.Of(done.Piece, data, cancel: cancel),
            Repeats = RepeatMeasure.Of(one.Order.Things.AsSpan()),
            Judged = one.Judged,
        };
    }

    // Outermost groups, and single beads outside of them that neither stand between others nor are a focal.
    internal static ImmutableArray<GroupRun> PlacesOf(Piece piece)
    {
        var order = piece.Order;
        var places = ImmutableArray.CreateBuilder<GroupRun>();
        var outer = order.Groups.Where(g => !order.Groups.Any(o => o != g && o.First <= g.First && o.End >= g.End && o.Count > g.Count)).ToDictionary(g => g.First);
        for (var bead = 0; bead < order.Count;)
        {
            var place = outer.GetValueOrDefault(bead) ?? new GroupRun(piece.Beads[order.Kinds[bead]].Id, bead, 1);
            var isGroup = outer.ContainsKey(bead);
            var stays = order.Kinds.AsSpan(place.First, place.Count).ToArray().Any(kind => piece.Beads[kind].Role == Role.Focal)
                || (!isGroup && piece.Beads[order.Kinds[bead]].Role is Role.Spacer or Role.Connector);
            if (!stays) places.Add(place);
            bead = place.End;
        }
        return places.ToImmutable();
    }

    private static ImmutableArray<int> Between(StringingOrder order, ImmutableArray<GroupRun> places, int place)
    {
        var first = place == 0 ? 0 : places[place - 1].End;
        return order.Kinds.AsSpan(first, (place < places.Length ? places[place].First : order.Count) - first).ToImmutableArray();
    }

    private static StringingOrder Strung(StringingOrder order, ImmutableArray<GroupRun> places, ImmutableArray<GroupRun> what)
    {
        var kinds = ImmutableArray.CreateBuilder<int>(order.Count);
        var groups = new List<GroupRun>();
        var next = 0;
        for (var place = 0; place <= places.Length; place++)
        {
            Add(next, place < places.Length ? places[place].First : order.Count);
            if (place == places.Length) break;
            Add(what[place].First, what[place].End);
            next = places[place].End;
        }
        return new StringingOrder(kinds.ToImmutable(), [.. groups]);

        void Add(int first, int end)
        {
            foreach (var group in order.Groups)
                if (group.First >= first && group.End <= end) groups.Add(group with { First = group.First - first + kinds.Count });
            kinds.AddRange(order.Kinds.AsSpan(first, end - first));
        }
    }
}
