using System.Collections.Immutable;
using System.Globalization;
using Coilwright.Core.Beads;
using Coilwright.Core.Beads.Shapes;
using Coilwright.Core.Colour;
using Coilwright.Documents.Drawing;

namespace Coilwright.Documents.BeadFigures;

/// <summary>How one kind of bead is drawn: true outline, its colours, its surface and its pattern, lit from the upper left.</summary>
/// <remarks>Drawn once as a symbol and set down wherever one is strung. Uneven kinds have several symbols, so that no row of chips is a row of twins;
/// all of them fill the kind's own length and width.</remarks>
public sealed class BeadFigure
{
    private const int UnevenKinds = 6;
    private readonly Palette _inks;
    private readonly ImmutableArray<Srgb> _colours;
    private readonly ImmutableArray<(Symbol Symbol, Outline Outline)> _drawings;

    /// <summary>Draws a kind.</summary>
    /// <param name="bead">The kind.</param>
    /// <param name="name">Begins the names of its symbols, unique in the picture, <c>[a-z][a-z0-9-]*</c>.</param>
    /// <param name="scale">Millimetres of the picture for one of the bead.</param>
    /// <param name="pattern">Its pattern.</param>
    /// <param name="inks">The inks.</param>
    public BeadFigure(Bead bead, string name, double scale, Pattern pattern, Palette inks)
    {
        Bead = bead;
        Pattern = pattern;
        _inks = inks;
        _colours = bead.Colours.IsEmpty ? [inks.Plain] : [.. bead.Colours.Select(inks.Of)];
        Silhouette = new Silhouette(bead, scale);
        Ground = Middling(_colours);
        var drawings = Silhouette.Look == SurfaceLook.Uneven ? UnevenKinds : 1;
        _drawings = [.. Enumerable.Range(0, drawings).Select(v => Draw(drawings == 1 ? name : name + "-" + (v + 1).ToString(CultureInfo.InvariantCulture), v))];
    }

    /// <summary>The kind.</summary>
    public Bead Bead { get; }

    /// <summary>Its pattern.</summary>
    public Pattern Pattern { get; }

    /// <summary>Its outline's measures.</summary>
    public Silhouette Silhouette { get; }

    /// <summary>Its colours taken together: the ground that a letter stands on.</summary>
    public Srgb Ground { get; }

    /// <summary>Whether a letter on it needs a cleared patch of <see cref="Ground"/> beneath.</summary>
    public bool LetterNeedsPatch => Pattern != Pattern.None || _colours.Length > 1;

    /// <summary>Its drawings: one, or several for uneven kinds.</summary>
    public IEnumerable<Symbol> Symbols => _drawings.Select(d => d.Symbol);

    /// <summary>The drawing for the so many-th bead of the kind, from 0, round its own middle.</summary>
    public Symbol Of(int nth) => _drawings[nth % _drawings.Length].Symbol;

    /// <summary>The outline of that drawing.</summary>
    public Outline OutlineOf(int nth) => _drawings[nth % _drawings.Length].Outline;

    /// <summary>The line round it, of its own colour.</summary>
    public Pen EdgePen => new(_inks.EdgeOf(Ground), 0.18);

    private (Symbol, Outline) Draw(string name, int variant)
    {
        var marks = ImmutableArray.CreateBuilder<Mark>();
        Outline outline;
        switch (Silhouette.Look)
        {
            case SurfaceLook.Faceted:
                outline = Silhouette.Whole;
                Facets(marks);
                break;
            case SurfaceLook.Uneven:
                var stone = new RoughStone(Silhouette, variant);
                outline = stone.Outline;
                // A stone's colours run through it in patches: its faces take them by turns.
                for (var f = 0; f < stone.Facets.Length; f++)
                    marks.Add(Area(stone.Facets[f].Face, Lit(_colours[f * f / 2 % _colours.Length], stone.Facets[f].Light)));
                break;
            default:
                outline = Silhouette.Whole;
                Smooth(marks, outline);
                break;
        }
        Hatch(marks, outline);
        marks.Add(new Drawn(outline, Paint.Lined(EdgePen)));
        return (new Symbol(name, marks.ToImmutable()), outline);
    }

