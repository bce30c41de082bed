namespace Coilwright.Wording.EnglishWords;

/// <summary>English cautions.</summary>
internal static class EnglishCautions
{
    internal static CautionWords Make() => new()
    {
        Cutters = "Cut memory wire only with shears or heavy cutters made for it. It ruins fine cutters.",
        FlyingPieces = "Hold or cover both ends when you cut, and wear eye protection: cut pieces fly.",
        Springs = "Do not pull the coil straight. It springs back.",
        SharpEnds = "File sharp ends smooth.",
        AdultCuts = "When children make pieces, an adult cuts and bends the wire.",
        SmallParts = "Every loose bead is a small part: not for children under three.",
        Metals = "Limits for nickel, lead and cadmium in metals differ from country to country. Nothing here says that a piece keeps to them: "
            + "follow your local rules, and have a testing laboratory check what you sell.",
    };
}
