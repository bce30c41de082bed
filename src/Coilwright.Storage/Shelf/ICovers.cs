using System.Collections.Immutable;
using Coilwright.Core.Faults;
using Coilwright.Core.Pieces;

namespace Coilwright.Storage.Shelf;

/// <summary>The picture on the cover of a piece's written pattern.</summary>
/// <param name="Id">The shelf's own name for it: another picture is another name.</param>
/// <param name="Photo">The picture.</param>
/// <param name="IsStill">Whether it is a still of the coil in space, drawn and not photographed.</param>
public sealed record Cover(Guid Id, Photo Photo, bool IsStill);

/// <summary>What the shelf says to a cover.</summary>
public abstract record CoverAnswer
{
    private CoverAnswer() { }

    /// <summary>It is so now.</summary>
    /// <param name="Now">The cover; null when it was taken off.</param>
    public sealed record Kept(Cover? Now) : CoverAnswer;

    /// <summary>There is no such piece.</summary>
    public sealed record Missing : CoverAnswer;

    /// <summary>It is not kept; what was there before still is.</summary>
    /// <param name="Why">Why, at least one reason.</param>
    public sealed record NotKept(ImmutableArray<Fault> Why) : CoverAnswer;
}

/// <summary>The covers of the pieces' patterns: at most one for each piece.</summary>
/// <remarks>A cover belongs to the piece and to none of its states, and is no step. What a photo says of its taking is not kept (<see cref="PhotoCleaning"/>).</remarks>
public interface ICovers
{
    /// <summary>The cover of a piece; null when it has none, or there is no such piece.</summary>
    Task<Cover?> CoverAsync(Guid piece, CancellationToken cancel = default);

    /// <summary>Keeps a cover in place of the one before it.</summary>
    /// <param name="piece">The piece.</param>
    /// <param name="photo">The picture.</param>
    /// <param name="isStill">Whether it is a still of the coil in space.</param>
    /// <param name="cancel">Gives up before it is kept.</param>
    Task<CoverAnswer> KeepCoverAsync(Guid piece, Photo photo, bool isStill, CancellationToken cancel = default);

    /// <summary>Takes the cover off, where there is one.</summary>
    Task<CoverAnswer> TakeCoverOffAsync(Guid piece, CancellationToken cancel = default);
}

/// <summary>The rules that a cover must meet, on every shelf.</summary>
public static class CoverRules
{
    /// <summary>The kinds of picture that are taken: those that go into a PDF.</summary>
    public static ImmutableSortedSet<string> MediaTypes { get; } = ["image/jpeg", "image/png"];

    /// <summary>What is wrong with a picture.</summary>
    public static ImmutableArray<Fault> Of(Photo photo)
    {
        if (PhotoSize.Check(photo.Bytes.Length, "photo") is { } tooLarge) return [tooLarge];
        if (MediaTypes.Contains(photo.MediaType) && TrialRules.KindOf(photo.Bytes.Span) == photo.MediaType) return [];
        return [Fault.Of(FaultCodes.PhotoKind, "photo", photo.MediaType.Length <= 60 ? photo.MediaType : "", ("known", "JPEG, PNG"))];
    }
}
