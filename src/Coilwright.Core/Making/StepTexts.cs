using System.Collections.Immutable;
using System.Globalization;
using Coilwright.Core.Pieces;

namespace Coilwright.Core.Making;

/// <summary>Her words beside the steps that they belong to now.</summary>
/// <param name="OfStep">For each step her words, null where she wrote none.</param>
/// <param name="Changed">Ids of the steps that string something else than when she wrote.</param>
/// <param name="Homeless">Words whose step is gone. Kept, so that nothing she wrote is lost.</param>
public sealed record MatchedTexts(ImmutableArray<StepText?> OfStep, ImmutableHashSet<string> Changed, ImmutableArray<StepText> Homeless);

/// <summary>Ties the maker's words to steps, and finds their steps again after the order was edited.</summary>
/// <remarks>
/// <para>A step is known again by what it strings, by its group, by its id and by what stands before and after it, in that order of weight; each text goes to the step that it agrees
/// with best, best agreements first. A step without a group is never taken for one of a group, nor the other way round, and agreeing in the group alone is not
/// enough. Weights are our choice: what it strings outweighs its id, and both neighbours outweigh it too, since ids count from the starting end.</para>
/// <para>Another wording for the same step replaces the first.</para>
/// </remarks>
public static class StepTexts
{
    private const int SameStrings = 8, SameGroup = 4, SameNeighbour = 3, SameId = 2, Enough = 6;

    /// <summary>The texts beside their steps.</summary>
    public static MatchedTexts Match(ImmutableArray<PatternStep> steps, ImmutableArray<StepText> texts, Piece piece)
    {
        var strings = steps.Select(s => Strings(s, piece)).ToArray();
        var found = new StepText?[steps.Length];
        var candidates = new List<(int Score, int Text, int Step)>();
        for (var t = 0; t < texts.Length; t++)
            for (var s = 0; s < steps.Length; s++)
                if (Score(texts[t].At, steps, strings, s) is var score and >= Enough) candidates.Add((score, t, s));
        var placed = new bool[texts.Length];
        foreach (var (_, text, step) in candidates.OrderByDescending(c => c.Score).ThenBy(c => c.Text).ThenBy(c => c.Step))
        {
            if (placed[text] || found[step] is not null) continue;
            found[step] = texts[text];
            placed[text] = true;
        }
        return new MatchedTexts([.. found], [.. Enumerable.Range(0, steps.Length).Where(s => found[s] is { } text && text.At.Strings != strings[s]).Select(s => steps[s].Id)],
            [.. texts.Where((_, t) => !placed[t])]);
    }

    /// <summary>The step that something was tied to as it is now: index of the one that agrees best, the first of equal ones; null when it is gone.</summary>
    /// <remarks>Several things may be tied to one step, as testers' notes are.</remarks>
    public static int? Find(ImmutableArray<PatternStep> steps, StepAnchor at, Piece piece)
    {
        var strings = steps.Select(s => Strings(s, piece)).ToArray();
        var best = Enumerable.Range(0, steps.Length).Select(s => (Score: Score(at, steps, strings, s), Step: s)).MaxBy(found => found.Score);
        return best.Score >= Enough ? best.Step : null;
    }

    private static int Score(StepAnchor at, ImmutableArray<PatternStep> steps, string[] strings, int s)
    {
        if (steps[s].Strung is not { } strung) return at.Step == steps[s].Id ? SameStrings + SameId : 0;
        if (at.Strings.Length == 0 || GroupOf(at.Step) != strung.Group) return 0;
        return SameGroup + (at.Strings == strings[s] ? SameStrings : 0) + (at.Step == steps[s].Id ? SameId : 0)
            + (at.After == (s == 0 ? "" : strings[s - 1]) ? SameNeighbour : 0) + (at.Before == (s + 1 == steps.Length ? "" : strings[s + 1]) ? SameNeighbour : 0);
    }

    /// <summary>Her words written for a step as it is now, beside those she wrote before; empty words take hers away and the step is said by the language again.</summary>
    public static ImmutableArray<StepText> With(ImmutableArray<PatternStep> steps, ImmutableArray<StepText> texts, Piece piece, string stepId, string text)
    {
        var at = steps.Select(s => s.Id).ToList().IndexOf(stepId);
        ArgumentOutOfRangeException.ThrowIfNegative(at, nameof(stepId));
        var matched = Match(steps, texts, piece);
        var kept = matched.OfStep.SetItem(at, string.IsNullOrWhiteSpace(text) ? null
            : new StepText(Anchor(steps, at, piece), text));
        return [.. kept.OfType<StepText>(), .. matched.Homeless];
    }

    /// <summary>Where to tie something to a step.</summary>
    /// <param name="steps">The steps.</param>
    /// <param name="at">Index of the step.</param>
    /// <param name="piece">The piece.</param>
    public static StepAnchor Anchor(ImmutableArray<PatternStep> steps, int at, Piece piece) => new(steps[at].Id, Strings(steps[at], piece),
        at == 0 ? "" : Strings(steps[at - 1], piece), at + 1 == steps.Length ? "" : Strings(steps[at + 1], piece));

    /// <summary>What a step strings, by bead ids; empty where it strings nothing.</summary>
    public static string Strings(PatternStep step, Piece piece)
    {
        if (step.Strung is not { } strung) return "";
        var once = string.Join(", ", strung.Parts.Select(Noted));
        return strung.Times == 1 ? once : Times(strung.Times) + "(" + once + ")";

        string Noted(StepPart part) => part switch
        {
            RunPart run => run.Count == 1 ? piece.Beads[run.Kind].Id : Times(run.Count) + " " + piece.Beads[run.Kind].Id,
            RepeatPart repeat => Times(repeat.Times) + "(" + string.Join(", ", repeat.Parts.Select(Noted)) + ")",
            BetweenPart between => Times(between.Count) + " " + piece.Beads[between.Kind].Id + " with (" + string.Join(", ", between.Between.Select(Noted)) + ") between",
            _ => throw new System.Diagnostics.UnreachableException(),
        };
    }

    // "wave.2" is of the group wave; "after.wave.2", "first" and "first.b" are of none.
    private static string? GroupOf(string id) => id.Split('.') is [var group, var nth] && nth.All(char.IsAsciiDigit) ? group : null;

    private static string Times(int times) => times.ToString(CultureInfo.InvariantCulture);
}
