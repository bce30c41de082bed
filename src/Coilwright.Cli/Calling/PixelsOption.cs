using System.Collections.Immutable;
using System.CommandLine;
using System.Globalization;
using Coilwright.Core.Faults;
using Coilwright.Documents.Canvases;
using Coilwright.Documents.Packs;
using Coilwright.Wording;

namespace Coilwright.Cli.Calling;

/// <summary>The option of sizes of pictures: width x height in pixels, as often as there are sizes.</summary>
internal static class PixelsOption
{
    /// <summary>The usual sizes as they would be typed.</summary>
    public static string Usual { get; } = string.Join(", ", PackRequest.UsualPixels.Select(p => string.Create(CultureInfo.InvariantCulture, $"{p.WidthPx}x{p.HeightPx}")));

    /// <summary>Reads it, each size once; the usual ones where it is not given. What is no size adds a fault.</summary>
    public static ImmutableArray<(int WidthPx, int HeightPx)> Read(ParseResult parsed, Option<string[]> option, List<Fault> faults)
    {
        if (parsed.GetValue(option) is not { Length: > 0 } texts) return PackRequest.UsualPixels;
        var sizes = new List<(int, int)>();
        foreach (var text in texts)
            if (text.Split('x') is [var a, var b] && Whole(a) is { } width && Whole(b) is { } height && new PixelFrame(width, height).IsAllowed) sizes.Add((width, height));
            else faults.Add(Fault.Of(UsageCodes.PixelsForm, option.Name, text, ("min", Said(PixelFrame.LeastPx)), ("max", Said(PixelFrame.MostPx)), ("all", Said(PixelFrame.MostPixels / 1_000_000))));
        ImmutableArray<(int, int)> once = [.. sizes.Distinct()];
        if (once.Length > PackRequest.MostSizes) faults.Add(Fault.Of(UsageCodes.TooManySizes, option.Name, Said(once.Length), ("max", Said(PackRequest.MostSizes))));
        return once;
    }

    private static string Said(int number) => number.ToString(CultureInfo.InvariantCulture);

    private static int? Whole(string text) => int.TryParse(text, NumberStyles.None, CultureInfo.InvariantCulture, out var number) ? number : null;
}
