using System.Collections.Immutable;

namespace Coilwright.Core.Made;

/// <summary>A step as it stands in the book.</summary>
/// <param name="Place">Its place: a later one has a greater.</param>
/// <param name="At">When it was written down, UTC.</param>
/// <param name="Step">The step.</param>
public sealed record MadeEntry(long Place, DateTimeOffset At, MadeStep Step);

/// <summary>What was made at one time and alike, with everything that happened to it since. What it is now follows from its entries and is nowhere written down.</summary>
public sealed record MadeRecord
{
    /// <summary>A record from its entries.</summary>
    /// <param name="number">Its number in the book, from 1.</param>
    /// <param name="entries">All of them, the earliest first; the first is how it was made.</param>
    public MadeRecord(long number, ImmutableArray<MadeEntry> entries)
    {
        (Number, Entries) = (number, entries);
        Make = (MadeStep.Make)entries[0].Step;
        Now = MadeState.Of(Standing.Select(e => e.Step), out _) ?? throw new ArgumentException("What does not follow was never written down.", nameof(entries));
    }

    /// <summary>Its number in the book.</summary>
    public long Number { get; }

    /// <summary>Everything that was written down, the earliest first.</summary>
    public ImmutableArray<MadeEntry> Entries { get; }

    /// <summary>How it was made.</summary>
    public MadeStep.Make Make { get; }

    /// <summary>What it is now.</summary>
    public MadeState Now { get; }

    /// <summary>The record's own name.</summary>
    public Guid Id => Make.Id;

    /// <summary>The entries that count: all that were not taken back, and that take nothing back themselves.</summary>
    public IEnumerable<MadeEntry> Standing => Entries.Where(e => e.Step is not MadeStep.TakeBack && !IsTakenBack(e.Step.Id));

    /// <summary>Whether all of it was a mistake: nothing was made.</summary>
    public bool IsVoid => IsTakenBack(Id);

    /// <summary>Whether somebody is named in it, or something noted.</summary>
    public bool HasNames => Entries.Any(e => e.Step.Who is not null || e.Step.Note is not null);

    /// <summary>Whether an entry was taken back.</summary>
    public bool IsTakenBack(Guid step) => Entries.Any(e => e.Step is MadeStep.TakeBack back && back.Step == step);

    /// <summary>Whether every word of a text is in its number, name or in whom and where it went; upper and lower case are the same.</summary>
    public bool Matches(string text)
    {
        string?[] said =
        [
            Number.ToString(System.Globalization.CultureInfo.InvariantCulture), Make.Title,
            .. Entries.SelectMany(e => new[] { e.Step.Who, e.Step is MadeStep.Sell sell ? sell.Show ?? sell.Where : null }), .. Now.AtShows.Keys,
        ];
        return text.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries).All(word => said.Any(s => s?.Contains(word, StringComparison.OrdinalIgnoreCase) == true));
    }
}
