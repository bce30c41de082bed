using System.Collections.Immutable;
using Coilwright.Core.Faults;
using Coilwright.Core.Tray;
using Coilwright.Storage.Shelf;

namespace Coilwright.Storage.Tray;

/// <summary>What was done to a tray since some change of it.</summary>
/// <param name="Revision">The last change, from 1; 0 when there never was one.</param>
/// <param name="Put">The kinds that were put in or are others now.</param>
/// <param name="TakenOut">Keys of kinds that were taken out and are not in again.</param>
public sealed record TrayNews(long Revision, ImmutableArray<TrayKind> Put, ImmutableArray<string> TakenOut);

/// <summary>What is said to a change of a tray.</summary>
public abstract record TrayAnswer
{
    private TrayAnswer() { }

    /// <summary>All of it is kept, and there after a crash.</summary>
    /// <param name="Revision">The change that it is.</param>
    public sealed record Kept(long Revision) : TrayAnswer;

    /// <summary>Somebody changed one of its kinds since the tray was seen. Nothing was done.</summary>
    /// <param name="Key">The first such kind.</param>
    public sealed record Behind(string Key) : TrayAnswer;

    /// <summary>One of its kinds is not sound. Nothing was done.</summary>
    /// <param name="Key">Which.</param>
    /// <param name="Why">Why.</param>
    public sealed record Refused(string Key, Fault Why) : TrayAnswer;

    /// <summary>It could not be written down and is not kept; the reason may pass.</summary>
    /// <param name="Why">Why.</param>
    public sealed record NotKept(Fault Why) : TrayAnswer;
}

/// <summary>The bead tray: every kind of bead that she knows of, with its drawer, kept beside the pieces. How many there are is the stock's business.</summary>
/// <remarks>
/// <para>A change is kept whole or not at all, of one kind or of a hundred thousand. What every change left stays in the store; the last counts.</para>
/// <para>A tray is read once and then asked what is new: <see cref="SinceAsync"/>. It is searched in memory (<see cref="TrayIndex"/>), in every store alike.</para>
/// <para>What cannot be read is told by a <see cref="ShelfUnreadableException"/>. Many may ask at once.</para>
/// </remarks>
public interface IBeadTray
{
    /// <summary>What is new since a change.</summary>
    /// <param name="revision">The last change that was seen; 0 for all of the tray.</param>
    /// <param name="cancel">Gives up.</param>
    Task<TrayNews> SinceAsync(long revision, CancellationToken cancel = default);

    /// <summary>Changes it.</summary>
    /// <param name="seen">The last change that was seen: kinds that others changed after it are not written over.</param>
    /// <param name="edits">What is done, each key once.</param>
    /// <param name="cancel">Gives up before it is kept.</param>
    Task<TrayAnswer> ChangeAsync(long seen, ImmutableArray<TrayEdit> edits, CancellationToken cancel = default);
}
