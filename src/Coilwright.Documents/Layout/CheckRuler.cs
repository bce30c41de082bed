using System.Collections.Immutable;
using System.Globalization;
using Coilwright.Documents.Drawing;

namespace Coilwright.Documents.Layout;

/// <summary>A ruler on the page to hold a real one against: it tells whether the page was printed at its own size, and how large the beads are.</summary>
internal static class CheckRuler
{
    internal const double HeightMm = 4.6;

    /// <summary>Draws it.</summary>
    /// <param name="leftMm">Its left end.</param>
    /// <param name="topMm">Its top.</param>
    /// <param name="lengthMm">What it measures, mm of the piece: a multiple of 10.</param>
    /// <param name="scale">Millimetres of the picture for one of the piece.</param>
    /// <param name="numbers">Lettering of its numbers.</param>
    /// <param name="inks">The inks.</param>
    internal static Group Draw(double leftMm, double topMm, int lengthMm, double scale, Lettering numbers, Palette inks)
    {
        var pen = new Pen(inks.Ink, 0.22);
        var line = topMm + HeightMm;
        var marks = ImmutableArray.CreateBuilder<Mark>();
        var ticks = new List<Outline> { Outline.Line(new(leftMm, line), new(leftMm + lengthMm * scale, line)) };
        // Ticks closer than half a millimetre run together in print.
        var every = scale >= 0.5 ? 1 : 5;
        for (var mm = 0; mm <= lengthMm; mm += every)
        {
            var x = leftMm + mm * scale;
            var height = mm % 10 == 0 ? 2.2 : mm % 5 == 0 ? 1.6 : 0.9;
            ticks.Add(Outline.Line(new(x, line), new(x, line - height)));
        }
        marks.Add(new Drawn(Outline.Together(ticks), Paint.Lined(pen)));
        for (var mm = 0; mm <= lengthMm; mm += scale >= 0.35 ? 10 : lengthMm)
            marks.Add(numbers.On(mm.ToString(CultureInfo.InvariantCulture), leftMm + mm * scale, line - 2.6, TextAnchor.Middle));
        return new Group(marks.ToImmutable()) { Class = "check-ruler" };
    }
}
