using Coilwright.Documents.Drawing;
using Coilwright.Documents.Typefaces;

namespace Coilwright.Documents.Tests;

/// <summary>Reads a picture's description: where things lie, by their sorts.</summary>
public static class PictureReading
{
    public static bool IsOf(this PlacedMark mark, string sort) => mark.Class.Split(' ').Contains(sort);

    public static IEnumerable<PlacedMark> Of(this Picture picture, string sort) => picture.Inked().Where(m => m.IsOf(sort));

    public static IEnumerable<(Text Text, Box Box)> Texts(this Picture picture) =>
        picture.Inked().Where(m => m.Mark is Text).Select(m => ((Text)m.Mark, m.Box(CautiousSans.Instance)!.Value));

    /// <summary>The box of what is seen of a mark: its ink less what its clip hides; null when nothing is left.</summary>
    public static Box? SeenBox(this PlacedMark mark)
    {
        if (mark.Box(CautiousSans.Instance) is not { } box) return null;
        if (mark.Clip?.Bounds is not { } clip) return box;
        var seen = new Box(Math.Max(box.LeftMm, clip.LeftMm), Math.Max(box.TopMm, clip.TopMm), Math.Min(box.RightMm, clip.RightMm), Math.Min(box.BottomMm, clip.BottomMm));
        return seen.WidthMm <= 0 || seen.HeightMm <= 0 ? null : seen;
    }

    /// <summary>Every group of a sort, with where it lies.</summary>
    public static IEnumerable<(Group Group, double RightMm, double DownMm)> Groups(this Picture picture, string sort) => Groups(picture.Marks, sort, 0, 0);

    private static IEnumerable<(Group, double, double)> Groups(IEnumerable<Mark> marks, string sort, double rightMm, double downMm)
    {
        foreach (var group in marks.OfType<Group>())
        {
            if (group.Class?.Split(' ').Contains(sort) == true) yield return (group, rightMm + group.MoveRightMm, downMm + group.MoveDownMm);
            foreach (var inner in Groups(group.Marks, sort, rightMm + group.MoveRightMm, downMm + group.MoveDownMm)) yield return inner;
        }
    }

    /// <summary>Where a bead's middle lies on its home row; its number counts from 1.</summary>
    public static Point BeadMiddle(this Picture picture, int number)
    {
        var (group, right, down) = picture.Groups("bead").Single(g => g.Group.Id == $"bead-{number}");
        return Stamp(group.Marks)!.At.Moved(right, down);
    }

    private static Stamp? Stamp(IEnumerable<Mark> marks) =>
        marks.Select(m => m as Stamp ?? (m is Group g ? Stamp(g.Marks) : null)).FirstOrDefault(s => s is not null);

    /// <summary>Where an upright line stands.</summary>
    public static double LineMm(this Picture picture, string sort) => picture.Of(sort).First() is var line
        ? ((Shape)line.Mark).Outline.Steps[0].To.XMm + line.RightMm : 0;

    /// <summary>Two texts that cover each other, as words for a message; null when none do.</summary>
    public static string? Collision(this Picture picture)
    {
        var texts = picture.Texts().OrderBy(t => t.Box.TopMm).ToArray();
        for (var i = 0; i < texts.Length; i++)
            for (var j = i + 1; j < texts.Length && texts[j].Box.TopMm < texts[i].Box.BottomMm; j++)
                if (texts[i].Box.Overlaps(texts[j].Box))
                    return $"'{texts[i].Text.Content}' {texts[i].Box} and '{texts[j].Text.Content}' {texts[j].Box}";
        return null;
    }

    /// <summary>Ink that leaves the sheet, as words for a message; null when there is none.</summary>
    public static string? OffSheet(this Picture picture)
    {
        // Rounding only: a thousandth of a millimetre is what the canvas keeps.
        var sheet = picture.Sheet.Grown(0.001);
        foreach (var mark in picture.Inked())
            if (mark.SeenBox() is { } box && !sheet.Contains(box)) return $"{mark.Class} {mark.Mark.GetType().Name} {(mark.Mark as Text)?.Content} {box} on {picture.Sheet}";
        return null;
    }
}