    // A body in its colours, darker below, with a soft light along its upper side.
    private void Smooth(ImmutableArray<Mark>.Builder marks, Outline outline)
    {
        marks.Add(new Drawn(outline, Paint.Filled(_colours[0])));
        for (var band = 1; band < _colours.Length; band++)
            marks.Add(Area(Silhouette.Part(Edge(band), Edge(band + 1), -1, 1), _colours[band]));
        for (var band = 0; band < _colours.Length; band++)
        {
            double from = Math.Max(Edge(band), -0.98), to = Math.Min(Edge(band + 1), 0.98);
            marks.Add(Area(Silhouette.Part(from, to, 0.66, 0.97), Lit(_colours[band], -0.4)));
        }
        // One light over the whole bead, whatever its bands: a sickle, or on a disc, where that would be a speck, a streak across.
        var light = Lit(Ground, 0.85);
        marks.Add(Area(Silhouette.HalfLengthMm < 0.45 * Silhouette.HalfWidthMm
            ? Silhouette.Part(-0.5, -0.12, -0.78, 0.1) : Silhouette.Sickle(-0.74, 0.42, -0.78, 0.24), light));
    }

    // Two rows of cut faces to each side of the girdle, lit by the way they lean.
    private void Facets(ImmutableArray<Mark>.Builder marks)
    {
        double[] rows = [-1, -0.45, 0.45, 1];
        double[,] lights = { { 0.55, 0.25, -0.3 }, { 0.15, -0.05, -0.7 } };
        for (var side = 0; side < 2; side++)
            for (var row = 0; row < 3; row++)
                for (var band = 0; band < _colours.Length; band++)
                {
                    double from = Math.Max(Edge(band), side - 1), to = Math.Min(Edge(band + 1), side);
                    if (from < to) marks.Add(Area(Silhouette.Part(from, to, rows[row], rows[row + 1]), Lit(_colours[band], lights[side, row])));
                }
        var cut = new Pen(Ground.Mixed(_inks.Light, 0.55), 0.12);
        marks.Add(new Drawn(Outline.Together([Silhouette.Lengthwise(-0.45), Silhouette.Lengthwise(0.45), Silhouette.Part(0, 0, -1, 1)]), Paint.Lined(cut)));
    }

    private void Hatch(ImmutableArray<Mark>.Builder marks, Outline outline)
    {
        double[] angles = Pattern switch
        {
            Pattern.Rising => [45],
            Pattern.Falling => [-45],
            Pattern.Lengthwise => [0],
            Pattern.Across => [90],
            Pattern.Crossed => [45, -45],
            _ => [],
        };
        var apart = Math.Clamp(Math.Min(Silhouette.HalfLengthMm, Silhouette.HalfWidthMm) / 2.5, 0.5, 1.1);
        var ink = Ground.Readable(_inks.Ink, _inks.Light);
        foreach (var angle in angles)
            marks.Add(new Drawn(Hatching.Lines(outline, angle, apart), Paint.Lined(Ground.Mixed(ink, 0.5), 0.16)));
    }

    private double Edge(int band) => -1 + 2.0 * band / _colours.Length;

    private static Drawn Area(Outline outline, Srgb ink) => new(outline, Paint.Filled(ink));

    // Light 1 is the brightest side, -1 the darkest.
    private Srgb Lit(Srgb colour, double light) => light >= 0 ? colour.Mixed(_inks.Light, 0.5 * light) : colour.Mixed(_inks.Ink, -0.3 * light);

    private static Srgb Middling(ImmutableArray<Srgb> colours)
    {
        var mixed = colours[0];
        for (var i = 1; i < colours.Length; i++) mixed = mixed.Mixed(colours[i], 1.0 / (i + 1));
        return mixed;
    }
}
