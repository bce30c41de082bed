namespace Coilwright.Wording.EnglishWords;

/// <summary>English of <see cref="CompareWords"/>.</summary>
internal static class EnglishBenchCompare
{
    internal static CompareWords Make() => new()
    {
        Heading = "Two versions side by side",
        Link = "Side by side",
        Lead = "Both are drawn to one scale, each on the wrist it is made for.",
        One = "One version",
        Other = "The other version",
        Differs = "What comes out otherwise",
        Same = "Both come to the same.",
        Beads = "Beads: {name}",
        Count = "{count} strung",
        AllBeads = "Beads in all",
        Length = "Beads on the wire",
        Turns = "Turns when worn",
        Wrist = "Wrist",
        OrderAlone = "The beads are the same; the order they are strung in is not.",
    };
}
