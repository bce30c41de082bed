using System.Security.Cryptography;

namespace Coilwright.Documents.Packs;

/// <summary>What a file of a pack is.</summary>
public enum PackedKind
{
    /// <summary>A document on paper or for a screen.</summary>
    Document,

    /// <summary>A picture.</summary>
    Picture,

    /// <summary>The piece as a model to turn.</summary>
    Model,

    /// <summary>What goes in and what to buy.</summary>
    Materials,

    /// <summary>The text to sell it with.</summary>
    Listing,
}

/// <summary>One file of a pack.</summary>
/// <param name="Name">Its name in the pack, with <c>/</c> between folders.</param>
/// <param name="Kind">What it is.</param>
/// <param name="MediaType">Its media type.</param>
/// <param name="About">What it shows or is, in a sentence: also the words for a picture where it is shown.</param>
/// <param name="Bytes">The file.</param>
public sealed record PackedFile(string Name, PackedKind Kind, string MediaType, string About, ReadOnlyMemory<byte> Bytes)
{
    /// <summary>Size of a picture, pixels; null for what is none.</summary>
    public (int Width, int Height)? Pixels { get; init; }

    /// <summary>SHA-256 of its bytes (FIPS 180-4), in small hexadecimal digits.</summary>
    public string Sha256 { get; } = Convert.ToHexStringLower(SHA256.HashData(Bytes.Span));
}
