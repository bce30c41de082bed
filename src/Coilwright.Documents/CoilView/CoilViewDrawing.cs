using System.Collections.Immutable;
using System.Globalization;
using Coilwright.Core.Beads;
using Coilwright.Core.Beads.Shapes;
using Coilwright.Core.Colour;
using Coilwright.Core.Geometry;
using Coilwright.Core.Readings;
using Coilwright.Documents.Drawing;
using Coilwright.Documents.Layout;
using Coilwright.Documents.Typefaces;

namespace Coilwright.Documents.CoilView;

/// <summary>The piece as a coil, seen from the front and a little from above, the top of the wrist towards whoever looks: what lies behind is paler.</summary>
/// <remarks>
/// <para>From the quick lie: an even round helix with the pitch that the readings give. How the turns truly settle is another matter. The first turn is
/// the upper one and beads run from left to right in front, as in the turn rows.</para>
/// <para>Painted from back to front by each bead's middle; a bead that stands over its neighbours' turns, as a focal does, is painted after them.</para>
/// </remarks>
public static class CoilViewDrawing
{
    private const double AboveDeg = 24;

    // How much of the paper is mixed into what lies at the very back.
    private const double Paleness = 0.62;

    private const double CaptionGapMm = 4;

    // A single turn is a slim thing: as the head of a page it may stand larger than it is, but no larger than this.
    private const double MostEnlarged = 1.6;

    // Ink that lines have beyond what they go round.
    private const double EdgeMm = 0.25;

    /// <summary>Draws the coil. At true size unless a width is asked for.</summary>
    public static Picture Of(Reckoned reckoned, PictureOptions? options = null)
    {
        options ??= new PictureOptions();
        return Draw(reckoned, options, options.WidthMm is { } width ? (width - 2 * options.MarginMm - 2 * EdgeMm) / TrueSize(reckoned).WidthMm : 1);
    }

    /// <summary>Draws the coil as large as it goes into a width and a height, no wider than it and its words are, though not much larger than it is; null where it would come out narrower than the least width, as one of very many turns would, or of a single bead.</summary>
    /// <param name="reckoned">The readings.</param>
    /// <param name="mostHeightMm">Height of the whole picture at most, mm.</param>
    /// <param name="leastWidthMm">The least width of the coil, mm.</param>
    /// <param name="options">How it is drawn, with the width that it goes into.</param>
    internal static Picture? Within(Reckoned reckoned, double mostHeightMm, double leastWidthMm, PictureOptions options)
    {
        var whole = TrueSize(reckoned);
        var around = 2 * (options.MarginMm + EdgeMm);
        // Beneath it one or two lines of words.
        var words = CaptionGapMm + 2 * new PictureStyle(options).Body.LineMm;
        var scale = Math.Min(MostEnlarged, Math.Min((options.WidthMm!.Value - around) / whole.WidthMm, (mostHeightMm - around - words) / whole.HeightMm));
        return whole.WidthMm * Math.Min(1, scale) + around < leastWidthMm ? null : Draw(reckoned, options, scale, isClose: true);
    }

    private static Picture Draw(Reckoned reckoned, PictureOptions options, double wantedScale, bool isClose = false)
    {
        var style = new PictureStyle(options);
        var margin = options.MarginMm;
        var lettering = style.Body with { Ink = style.Inks.Quiet };
        var (marks, seen) = Painted(reckoned, style, Math.Max(0.1, wantedScale));

        var says = style.Language.Pictures.CoilSeen;
        var most = options.WidthMm ?? seen.WidthMm + 2 * margin;
        var pageWidth = isClose ? Math.Min(most, Math.Max(seen.WidthMm, lettering.WidthMm(says)) + 2 * (margin + EdgeMm)) : most;
        var words = style.Face.Lines(says, lettering.SizeMm, lettering.Weight, pageWidth - 2 * margin);
        double left = (pageWidth - seen.WidthMm) / 2;
        var height = margin + seen.HeightMm + CaptionGapMm + words.Length * lettering.LineMm + margin * 2 / 3;
        var all = ImmutableArray.CreateBuilder<Mark>();
        all.AddRange(style.Paper(options, pageWidth, height));
        all.Add(new Group(marks) { MoveRightMm = left - seen.LeftMm, MoveDownMm = margin - seen.TopMm, Class = "coil" });
        for (var i = 0; i < words.Length; i++)
            all.Add(lettering.Under(words[i], pageWidth / 2, margin + seen.HeightMm + CaptionGapMm + i * lettering.LineMm, TextAnchor.Middle) with { Class = "caption" });
        var said = style.Language.Fill(style.Language.Pictures.Coil, ("title", reckoned.Piece.Title),
            ("turns", style.Language.Number(reckoned.Fit.TurnsWorn, 1)), ("beads", reckoned.Lie.Count));
        return new Picture(pageWidth, height, reckoned.Piece.Title, said, all.ToImmutable()) { Language = style.Language.Code };
    }

