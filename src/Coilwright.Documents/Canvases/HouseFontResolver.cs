using Coilwright.Documents.Typefaces;
using PdfSharp.Fonts;

namespace Coilwright.Documents.Canvases;

/// <summary>Hands the house typeface to PDFsharp, which looks for no other on the machine.</summary>
internal sealed class HouseFontResolver : IFontResolver
{
    private static readonly Lock Gate = new();

    /// <summary>Makes it PDFsharp's one resolver for this process; a second call does nothing.</summary>
    public static void Use()
    {
        lock (Gate)
            if (GlobalFontSettings.FontResolver is not HouseFontResolver) GlobalFontSettings.FontResolver = new HouseFontResolver();
    }

    public FontResolverInfo? ResolveTypeface(string familyName, bool bold, bool italic) =>
        familyName == HouseFaces.Family ? new FontResolverInfo((bold ? FaceStyle.Bold : italic ? FaceStyle.Italic : FaceStyle.Regular).ToString()) : null;

    public byte[]? GetFont(string faceName) =>
        Enum.TryParse<FaceStyle>(faceName, out var style) ? HouseFaces.Of(style).File.ToArray() : null;
}
