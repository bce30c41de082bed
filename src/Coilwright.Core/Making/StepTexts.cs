using System.Collections.Immutable;
using System.Globalization;
using Coilwright.Core.Pieces;

namespace Coilwright.Core.Making;

/// <summary>The maker's own words for a step, and what the step was when she wrote them.</summary>
/// <param name="Step">The step's id then.</param>
/// <param name="Strings">What it strung then, by bead ids, as <c>2(3 nugget, disc)</c>; empty for a step that strings nothing.</param>
/// <param name="After">What the step before it strung; empty for none.</param>
/// <param name="Before">What the step after it strung; empty for none.</param>
/// <param name="Text">Her words.</param>
public sealed record StepText(string Step, string Strings, string After, string Before, string Text)
{
    /// <summary>Longest text of a step, in characters: ten pages of it are no step. Our choice.</summary>
    public const int MostText = 10_000;
}

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
                if (Score(texts[t], s) is var score and >= Enough) candidates.Add((score, t, s));
        var placed = new bool[texts.Length];
        foreach (var (_, text, step) in candidates.OrderByDescending(c => c.Score).ThenBy(c => c.Text).ThenBy(c => c.Step))
        {
            if (placed[text] || found[step] is not null) continue;
            found[step] = texts[text];
            placed[text] = true;
        }
        return new MatchedTexts([.. found], [.. Enumerable.Range(0, steps.Length).Where(s => found[s] is { } text && text.Strings != strings[s]).Select(s => steps[s].Id)],
            [.. texts.Where((_, t) => !placed[t])]);

        int Score(StepText text, int s)
        {
            var step = steps[s];
            if (step.Strung is not { } strung) return text.Step == step.Id ? SameStrings + SameId : 0;
            if (text.Strings.Length == 0 || GroupOf(text.Step) != strung.Group) return 0;
            return SameGroup + (text.Strings == strings[s] ? SameStrings : 0) + (text.Step == step.Id ? SameId : 0)
                + (text.After == (s == 0 ? "" : strings[s - 1]) ? SameNeighbour : 0) + (text.Before == (s + 1 == steps.Length ? "" : strings[s + 1]) ? SameNeighbour : 0);
        }
    }

    /// <summary>Her words written for a step as it is now, beside those she wrote before; empty words take hers away and the step is said by the language again.</summary>
    public static ImmutableArray<StepText> With(ImmutableArray<PatternStep> steps, ImmutableArray<StepText> texts, Piece piece, string stepId, string text)
    {
        var at = steps.Select(s => s.Id).ToList().IndexOf(stepId);
        ArgumentOutOfRangeException.ThrowIfNegative(at, nameof(stepId));
        var matched = Match(steps, texts, piece);
        var kept = matched.OfStep.SetItem(at, string.IsNullOrWhiteSpace(text) ? null
            : new StepText(stepId, Strings(steps[at], piece), at == 0 ? "" : Strings(steps[at - 1], piece), at + 1 == steps.Length ? "" : Strings(steps[at + 1], piece), text));
        return [.. kept.OfType<StepText>(), .. matched.Homeless];
    }

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
