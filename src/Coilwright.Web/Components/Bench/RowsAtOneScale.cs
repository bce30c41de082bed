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

    /// <summary>The pictures, all of one width.</summary>
    /// <param name="versions">What is drawn.</param>
    /// <param name="widthMm">Width that the widest of them fills, mm.</param>
    /// <param name="preferences">Her language and units.</param>
    /// <param name="close">Whether rows stand as close as the turns do; else apart, with the names of groups and what lines up between them.</param>
    public static ImmutableArray<Picture> Draw(IReadOnlyList<Reckoned> versions, double widthMm, Preferences preferences, bool close = true)
    {
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
