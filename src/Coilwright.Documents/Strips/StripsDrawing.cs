using System.Collections.Immutable;
using Coilwright.Core.Readings;
using Coilwright.Documents.Drawing;
using Coilwright.Documents.Layout;
using Coilwright.Documents.Typefaces;
using Coilwright.Wording;

namespace Coilwright.Documents.Strips;

/// <summary>Every turn's strip at true size under one another, with a ruler to check the print by: a drawing by itself.</summary>
public static class StripsDrawing
{
    private const double MarginMm = 6, BetweenMm = 5;

    /// <summary>Length of the check ruler, mm: a length that every paper takes.</summary>
    internal const int RulerMm = 100;

    /// <summary>Draws them. Always at true size.</summary>
    public static Picture Of(Reckoned reckoned, Language language)
    {
        var style = new PictureStyle(new PictureOptions { Language = language });
        var strips = TurnStrip.Of(reckoned, language);
        var ruler = Ruler(strips[0].LeadMm, language);
        List<(string Words, Picture Picture)> all =
            [(RulerWords(language), ruler), .. strips.Select(s => (Caption(s, language), s.Picture))];
        var width = all.Max(p => p.Picture.WidthMm) + 2 * MarginMm;
        var marks = ImmutableArray.CreateBuilder<Mark>();
        var y = MarginMm;
        foreach (var (words, picture) in all)
        {
            foreach (var line in style.Face.Lines(words, style.Body.SizeMm, TextWeight.Regular, width - 2 * MarginMm))
            {
                marks.Add(style.Body.Under(line, MarginMm, y) with { Class = "caption" });
                y += style.Body.LineMm;
            }
            y += 1;
            marks.Add(new Group(picture.Marks) { MoveRightMm = MarginMm, MoveDownMm = y, Class = "strip" });
            y += picture.HeightMm + BetweenMm;
        }
        y += MarginMm - BetweenMm;
        marks.Insert(0, new Rectangle(new Box(0, 0, width, y), Paint.Filled(style.Inks.Paper)) { Class = "paper" });
        var said = string.Join(". ", strips.Select(s => Alt(s, language))) + ".";
        return new Picture(width, y, reckoned.Piece.Title, said, marks.ToImmutable()) { Language = language.Code };
    }

    /// <summary>Words over a strip.</summary>
    internal static string Caption(TurnStrip strip, Language language) => language.Fill(language.Sheet.StripCaption, ("turn", strip.Turn),
        ("overlap", strip.HasOverlap ? true : null), ("beads", strip.Beads), ("wireMm", strip.WireMm));

    /// <summary>What a strip shows, for someone who cannot see it.</summary>
    internal static string Alt(TurnStrip strip, Language language) => language.Fill(language.Sheet.StripAlt, ("turn", strip.Turn), ("beads", strip.Beads));

    /// <summary>Words over the check ruler.</summary>
    internal static string RulerWords(Language language) => language.Fill(language.Sheet.CheckRuler, ("mm", RulerMm));

    /// <summary>A ruler to hold a real one against.</summary>
    /// <param name="leadMm">Where it begins, mm from the left edge: in line with the strips' own.</param>
    /// <param name="language">Language of the page it stands on.</param>
    internal static Picture Ruler(double leadMm, Language language)
    {
        var numbers = new Lettering(CautiousSans.Instance, 2.6, Palette.Colour.Quiet);
        // The last number stands half over the end.
        const double airMm = 3;
        return new Picture(leadMm + RulerMm + airMm, CheckRuler.HeightMm + 0.3, "", "", [CheckRuler.Draw(leadMm, 0, RulerMm, 1, numbers, Palette.Colour)])
        { Language = language.Code };
    }
}
