namespace Coilwright.Wording.EnglishWords;

/// <summary>English of <see cref="SellingPageWords"/>.</summary>
internal static class EnglishBenchSelling
{
    internal static SellingPageWords Make() => new()
    {
        Heading = "Selling",
        Lead = "What a buyer asks, answered from the piece itself. Change a bead and the text follows; copy it when it is as you want it.",
        Piece = "Piece",
        Working = "Working it out…",
        Copy = "Copy",
        Copied = "Copied.",
        NotCopied = "Your browser did not let it be copied. Select the text and copy it by hand.",
        Save = "Save as a text file",
        Wrist = "Her wrist",
        WristHint = "As she tells it: 165, 16.5 cm, 6 1/2 in.",
        ForYou = "For you, not for the text",
    };
}
