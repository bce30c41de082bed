using System.Collections.Immutable;
using System.Text.RegularExpressions;
using Coilwright.Core.Measures;

namespace Coilwright.Core.Pieces;

/// <summary>How much a pattern asks of the hands that follow it, as its maker judges.</summary>
public enum PatternLevel
{
    /// <summary>For a first piece.</summary>
    Beginner,

    /// <summary>For someone who has strung a few.</summary>
    Intermediate,

    /// <summary>For practised hands.</summary>
    Advanced,
}

/// <summary>A place in a pattern that something is tied to: a step, and what the step was when it was tied.</summary>
/// <param name="Step">The step's id then.</param>
/// <param name="Strings">What it strung then, by bead ids, as <c>2(3 nugget, disc)</c>; empty for a step that strings nothing.</param>
/// <param name="After">What the step before it strung; empty for none.</param>
/// <param name="Before">What the step after it strung; empty for none.</param>
public sealed record StepAnchor(string Step, string Strings, string After, string Before);

/// <summary>The maker's own words for a step.</summary>
/// <param name="At">The step.</param>
/// <param name="Text">Her words.</param>
public sealed record StepText(StepAnchor At, string Text);

/// <summary>What somebody who tried the pattern noted.</summary>
/// <param name="At">The step; null where it is of the whole pattern.</param>
/// <param name="Note">What she noted.</param>
/// <param name="By">Who, as the maker calls her; empty when it is not said.</param>
/// <param name="Version">The version of the pattern that was tried, as the maker calls it; empty when it is not said.</param>
/// <param name="Settled">Whether the maker has dealt with it.</param>
public sealed record TesterNote(StepAnchor? At, string Note, string By, string Version, bool Settled);

/// <summary>What a maker writes for her pattern beside what follows from the piece. All of it may be absent.</summary>
public sealed record PatternNotes
{
    /// <summary>Nothing written.</summary>
    public static PatternNotes None { get; } = new();

    /// <summary>Longest text of hers, in characters: some pages. Our choice.</summary>
    public const int MostText = 10_000;

    /// <summary>How long it takes, minutes: from a ring to some weeks of evenings.</summary>
    public static readonly Limits TimeMinutes = Limits.Between(1, 60_000, "");

    /// <summary>A few words at the head.</summary>
    public string? Introduction { get; init; }

    /// <summary>What it asks of the hands.</summary>
    public PatternLevel? Level { get; init; }

    /// <summary>How long it takes, minutes.</summary>
    public int? Minutes { get; init; }

    /// <summary>What one must know how to do.</summary>
    public ImmutableArray<string> Techniques { get; init; } = [];

    /// <summary>How the piece is looked after.</summary>
    public string? Care { get; init; }

    /// <summary>What others may do with the pattern.</summary>
    public string? Usage { get; init; }

    /// <summary>Who designed it, as she wants to be named.</summary>
    public string? By { get; init; }

    /// <summary>Her own words for steps.</summary>
    public ImmutableArray<StepText> Words { get; init; } = [];

    /// <summary>What testers noted.</summary>
    public ImmutableArray<TesterNote> Testers { get; init; } = [];

    /// <summary>Whether nothing is written.</summary>
    public bool IsEmpty => Introduction is null && Level is null && Minutes is null && Techniques.IsDefaultOrEmpty && Care is null && Usage is null && By is null
        && Words.IsDefaultOrEmpty && Testers.IsDefaultOrEmpty;

    /// <summary>The same with another id for a bead, wherever a step strings it.</summary>
    internal PatternNotes Renamed(string from, string to)
    {
        var id = new Regex($"(?<![a-z0-9-]){Regex.Escape(from)}(?![a-z0-9-])");
        return this with
        {
            Words = [.. Words.Select(w => w with { At = Anchor(w.At) })],
            Testers = [.. Testers.Select(t => t with { At = t.At is null ? null : Anchor(t.At) })],
        };

        StepAnchor Anchor(StepAnchor at) => at with { Strings = id.Replace(at.Strings, to), After = id.Replace(at.After, to), Before = id.Replace(at.Before, to) };
    }

    /// <summary>What whoever designed it stands under among <see cref="Texts"/>: a name, whose initials are no key letters.</summary>
    public const string ByField = "by";

    /// <summary>The texts on the piece as a whole, by the name of their field.</summary>
    public IEnumerable<(string Where, string Text)> Texts =>
        new[] { ("introduction", Introduction), ("techniques", string.Join('\n', Techniques)), (ByField, By), ("care", Care), ("usage", Usage) }.Where(t => !string.IsNullOrWhiteSpace(t.Item2)).Select(t => (t.Item1, t.Item2!));
}
