using System.Collections.Immutable;
using Coilwright.Core.Faults;
using Coilwright.Storage.Shelf;

namespace Coilwright.Web.Bench;

/// <summary>Something that the bench has to say to her about what she just did.</summary>
public abstract record BenchNote
{
    private BenchNote() { }

    /// <summary>What she asked for cannot be done; nothing changed.</summary>
    /// <param name="Why">Why.</param>
    public sealed record Refused(ImmutableArray<Fault> Why) : BenchNote;

    /// <summary>It was done, and something went with it.</summary>
    /// <param name="What">What.</param>
    public sealed record Told(ImmutableArray<Fault> What) : BenchNote;

    /// <summary>It shows on this page and could not be written down yet. It is kept here, and tried again with the next step or when she asks.</summary>
    /// <param name="Why">Why.</param>
    /// <param name="Steps">How many steps wait.</param>
    public sealed record NotWritten(Fault Why, int Steps) : BenchNote;

    /// <summary>The piece went on in another window before this step; the step is still here, and she decides.</summary>
    /// <param name="Now">The piece as the other window left it.</param>
    /// <param name="Steps">How many steps of hers wait.</param>
    public sealed record Behind(ShelvedPiece Now, int Steps) : BenchNote;

    /// <summary>The piece was changed in another window, and is shown as it is now.</summary>
    public sealed record ChangedElsewhere : BenchNote;

    /// <summary>The shelf has the piece no more.</summary>
    public sealed record Gone : BenchNote;
}
