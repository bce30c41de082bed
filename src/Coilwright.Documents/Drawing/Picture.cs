using System.Collections.Immutable;

namespace Coilwright.Documents.Drawing;

/// <summary>A picture described once, in millimetres, for any canvas: the canvases draw it and decide nothing.</summary>
/// <param name="WidthMm">Width, mm.</param>
/// <param name="HeightMm">Height, mm.</param>
/// <param name="Title">What it is, in a few words.</param>
/// <param name="Description">What it shows, for someone who cannot see it.</param>
/// <param name="Marks">What is drawn, the lowest first.</param>
public sealed record Picture(double WidthMm, double HeightMm, string Title, string Description, ImmutableArray<Mark> Marks)
{
    /// <summary>Language of its words (BCP 47).</summary>
    public string Language { get; init; } = "en";

    /// <summary>The whole sheet.</summary>
    public Box Sheet => new(0, 0, WidthMm, HeightMm);

    /// <summary>Every mark that carries ink, with how far its groups move it: groups and symbols are opened, in the order they are drawn.</summary>
    /// <remarks>What a group's clip hides is listed too, with <see cref="PlacedMark.Clip"/> saying what is left of it.</remarks>
    public IEnumerable<PlacedMark> Inked() => Opened(Marks, 0, 0, null, null);

    /// <summary>Every symbol that is set down in it, each once.</summary>
    public IEnumerable<Symbol> Symbols => Used(Marks).Distinct();

    private static IEnumerable<Symbol> Used(ImmutableArray<Mark> marks) => marks.SelectMany(mark => mark switch
    {
        Group group => Used(group.Marks),
        Stamp stamp => Used(stamp.Symbol.Marks).Prepend(stamp.Symbol),
        _ => [],
    });

    /// <summary>Every mark that has an id, with the box of its ink: what a page lets her point at.</summary>
    /// <remarks>Ink that a clip hides is counted in the box. A mark without ink is left out.</remarks>
    /// <param name="typeface">What its words are measured with.</param>
    public IEnumerable<(Mark Mark, Box Box)> Named(Typefaces.ITypeface typeface)
    {
        // A symbol is set down many times; its own box is looked for once.
        var symbols = new Dictionary<Symbol, Box?>();
        return Named(Marks, 0, 0);

        IEnumerable<(Mark, Box)> Named(ImmutableArray<Mark> marks, double rightMm, double downMm)
        {
            foreach (var mark in marks)
            {
                if (mark.Id is not null && BoxOf(mark) is { } box) yield return (mark, box.Moved(rightMm, downMm));
                if (mark is not Group group) continue;
                foreach (var inner in Named(group.Marks, rightMm + group.MoveRightMm, downMm + group.MoveDownMm)) yield return inner;
            }
        }

        Box? BoxOf(Mark mark) => mark switch
        {
            Group group => Round(group.Marks)?.Moved(group.MoveRightMm, group.MoveDownMm),
            Stamp stamp => OfSymbol(stamp.Symbol)?.Moved(stamp.At.XMm, stamp.At.YMm),
            _ => new PlacedMark(mark, 0, 0, null, "").Box(typeface),
        };

        Box? OfSymbol(Symbol symbol)
        {
            if (!symbols.TryGetValue(symbol, out var box)) symbols[symbol] = box = Round(symbol.Marks);
            return box;
        }

        Box? Round(ImmutableArray<Mark> marks)
        {
            Box? all = null;
            foreach (var mark in marks)
                if (BoxOf(mark) is { } box) all = all?.With(box) ?? box;
            return all;
        }
    }

    private static IEnumerable<PlacedMark> Opened(ImmutableArray<Mark> marks, double rightMm, double downMm, Outline? clip, string? sort)
    {
        foreach (var mark in marks)
        {
            var sorts = mark.Class is null ? sort : sort is null ? mark.Class : sort + " " + mark.Class;
            switch (mark)
            {
                case Group group:
                    var (right, down) = (rightMm + group.MoveRightMm, downMm + group.MoveDownMm);
                    foreach (var inner in Opened(group.Marks, right, down, group.Clip?.Moved(right, down) ?? clip, sorts)) yield return inner;
                    break;
                case Stamp stamp:
                    foreach (var inner in Opened(stamp.Symbol.Marks, rightMm + stamp.At.XMm, downMm + stamp.At.YMm, clip, sorts)) yield return inner;
                    break;
                default:
                    yield return new PlacedMark(mark, rightMm, downMm, clip, sorts ?? "");
                    break;
            }
        }
    }
}

/// <summary>A mark where it comes to lie.</summary>
/// <param name="Mark">A shape or a text.</param>
/// <param name="RightMm">How far it is moved to the right, mm.</param>
/// <param name="DownMm">How far it is moved down, mm.</param>
/// <param name="Clip">The innermost clip over it, in the picture's own millimetres; null when it is drawn whole.</param>
/// <param name="Class">Its sorts and those of the groups it stands in, apart by spaces.</param>
public sealed record PlacedMark(Mark Mark, double RightMm, double DownMm, Outline? Clip, string Class)
{
    /// <summary>The box of its ink, lines' thickness included, before any clip; null when it has none.</summary>
    public Box? Box(Typefaces.ITypeface typeface) => (Mark switch
    {
        Shape shape => shape.Outline.Bounds?.Grown((shape.Paint.Pen?.WidthMm ?? 0) / 2),
        Text text => text.Box(typeface),
        LaidRaster laid => laid.Box,
        _ => null,
    })?.Moved(RightMm, DownMm);
}
