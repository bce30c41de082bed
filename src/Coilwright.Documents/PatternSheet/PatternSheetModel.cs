using System.Collections.Immutable;
using Coilwright.Core.Costing;
using Coilwright.Core.Findings;
using Coilwright.Core.Making;
using Coilwright.Core.Readings;

namespace Coilwright.Documents.PatternSheet;

/// <summary>The stringing steps of one turn, or of several where a single step reaches over whole turns.</summary>
/// <param name="Turn">The turn, from 1, on which each step's first bead lies.</param>
/// <param name="Last">The last turn that no later steps begin on.</param>
/// <param name="HasOverlap">Whether they string what overlaps the first turn's beginning too.</param>
/// <param name="Steps">The steps.</param>
/// <param name="BeadsSoFar">Beads strung when they are done.</param>
internal sealed record TurnOfSteps(int Turn, int Last, bool HasOverlap, ImmutableArray<StringingStep> Steps, int BeadsSoFar);

/// <summary>What stands on a pattern sheet: final numbers, taken from the core as they are.</summary>
internal sealed record PatternSheetModel
{
    public required Reckoned Reckoned { get; init; }

    /// <summary>What to use and buy, in the order of the key letters.</summary>
    public required MaterialsList Materials { get; init; }

    /// <summary>The steps of each turn.</summary>
    public required ImmutableArray<TurnOfSteps> Turns { get; init; }

    /// <summary>Notices that the maker should mind before she cuts, worst first.</summary>
    public required ImmutableArray<Notice> MendFirst { get; init; }

    /// <summary>Key letter of a kind, by its index in the piece's list of beads.</summary>
    public string Letter(int kind) => _letters[kind];

    private ImmutableDictionary<int, string> _letters { get; init; } = ImmutableDictionary<int, string>.Empty;

    public bool HasTurnedLoop => Reckoned.Piece.Ends.Of(EndFinish.GluedCap) < 2;

    public bool HasGluedCap => Reckoned.Piece.Ends.Of(EndFinish.GluedCap) > 0;

    /// <summary>Whether anything lies over anything: then the turns are worth laying out.</summary>
    public bool HasSeveralTurns => Reckoned.Fit.OverlapTurns > 1;

    /// <summary>Whether rules on metals may concern it.</summary>
    public bool HasMetal => Materials.Lines.Any(l => l.Bead.Description.Material is { IsMetal: true });

    public static PatternSheetModel Of(Reckoned reckoned)
    {
        var turns = new SortedDictionary<int, List<StringingStep>>();
        foreach (var step in StringingSteps.Of(reckoned.Piece.Order, reckoned.Lie))
        {
            var turn = reckoned.Lie.TurnWithOverlap(step.First);
            if (!turns.TryGetValue(turn, out var steps)) turns[turn] = steps = [];
            steps.Add(step);
        }
        return new PatternSheetModel
        {
            Reckoned = reckoned,
            Materials = MaterialsList.Of(reckoned.Piece),
            Turns = [.. Turned(reckoned, turns)],
            MendFirst = [.. reckoned.Notices.Where(n => n.Severity != Severity.Info)],
            _letters = reckoned.Counts.ToImmutableDictionary(k => k.KindIndex, k => k.Letter),
        };
    }

    private static IEnumerable<TurnOfSteps> Turned(Reckoned reckoned, SortedDictionary<int, List<StringingStep>> turns)
    {
        var starts = turns.Keys.ToArray();
        for (var t = 0; t < starts.Length; t++)
        {
            var steps = turns[starts[t]];
            var done = steps[^1].First + steps[^1].Beads;
            var last = t + 1 < starts.Length ? starts[t + 1] - 1 : reckoned.Lie.TurnWithOverlap(done - 1);
            yield return new TurnOfSteps(starts[t], last, t + 1 == starts.Length && reckoned.Lie.Turn(done - 1) > last, [.. steps], done);
        }
    }
}
