using Coilwright.Documents.Drawing;
using Coilwright.Documents.Layout;
using Coilwright.Documents.Typefaces;
using Coilwright.Wording;

namespace Coilwright.Documents.TurnRows;

/// <summary>Inks, letterings and words of one drawing of the turn rows.</summary>
internal sealed class Style
{
    internal Style(TurnRowsOptions options)
    {
        Language = options.Language;
        Units = options.Units;
        Face = options.Typeface;
        Inks = options.Greyscale ? Palette.Grey : Palette.Colour;
        Caption = new Lettering(Face, 2.6, Inks.Quiet);
        Small = new Lettering(Face, 2.5, Inks.Quiet);
        Body = new Lettering(Face, 3.1, Inks.Ink);
        Value = new Lettering(Face, 3.7, Inks.Ink);
        Tie = new Lettering(Face, 2.6, Inks.Accent);
        CalmTie = new Lettering(Face, 2.6, Inks.Quiet);
        Number = new Lettering(Face, 5.2, Inks.Quiet);
        KeyLetter = new Lettering(Face, 4.2, Inks.Ink, TextWeight.Bold);
        UnderLetter = new Lettering(Face, 2.5, Inks.Ink, TextWeight.Bold);
    }

    internal Language Language { get; }

    internal TurnRowsWords Words => Language.TurnRows;

    internal LengthUnits Units { get; }

    internal ITypeface Face { get; }

    internal Palette Inks { get; }

    internal Lettering Caption { get; }

    internal Lettering Small { get; }

    internal Lettering Body { get; }

    internal Lettering Value { get; }

    internal Lettering Tie { get; }

    internal Lettering CalmTie { get; }

    internal Lettering Number { get; }

    internal Lettering KeyLetter { get; }

    internal Lettering UnderLetter { get; }

    internal Lettering Title(double widthMm) => new(Face, widthMm < 130 ? 5.2 : 6.6, Inks.Ink);

    /// <summary>A length as a heading shows it.</summary>
    internal string Length(double mm) => Language.Length(mm, Units);

    /// <summary>A length in a place where there is room for one unit only.</summary>
    internal string Short(double mm) => Language.Length(mm, Units == LengthUnits.Inches ? LengthUnits.Inches : LengthUnits.Mm);
}