    // Measured on a small picture: beads are painted from the fewer points, the smaller they are seen.
    private static (double WidthMm, double HeightMm) TrueSize(Reckoned reckoned)
    {
        const double small = 0.25;
        var coil = new CoilPath(reckoned, new Slant(AboveDeg, small));
        var box = Enumerable.Range(0, reckoned.Lie.Count)
            .Select(i => Box.Round(coil.Bead(reckoned.Piece.Beads[reckoned.Piece.Order.Kinds[i]], i).Outline())!.Value)
            .Concat(coil.EndLoops().Select(l => Box.At(l.Middle.XMm, l.Middle.YMm, 0, 0).Grown(l.RadiusMm)))
            .Aggregate((a, b) => a.With(b));
        return (box.WidthMm / small, box.HeightMm / small);
    }

    private static (ImmutableArray<Mark> Marks, Box Box) Painted(Reckoned reckoned, PictureStyle style, double scale)
    {
        var slant = new Slant(AboveDeg, scale);
        var coil = new CoilPath(reckoned, slant);
        var parts = new List<(double Nearness, Mark Mark, Box Box)>();
        for (var i = 0; i < reckoned.Lie.Count; i++)
        {
            var bead = reckoned.Piece.Beads[reckoned.Piece.Order.Kinds[i]];
            var standing = coil.Bead(bead, i);
            var letter = reckoned.Counts.First(k => k.KindIndex == reckoned.Piece.Order.Kinds[i]).Letter;
            var mark = new PaintedBead(style.Inks, bead, standing, Paleness * coil.BackShare(i)).Draw(scale) with
            {
                Class = "bead kind-" + letter.ToLowerInvariant(),
                Id = "coil-bead-" + (i + 1).ToString(CultureInfo.InvariantCulture),
            };
            // What stands over its neighbours' turns lies a radius nearer than their beads, as far as its own side of the coil goes.
            var lift = bead.Shape.HidesHalfMm(bead, reckoned.Lie.RadiusMm) is null ? 0 : bead.WidthMm / 2;
            parts.Add((standing.Nearness + lift, mark, Box.Round(standing.Whole)!.Value.Grown(0.2)));
        }
        var steel = style.Inks.Steel;
        var thick = Math.Max(0.25, reckoned.Piece.Wire.WireMm * scale);
        foreach (var (points, nearness, back) in coil.BareWire())
            parts.Add((nearness, new Drawn(Outline.Through(points, closed: false),
                Paint.Lined(new Pen(steel.Mixed(style.Inks.Paper, Paleness * back), thick) { Ends = LineEnds.Round })), Box.Round(points)!.Value.Grown(thick)));
        foreach (var (middle, radius, nearness, back) in coil.EndLoops())
            parts.Add((nearness, new Circle(middle, radius, Paint.Lined(steel.Mixed(style.Inks.Paper, Paleness * back), thick)),
                Box.At(middle.XMm, middle.YMm, 0, 0).Grown(radius + thick)));
        var box = parts.Select(p => p.Box).Aggregate((a, b) => a.With(b));
        return ([.. parts.OrderBy(p => p.Nearness).Select(p => p.Mark)], box);
    }
}

/// <summary>The wire's way round the wrist and along the arm.</summary>
internal sealed class CoilPath(Reckoned reckoned, Slant slant)
{
    private readonly Helix _helix = new(reckoned.Lie.RadiusMm, reckoned.Worn.PitchMm);

    private double AngleRad(double alongMm) => reckoned.Lie.AngleDegAt(alongMm) * Math.PI / 180;

    internal BeadInSpace Bead(Bead bead, int index)
    {
        var along = reckoned.Lie.BeadMiddleMm(index);
        return new BeadInSpace(bead, index, AngleRad(along), reckoned.Lie.RadiusMm, At(along).Z, slant);
    }

    /// <summary>How far at the back a bead stands: 0 in front, 1 at the very back.</summary>
    internal double BackShare(int index) => BackShareAt(reckoned.Lie.BeadMiddleMm(index));

    private double BackShareAt(double alongMm) => Math.Clamp(0.55 - Math.Cos(AngleRad(alongMm)), 0, 1) is var share ? share * share * (3 - 2 * share) : 0;

    // The top of the wrist faces whoever looks, and the coil goes down as it goes round.
    private Space At(double alongMm)
    {
        var (towards, right, down) = _helix.At(AngleRad(alongMm), reckoned.Lie.TurnsAt(alongMm));
        return new Space(right, towards, -down);
    }

    /// <summary>The wire where no bead covers it, in pieces short enough to be sorted among the beads.</summary>
    internal IEnumerable<(ImmutableArray<Point> Points, double Nearness, double Back)> BareWire()
    {
        var lie = reckoned.Lie;
        double HalfMm(int i) => reckoned.Piece.Beads[reckoned.Piece.Order.Kinds[i]].LengthMm / 2;
        var from = 0.0;
        for (var i = 0; i <= lie.Count; i++)
        {
            var to = i < lie.Count ? lie.BeadMiddleMm(i) - HalfMm(i) : lie.BeadedMm;
            if (to - from > 0.05)
            {
                // A twentieth of a millimetre into both beads, so that no gap shows.
                var steps = Math.Max(1, (int)Math.Ceiling((to - from) / 4));
                for (var s = 0; s < steps; s++)
                {
                    double a = from + (to - from) * s / steps - 0.05, b = from + (to - from) * (s + 1) / steps + 0.05;
                    yield return ([slant.Seen(At(a)), slant.Seen(At((a + b) / 2)), slant.Seen(At(b))], slant.Nearness(At((a + b) / 2)) - 0.5, BackShareAt((a + b) / 2));
                }
            }
            if (i < lie.Count) from = Math.Max(from, lie.BeadMiddleMm(i) + HalfMm(i));
        }
    }

