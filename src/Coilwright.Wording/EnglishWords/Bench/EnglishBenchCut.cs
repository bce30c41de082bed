namespace Coilwright.Wording.EnglishWords;

/// <summary>English of <see cref="CutPageWords"/>.</summary>
internal static class EnglishBenchCut
{
    internal static CutPageWords Make() => new()
    {
        Heading = "Wire",
        Lead = "Choose what you want to make. The wire at hand is planned so that as little new wire as can be is begun, offcuts first.",
        WireHeading = "Wire at hand",
        NoWire = "None is noted yet.",
        LotSays = "{mm:length}, {loops} loops, wire of {wireMm:fine}{?offcut:, offcut}{?count:, {count} of it}{?any:, as many as it takes}{?price:, {price} each}",
        TakeOut = "Take out",
        Add = "Note more wire",
        WireOf = "The wire of",
        What = "What it is",
        Packs = "New, in packs",
        Offcut = "An offcut",
        Loops = "Loops in a pack",
        Length = "Length",
        Price = "Price of a pack, if known",
        HowManyPacks = "How many packs; empty for as many as it takes",
        HowManyOffcuts = "How many of this length; empty for one",
        AddIt = "Note it",
        OffcutOf = "offcut of {title}",
        PacksFor = "packs of {loops} loops, as for {title}",
        Bring = "Or bring in a file of wire",
        Unreadable = "The list of wire that is kept cannot be read.",
        Planning = "Looking for the best cuts…",
        ItIsCut = "It is cut: note what is left",
        ItIsCutHint = "Offcuts that are long enough are kept, packs that were begun are gone.",
        Done = "The wire that is left is noted.",
    };
}
