using System.Collections.Immutable;
using Coilwright.Core.Faults;
using Coilwright.Core.Made;
using Coilwright.Storage.Shelf;

namespace Coilwright.Storage.Made;

/// <summary>What the book says to steps.</summary>
public abstract record MadeAnswer
{
    private MadeAnswer() { }

    /// <summary>All of them are kept, and what they take out of stock is booked there; said again of steps that were all written down before.</summary>
    /// <param name="Now">Every record that was named, as it is.</param>
    public sealed record Kept(ImmutableArray<MadeRecord> Now) : MadeAnswer;

    /// <summary>One cannot be done, and nothing of them was, in the book or in the stock.</summary>
    /// <param name="At">Which step.</param>
    /// <param name="Why">Why: of the book, or of the stock.</param>
    public sealed record Refused(int At, Fault Why) : MadeAnswer;

    /// <summary>They could not be written down and are not kept; the reason may pass.</summary>
    /// <param name="Why">Why.</param>
    public sealed record NotKept(Fault Why) : MadeAnswer;
}

/// <summary>What was made, from what, and where it went: a book that is only added to.</summary>
/// <remarks>
/// <para>Whether a step can be done is decided in the same transaction that writes it down, and what it takes out of stock is booked in that transaction too, by the stock's own rules:
/// the stock always lies in the same store. A step that was given before (the same id) counts once.</para>
/// <para>Names of people and notes are kept apart. <see cref="MadeStep.Erase"/> takes those of a record out of the store for good; backups that were made before have them still.</para>
/// <para>What cannot be read is told by a <see cref="ShelfUnreadableException"/>. What is answered with <see cref="MadeAnswer.Kept"/> is there after a crash, in a book that outlives the
/// program.</para>
/// </remarks>
public interface IMadeBook
{
    /// <summary>Every record, by number; those that were taken back too.</summary>
    Task<ImmutableArray<MadeRecord>> ListAsync(CancellationToken cancel = default);

    /// <summary>One record; null when there is none.</summary>
    Task<MadeRecord?> OpenAsync(Guid made, CancellationToken cancel = default);

    /// <summary>Writes steps down, all of them in their order or none.</summary>
    /// <param name="steps">The steps; each finds what those before it left.</param>
    /// <param name="cancel">Gives up before they are kept.</param>
    Task<MadeAnswer> WriteDownAsync(ImmutableArray<MadeStep> steps, CancellationToken cancel = default);
}
