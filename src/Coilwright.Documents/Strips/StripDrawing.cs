using System.Collections.Immutable;
using Coilwright.Core.Beads;
using Coilwright.Core.Readings;
using Coilwright.Documents.BeadFigures;
using Coilwright.Documents.Drawing;

namespace Coilwright.Documents.Strips;

/// <summary>Beads laid side by side as on a mat, at true proportion: one bead as a sample of its kind, or a group as a small strip.</summary>
/// <remarks>Laid straight, so by their own lengths along the hole, not as they stand on the curve of the wrist. Without letters: a page has those
/// beside it.</remarks>
public sealed class StripDrawing
{
    private const double MarginMm = 0.6;
    private readonly Reckoned _reckoned;
    private readonly ImmutableArray<int> _nth;
    private readonly ImmutableDictionary<int, BeadFigure> _figures;

    /// <summary>Makes ready to draw beads of a piece.</summary>
    /// <param name="reckoned">The readings.</param>
    /// <param name="scale">Millimetres of the picture for one of the bead.</param>
    /// <param name="inks">The inks; in colour when null.</param>
    public StripDrawing(Reckoned reckoned, double scale = 1, Palette? inks = null)
    {
        _reckoned = reckoned;
        _nth = NthOfKind.Of(reckoned.Piece.Order.Kinds);
        var patterns = Likenesses.Patterns([.. reckoned.Counts.Select(k => k.Bead)]);
        _figures = reckoned.Counts.Select((k, i) => (k.KindIndex, Figure: new BeadFigure(k.Bead, "kind-" + k.Letter.ToLowerInvariant(), scale, patterns[i], inks ?? Palette.Colour)))
            .ToImmutableDictionary(f => f.KindIndex, f => f.Figure);
    }

    /// <summary>One bead by itself, strung or not: a picture that brings its own symbols.</summary>
    /// <param name="bead">The bead.</param>
    /// <param name="scale">Millimetres of the picture for one of the bead.</param>
    /// <param name="inks">The inks; in colour when null.</param>
    public static Picture Alone(Bead bead, double scale = 1, Palette? inks = null)
    {
        var figure = new BeadFigure(bead, "alone", scale, Likenesses.Patterns([bead])[0], inks ?? Palette.Colour);
        var (halfLength, halfWidth) = (figure.Silhouette.HalfLengthMm + MarginMm, figure.Silhouette.HalfWidthMm + MarginMm);
        return new Picture(2 * halfLength, 2 * halfWidth, bead.Name, "", [new Stamp(figure.Of(0), new Point(halfLength, halfWidth))]);
    }

    /// <summary>The symbols that its pictures are put together from.</summary>
    public IEnumerable<Symbol> Symbols => _figures.Values.SelectMany(f => f.Symbols);

    /// <summary>One bead of a kind.</summary>
    /// <param name="kind">The kind, one that is strung.</param>
    public Picture OfKind(KindCount kind) => Draw([(kind.KindIndex, 0)], kind.Bead.Name);

    /// <summary>A stretch of the order.</summary>
    /// <param name="first">Its first bead, from 0.</param>
    /// <param name="count">How many beads.</param>
    /// <param name="title">What it is, in words.</param>
    public Picture OfStretch(int first, int count, string title) =>
        Draw([.. Enumerable.Range(first, count).Select(i => (_reckoned.Piece.Order.Kinds[i], _nth[i]))], title);

    private Picture Draw(ImmutableArray<(int Kind, int Nth)> beads, string title)
    {
        var half = beads.Max(b => _figures[b.Kind].Silhouette.HalfWidthMm) + MarginMm;
        var x = MarginMm;
        var marks = ImmutableArray.CreateBuilder<Mark>(beads.Length);
        foreach (var (kind, nth) in beads)
        {
            var figure = _figures[kind];
            x += figure.Silhouette.HalfLengthMm;
            marks.Add(new Stamp(figure.Of(nth), new Point(x, half)));
            x += figure.Silhouette.HalfLengthMm;
        }
        return new Picture(x + MarginMm, 2 * half, title, "", marks.ToImmutable());
    }
}
