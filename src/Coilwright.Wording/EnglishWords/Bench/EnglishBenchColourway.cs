namespace Coilwright.Wording.EnglishWords;

/// <summary>English of <see cref="ColourwayWords"/>.</summary>
internal static class EnglishBenchColourway
{
    internal static ColourwayWords Make() => new()
    {
        Open = "In other colours",
        Heading = "The same piece in other colours",
        Hint = "Bead by bead the order stays; the new piece goes beside this one. Lots, rows you measured and the wire you cut are of these beads and are left out of it.",
        Before = "now",
        After = "then",
        ColourOf = "Colour {?number:{number} }of {name}",
        Rows = "The rows in the new colours",
        Title = "Title of the new piece",
        TitleOf = "{title}, in other colours",
        Make = "Make the new piece",
        Leave = "Leave it",
    };
}