    /// <summary>Turned end loops, seen as rings.</summary>
    internal IEnumerable<(Point Middle, double RadiusMm, double Nearness, double Back)> EndLoops()
    {
        var wireMm = reckoned.Piece.Wire.WireMm;
        foreach (var (end, at, way) in new[] { (reckoned.Piece.Ends.Start, 0.0, -1), (reckoned.Piece.Ends.Finish, reckoned.Lie.BeadedMm, 1) })
            if (end.IsTurned)
            {
                var radius = (end.InsideMm + wireMm) / 2;
                var middle = At(at + way * radius);
                yield return (slant.Seen(middle), radius * slant.Scale, slant.Nearness(middle), BackShareAt(at + way * radius));
            }
    }
}

/// <summary>A bead in its colours and light, as it stands on the coil.</summary>
internal sealed class PaintedBead(Palette inks, Bead bead, BeadInSpace standing, double paleness)
{
    internal Group Draw(double scale)
    {
        ImmutableArray<Srgb> colours = bead.Colours.IsEmpty ? [inks.Plain] : [.. bead.Colours.Select(inks.Of)];
        var outline = standing.Whole;
        var ground = colours.Aggregate((a, b) => a.Mixed(b, 0.5));
        var marks = ImmutableArray.CreateBuilder<Mark>();
        var look = bead.Shape.Profile(bead).Look;
        if (look == SurfaceLook.Smooth) Smooth(marks, outline, colours);
        else Cut(marks, outline, colours, look);
        var edge = Pale(inks.EdgeOf(ground));
        marks.Add(new Polygon(outline, Paint.Lined(edge, Math.Clamp(0.18 * scale, 0.1, 0.25))));
        return new Group(marks.ToImmutable());
    }

    private void Smooth(ImmutableArray<Mark>.Builder marks, ImmutableArray<Point> outline, ImmutableArray<Srgb> colours)
    {
        marks.Add(new Polygon(outline, Paint.Filled(Pale(colours[0]))));
        // Bands along the hole, the farther ones first.
        if (colours.Length > 1)
            foreach (var band in Enumerable.Range(0, colours.Length).OrderBy(b => (2 * b + 1 - colours.Length) * standing.Along.Y))
                marks.Add(new Polygon(standing.Outline(Edge(band, colours.Length), Edge(band + 1, colours.Length)), Paint.Filled(Pale(colours[band]))));
        if (standing.NearFace() is { Length: > 2 } face)
        {
            var shade = colours[standing.Along.Y > 0 ? ^1 : 0];
            marks.Add(new Polygon(face, new Paint(Pale(shade.Mixed(inks.Ink, 0.2)), new Pen(Pale(inks.EdgeOf(shade)), 0.12))));
        }
        // Light falls from above and in front: on the outer side, where it is seen; on a disc it would be a speck.
        if (standing.Out.Y < 0.1 || bead.LengthMm < 0.45 * bead.WidthMm) return;
        marks.Add(new Polygon(standing.Light(), Paint.Filled(Pale(colours[0].Mixed(inks.Light, 0.42)))));
    }

    private static double Edge(int band, int bands) => -1 + 2.0 * band / bands;

    // Faces fall away from a flat table, each lit by the way it leans.
    private void Cut(ImmutableArray<Mark>.Builder marks, ImmutableArray<Point> outline, ImmutableArray<Srgb> colours, SurfaceLook look)
    {
        var box = Box.Round(outline)!.Value;
        var middle = box.Middle.Moved(-0.06 * box.WidthMm, -0.08 * box.HeightMm);
        var flat = look == SurfaceLook.Uneven ? 0.5 : 0.35;
        marks.Add(new Polygon(outline, Paint.Filled(Pale(colours[0]))));
        for (var i = 0; i < outline.Length; i++)
        {
            Point a = outline[i], b = outline[(i + 1) % outline.Length];
            var lean = Math.Atan2((a.YMm + b.YMm) / 2 - middle.YMm, (a.XMm + b.XMm) / 2 - middle.XMm);
            var light = 0.6 * Math.Cos(lean + 0.68 * Math.PI);
            var colour = colours[i * i / 2 % colours.Length];
            var lit = light >= 0 ? colour.Mixed(inks.Light, 0.5 * light) : colour.Mixed(inks.Ink, -0.35 * light);
            marks.Add(new Polygon([a, b, middle.Towards(b, flat), middle.Towards(a, flat)], Paint.Filled(Pale(lit))));
        }
    }

    private Srgb Pale(Srgb ink) => ink.Mixed(inks.Paper, paleness);
}
