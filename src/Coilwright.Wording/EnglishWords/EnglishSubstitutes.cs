namespace Coilwright.Wording.EnglishWords;

/// <summary>English of <see cref="SubstituteWords"/>.</summary>
internal static class EnglishSubstitutes
{
    internal static SubstituteWords Make() => new()
    {
        Verb = "Look for beads that may stand in for one of the piece, and reckon the piece again with each.",
        BeadOption = "The bead to be replaced wherever it is strung, by its name in the order.",
        AmongOption = "The piece files whose beads are looked through.",
        HomeOption = "How many of a bead there are, as chip=23. Without it: nobody counted.",
        MostOption = "How many are told at most. Without it: {usual}.",
        ExampleBead = "chip",
        Title = "What may stand in",
        For = "For {bead} in {title}; {need} are needed.",
        Nothing = "There is no other bead to look through.",
        NoneWouldDo = "None of these would do as it is.",
        Heading = "{bead}: {near}",
        VeryNear = "very near",
        Near = "near",
        SomeWayOff = "some way off",
        FarOff = "far off",
        TooFew = "There are {have}, and {need} are needed.",
        BringsStop = "With it the report says stop.",
        DiffersHardly = "It hardly differs from it.",
        DiffersIn = "It differs in {parts}.",
        Length = "length",
        Across = "width or thickness",
        Bore = "hole",
        Colour = "colour",
        Shape = "shape",
        Material = "material",
        NowColumn = "now",
        ThenColumn = "with it",
    };
}
