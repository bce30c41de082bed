using Coilwright.Documents.Layout;
using Coilwright.Documents.Typefaces;
using Coilwright.Wording;

namespace Coilwright.Documents.TurnRows;

/// <summary>Inks, letterings and words of one drawing of the turn rows.</summary>
internal sealed class Style : PictureStyle
{
    /// <param name="options">How the rows are drawn.</param>
    /// <param name="letters">How much larger key letters are than in print.</param>
    internal Style(TurnRowsOptions options, double letters = 1) : base(options.Language, options.Typeface, options.Greyscale)
    {
        Tie = new Lettering(Face, 2.6, Inks.Accent);
        CalmTie = new Lettering(Face, 2.6, Inks.Quiet);
        Number = new Lettering(Face, 5.2, Inks.Quiet);
        KeyLetter = new Lettering(Face, 4.2, Inks.Ink, TextWeight.Bold);
        Letters = letters;
        UnderLetter = new Lettering(Face, 2.5 * letters, Inks.Ink, TextWeight.Bold);
    }

    internal TurnRowsWords Words => Language.TurnRows;

    internal Lettering Tie { get; }

    internal Lettering CalmTie { get; }

    internal Lettering Number { get; }

    internal Lettering KeyLetter { get; }

    internal double Letters { get; }

    internal Lettering UnderLetter { get; }

    internal Lettering Title(double widthMm) => new(Face, widthMm < 130 ? 5.2 : 6.6, Inks.Ink);
}
