using Coilwright.Documents.Drawing;
using Coilwright.Documents.Typefaces;
using Coilwright.Wording;

namespace Coilwright.Documents.Layout;

/// <summary>Inks, letterings and words that every picture shares.</summary>
internal class PictureStyle
{
    internal PictureStyle(Language language, ITypeface face, bool greyscale)
    {
        (Language, Face) = (language, face);
        Inks = greyscale ? Palette.Grey : Palette.Colour;
        Caption = new Lettering(face, 2.6, Inks.Quiet);
        Small = new Lettering(face, 2.5, Inks.Quiet);
        Body = new Lettering(face, 3.1, Inks.Ink);
        Value = new Lettering(face, 3.7, Inks.Ink);
    }

    internal PictureStyle(PictureOptions options) : this(options.Language, options.Typeface, options.Greyscale) { }

    internal Language Language { get; }

    internal ITypeface Face { get; }

    internal Palette Inks { get; }

    internal Lettering Caption { get; }

    internal Lettering Small { get; }

    internal Lettering Body { get; }

    internal Lettering Value { get; }

    /// <summary>A length as a heading shows it.</summary>
    internal string Length(double mm) => Language.Length(mm);

    /// <summary>A length in a place where there is room for one unit only; its unit never stands on another line.</summary>
    internal string Short(double mm) => Language.ShortLength(mm).Replace(' ', '\u00a0');

    /// <summary>The sheet's paper, where it is wanted.</summary>
    internal IEnumerable<Mark> Paper(PictureOptions options, double widthMm, double heightMm) =>
        options.Paper ? [new Rectangle(new Box(0, 0, widthMm, heightMm), Paint.Filled(Inks.Paper)) { Class = "paper" }] : [];
}
