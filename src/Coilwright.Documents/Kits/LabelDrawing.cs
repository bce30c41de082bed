using System.Collections.Immutable;
using Coilwright.Core.Faults;
using Coilwright.Core.Kits;
using Coilwright.Documents.BeadFigures;
using Coilwright.Documents.Drawing;
using Coilwright.Documents.Layout;
using Coilwright.Documents.Typefaces;
using Coilwright.Wording;

namespace Coilwright.Documents.Kits;

/// <summary>Draws the labels of one piece's kits: one for the kit as a whole, one for each bag.</summary>
/// <remarks>On a bag: key letter, a bead in its colours, how many, its name, the piece, and a code to scan. On the kit: the piece, its wire, and that it is nothing for small children.</remarks>
internal sealed class LabelDrawing
{
    // White inside a label, so that a sheet fed a little askew loses nothing. Our choice.
    private const double PadMm = 2;

    // The code takes no more of a label's width than this: the name needs the rest.
    private const double CodeShare = 0.36;

    private const double BesideCodeMm = 1.5, LeastWordsMm = 17;

    // Letter, bead and count: as high as this at least; where there is room, so much that a bead of twelve is shown whole, with a little air under it.
    private const double LeastHeadMm = 7.5, MostHeadMm = 12, UnderHeadMm = 1;
    private readonly Kit _kit;
    private readonly LabelGrid _grid;
    private readonly KitSentences _said;
    private readonly Language _language;
    private readonly Palette _inks;
    private readonly Lettering _letter, _name, _small;
    private readonly double _headMm;
    private readonly ImmutableDictionary<int, BeadFigure> _figures;

    public LabelDrawing(KitPlan plan, int kit, LabelGrid grid, Language language, bool greyscale)
    {
        (_kit, _grid, _said, _language) = (plan.Kits[kit], grid, new KitSentences(plan, language), language);
        _inks = greyscale ? Palette.Grey : Palette.Colour;
        _letter = new Lettering(HouseSans.Instance, 7, _inks.Ink, TextWeight.Bold);
        _name = new Lettering(HouseSans.Instance, 3.1, _inks.Ink, TextWeight.Bold);
        _small = new Lettering(HouseSans.Instance, 2.5, _inks.Ink);
        // Two lines of its name, the spares and the piece want to stand under the head.
        _headMm = Math.Clamp(grid.HeightMm - 2 * PadMm - UnderHeadMm - 2 * (_name.LineMm + _small.LineMm), LeastHeadMm, MostHeadMm);
        var kinds = _kit.Bags.Select(b => b.Kind).OfType<Core.Readings.KindCount>().ToArray();
        var patterns = Likenesses.Patterns([.. kinds.Select(k => k.Bead)]);
        _figures = kinds.Select((k, i) => (k.KindIndex, Figure: new BeadFigure(k.Bead, $"kit-{kit}-{k.Letter.ToLowerInvariant()}", Scale(k.Bead), patterns[i], _inks))).ToImmutableDictionary(f => f.KindIndex, f => f.Figure);
    }

    /// <summary>What is too small about the labels; null when everything has room on them.</summary>
    public Fault? Check()
    {
        var code = _kit.Bags.Max(b => BagCode.Modules(BagCode.TextOf(_kit, b)).GetLength(0)) * BagCode.LeastModuleMm;
        // What must stand: letter, bead and count over one line of its name, beside the code; on the kit, its name and the caution whole.
        var across = Math.Max(code / CodeShare, 2 * PadMm + BesideCodeMm + LeastWordsMm + code);
        var inside = Math.Max(_grid.WidthMm, across) - 2 * PadMm;
        var down = 2 * PadMm + Math.Max(code, Math.Max(LeastHeadMm + _name.LineMm, _name.LineMm + Caution(inside).Length * _small.LineMm));
        return _grid.WidthMm >= across - 1e-6 && _grid.HeightMm >= down - 1e-6 ? null
            : Fault.Of(FaultCodes.LabelsTooSmall, "", $"{LabelGrid.Written(_grid.WidthMm)} x {LabelGrid.Written(_grid.HeightMm)}", ("leastAcrossMm", Up(across)), ("leastDownMm", Up(down)));
    }

