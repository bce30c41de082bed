using System.Collections.Immutable;
using Coilwright.Core.Readings;
using Coilwright.Documents.Drawing;
using Coilwright.Documents.TurnRows;

namespace Coilwright.Web.Components.Bench;

/// <summary>Turn rows of several versions, drawn so that a millimetre is as long in each.</summary>
internal static class RowsAtOneScale
{
    // How many times a scale is tried: the words beside the rows do not scale with them, so it is found in a step or two.
    private const int Tries = 4;

    // As on the bench: the small lettering is then as large as the page's small print.
    private const double PxPerMm = 5.2;

    // Two versions stand side by side from this width of the page on.
    private const double TwoFromPx = 900;

    /// <summary>How wide a version's rows will be, in pixels, before the page was measured.</summary>
    /// <param name="pageWidthPx">Width of the page.</param>
    public static double GuessPx(double pageWidthPx) => pageWidthPx >= TwoFromPx ? pageWidthPx / 2 - 70 : pageWidthPx - 34;

    /// <summary>The pictures, all of one width.</summary>
    /// <param name="versions">What is drawn.</param>
    /// <param name="widthPx">Width that the widest of them fills, in the page's pixels.</param>
    /// <param name="preferences">Her language and units.</param>
    /// <param name="close">Whether rows stand as close as the turns do; else apart, with the names of groups and what lines up between them.</param>
    public static ImmutableArray<Picture> Draw(IReadOnlyList<Reckoned> versions, double widthPx, Preferences preferences, bool close = true)
    {
        var widthMm = widthPx / (PxPerMm * preferences.TextSize.Factor());
        ImmutableArray<Picture> pictures = [];
        var scale = 1.0;
        for (var tries = 0; tries < Tries; tries++)
        {
            pictures = [.. versions.Select(v => TurnRowsDrawing.Of(v, new TurnRowsOptions
            {
                Scale = scale,
                RowsAlone = true,
                Close = close,
                Paper = false,
                MarginMm = 3,
                Language = preferences.Speech,
            }))];
            var next = Math.Clamp(scale * widthMm / pictures.Max(p => p.WidthMm), TurnRowsOptions.LeastScale, TurnRowsOptions.MostScale);
            if (Math.Abs(next / scale - 1) < 0.01) break;
            scale = next;
        }
        // The page stretches each to one width: the narrower ones get room at their right, so that they are not stretched more.
        var widest = pictures.Max(p => p.WidthMm);
        return [.. pictures.Select(p => p with { WidthMm = widest })];
    }
}
