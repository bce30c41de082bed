using System.Collections.Immutable;
using Coilwright.Core.Faults;
using Coilwright.Core.Pieces;

namespace Coilwright.Storage.Shelf;

/// <summary>A photo of a trial on the mat, as it came from the camera.</summary>
/// <param name="MediaType">What it is, one of <see cref="TrialRules.MediaTypes"/>.</param>
/// <param name="Bytes">Its bytes, at most <see cref="PhotoSize.MostBytes"/>.</param>
public sealed record Photo(string MediaType, ReadOnlyMemory<byte> Bytes);

/// <summary>What was tried, and what came of it.</summary>
/// <param name="Id">The log's own name for it.</param>
/// <param name="Revision">The state of the piece that was tried; it can be gone back to.</param>
/// <param name="At">When.</param>
/// <param name="Tried">What was tried, in her words.</param>
/// <param name="DroppedBecause">Why it was dropped, in a line; null while it is not.</param>
/// <param name="HasPhoto">Whether there is a photo.</param>
public sealed record Trial(Guid Id, long Revision, DateTimeOffset At, string Tried, string? DroppedBecause, bool HasPhoto);

/// <summary>What the log says to an entry.</summary>
public abstract record TrialAnswer
{
    private TrialAnswer() { }

    /// <summary>It is kept.</summary>
    /// <param name="Now">The entry as it is; as it was, when it was taken out.</param>
    public sealed record Kept(Trial Now) : TrialAnswer;

    /// <summary>There is no such piece, state or entry.</summary>
    public sealed record Missing : TrialAnswer;

    /// <summary>It is not kept.</summary>
    /// <param name="Why">Why, at least one reason.</param>
    public sealed record NotKept(ImmutableArray<Fault> Why) : TrialAnswer;
}

/// <summary>The trial log of a piece: what was strung on trial, how it looked, and why it was dropped.</summary>
/// <remarks>Entries belong to a piece and to the state that was tried. They are notes, not steps: they can be added to and taken out.</remarks>
public interface ITrialLog
{
    /// <summary>The entries of a piece, the earliest first; empty when there is no such piece.</summary>
    Task<ImmutableArray<Trial>> TrialsAsync(Guid piece, CancellationToken cancel = default);

    /// <summary>Notes a trial.</summary>
    /// <param name="piece">The piece.</param>
    /// <param name="revision">The state that was tried.</param>
    /// <param name="tried">What was tried.</param>
    /// <param name="photo">How it looked; null when there is no photo.</param>
    /// <param name="cancel">Gives up before it is kept.</param>
    Task<TrialAnswer> AddTrialAsync(Guid piece, long revision, string tried, Photo? photo, CancellationToken cancel = default);

    /// <summary>Says why a trial was dropped, or with null that it was not.</summary>
    Task<TrialAnswer> DropTrialAsync(Guid trial, string? because, CancellationToken cancel = default);

    /// <summary>Takes an entry out, its photo with it.</summary>
    Task<TrialAnswer> RemoveTrialAsync(Guid trial, CancellationToken cancel = default);

    /// <summary>The photo of a trial; null when there is none.</summary>
    Task<Photo?> PhotoAsync(Guid trial, CancellationToken cancel = default);
}

/// <summary>The rules that an entry of a trial log must meet, on every shelf.</summary>
public static class TrialRules
{
    /// <summary>The kinds of photo that are taken. Drawings with scripts in them are none.</summary>
    public static ImmutableSortedSet<string> MediaTypes { get; } = ["image/jpeg", "image/png", "image/webp"];

    /// <summary>What is wrong with a new entry.</summary>
    public static ImmutableArray<Fault> Of(string tried, Photo? photo)
    {
        var line = PieceRules.OfText("tried", tried, mayBeEmpty: false);
        return photo is null ? line : [.. line, .. Of(photo)];
    }

    /// <summary>What is wrong with the reason for dropping one.</summary>
    public static ImmutableArray<Fault> OfReason(string? because) => because is null ? [] : PieceRules.OfText("droppedBecause", because, mayBeEmpty: true);

    /// <summary>What is wrong with a photo.</summary>
    public static ImmutableArray<Fault> Of(Photo photo)
    {
        if (PhotoSize.Check(photo.Bytes.Length, "photo") is { } tooLarge) return [tooLarge];
        // What a file calls itself is not what it is: a browser goes by the type that we give it.
        if (MediaTypes.Contains(photo.MediaType) && KindOf(photo.Bytes.Span) == photo.MediaType) return [];
        return [Fault.Of(FaultCodes.PhotoKind, "photo", photo.MediaType.Length <= 60 ? photo.MediaType : "", ("known", "JPEG, PNG, WebP"))];
    }

    /// <summary>The kind of photo that bytes are, by how they begin; null when none that is taken.</summary>
    public static string? KindOf(ReadOnlySpan<byte> bytes) => bytes switch
    {
        [0xFF, 0xD8, 0xFF, ..] => "image/jpeg",
        [0x89, (byte)'P', (byte)'N', (byte)'G', 0x0D, 0x0A, 0x1A, 0x0A, ..] => "image/png",
        [(byte)'R', (byte)'I', (byte)'F', (byte)'F', _, _, _, _, (byte)'W', (byte)'E', (byte)'B', (byte)'P', ..] => "image/webp",
        _ => null,
    };
}