    /// <summary>The label of a kit as a whole.</summary>
    public Picture OfKit()
    {
        var inside = _grid.WidthMm - 2 * PadMm;
        var marks = ImmutableArray.CreateBuilder<Mark>();
        var caution = Caution(inside);
        var bottom = _grid.HeightMm - PadMm;
        var y = bottom - caution.Length * _small.LineMm;
        var words = y;
        foreach (var line in caution)
        {
            marks.Add(_small.Under(line, PadMm, y) with { Class = "caution" });
            y += _small.LineMm;
        }
        // The name takes two lines where there is room for them, and the rest as much as is left.
        string[] rest = [_language.Fill(_language.Kit.LabelBeads, ("beads", _kit.Beads), ("bags", _kit.Bags.Length)), _language.Fill(_language.Kit.LabelWire, ("cutMm", _kit.Reckoned.Wire.CutMm)),
            .. _kit.Version is { } version ? [_language.Fill(_language.Kit.LabelVersion, ("version", version))] : Array.Empty<string>()];
        y = PadMm;
        var lines = (words - y) / _name.LineMm >= 2 ? 2 : 1;
        foreach (var line in _name.Face.Lines(Title, _name.SizeMm, _name.Weight, inside, lines))
        {
            marks.Add(_name.Under(line, PadMm, y) with { Class = "name" });
            y += _name.LineMm;
        }
        foreach (var line in rest.SelectMany(r => _small.Face.Lines(r, _small.SizeMm, _small.Weight, inside)))
        {
            if (y + _small.LineMm > words) break;
            marks.Add(_small.Under(line, PadMm, y) with { Class = "facts" });
            y += _small.LineMm;
        }
        return Sheet(_language.Fill(_language.Kit.KitLabelAlt, ("piece", Title)), marks);
    }

    /// <summary>The label of a bag.</summary>
    public Picture OfBag(KitBag bag)
    {
        var modules = BagCode.Modules(BagCode.TextOf(_kit, bag));
        var code = Math.Min(_grid.HeightMm - 2 * PadMm, _grid.WidthMm * CodeShare);
        var square = Box.At(_grid.WidthMm - PadMm - code, (_grid.HeightMm - code) / 2, code, code);
        var marks = ImmutableArray.CreateBuilder<Mark>();
        marks.Add(BagCode.Draw(modules, square));
        double right = square.LeftMm - BesideCodeMm, inside = right - PadMm;

        // Letter at the left, count at the right, the bead in what is left between them.
        var middle = PadMm + _headMm / 2;
        var count = _said.Count(bag.Count) + "\u00a0×";
        var number = Sized(_letter with { SizeMm = 5 }, count, Math.Min(inside / 2, inside - _letter.WidthMm(bag.Letter) - 1));
        marks.Add(_letter.Centred(bag.Letter, new Point(PadMm, middle), TextAnchor.Start) with { Class = "key-letter" });
        marks.Add(number.Centred(count, new Point(right, middle), TextAnchor.End) with { Class = "count" });
        if (bag.Kind is { } kind && _figures[kind.KindIndex] is var figure)
        {
            double from = PadMm + _letter.WidthMm(bag.Letter) + 1, to = right - number.WidthMm(count) - 1;
            if (to - from >= 2 * figure.Silhouette.HalfLengthMm) marks.Add(new Stamp(figure.Of(0), new Point((from + to) / 2, middle)) { Class = "bead" });
        }

        var bottom = _grid.HeightMm - PadMm;
        var y = PadMm + _headMm + (_headMm > LeastHeadMm ? UnderHeadMm : 0);
        foreach (var line in _name.Face.Lines(_said.NameOf(bag), _name.SizeMm, _name.Weight, inside, Math.Clamp((int)((bottom - y) / _name.LineMm), 1, 2)))
        {
            marks.Add(_name.Under(line, PadMm, y) with { Class = "name" });
            y += _name.LineMm;
        }
        string[] rest = bag.Spare > 0 ? [_language.Fill(_language.Kit.LabelSpare, ("use", bag.Use), ("spare", bag.Spare)), Title] : [Title];
        foreach (var line in rest.Select(r => _small.Face.Shortened(r, _small.SizeMm, _small.Weight, inside)))
        {
            if (y + _small.LineMm > bottom) break;
            marks.Add(_small.Under(line, PadMm, y) with { Class = "facts" });
            y += _small.LineMm;
        }
        return Sheet(_language.Fill(_language.Kit.LabelAlt, ("letter", bag.Letter), ("count", bag.Count), ("name", _said.NameOf(bag)), ("piece", Title)), marks);
    }

    private string Title => _kit.Reckoned.Piece.Title is { Length: > 0 } title ? title : _kit.Name;

    private ImmutableArray<string> Caution(double insideMm) => _small.Face.Lines(_language.Cautions.SmallParts, _small.SizeMm, _small.Weight, insideMm);

    // True size where that goes beside the letter, else as large as does.
    private double Scale(Core.Beads.Bead bead) => Math.Min(1, Math.Min(_headMm / bead.WidthMm, Math.Max(LeastHeadMm, _grid.WidthMm * (1 - CodeShare) - BesideLetterMm) / bead.LengthMm));

    // A letter, a count of three figures and the white beside them.
    private const double BesideLetterMm = 26;

    private static Lettering Sized(Lettering lettering, string text, double widthMm) =>
        lettering.WidthMm(text) <= widthMm ? lettering : lettering with { SizeMm = lettering.SizeMm * widthMm / lettering.WidthMm(text) };

    private Picture Sheet(string alt, ImmutableArray<Mark>.Builder marks) => new(_grid.WidthMm, _grid.HeightMm, alt, alt, marks.ToImmutable()) { Language = _language.Code };

    private static string Up(double mm) => LabelGrid.Written(Math.Ceiling(mm * 10 - 1e-6) / 10);
}
