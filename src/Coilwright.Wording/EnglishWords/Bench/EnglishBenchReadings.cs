using System.Collections.Frozen;
using Coilwright.Core.Alignment;

namespace Coilwright.Wording.EnglishWords;

/// <summary>English of <see cref="ReadingsWords"/>.</summary>
internal static class EnglishBenchReadings
{
    internal static ReadingsWords Make() => new()
    {
        Heading = "Readings",
        Beads = "Beads",
        Length = "On the wire",
        Turns = "Turns",
        Fit = "Fit",
        FitYes = "fits",
        FitNo = "does not fit",
        Focal = "Focal",
        FocalAt = "{angleDeg:place}",
        LiningUp = "Lining up",
        LiningUpWords = new Dictionary<LiningUpWord, string>
        {
            [LiningUpWord.LinesUp] = "lines up",
            [LiningUpWord.Between] = "in between",
            [LiningUpWord.Mixed] = "mixed",
            [LiningUpWord.TooLittle] = "too little to say",
        }.ToFrozenDictionary(),
        Weight = "Weight",
        Grams = "{grams} g",
        Cut = "Wire to cut",
        NotKnown = "not known",
        ShowMe = "Show me",
        BeadsOfThePiece = "Beads of the piece",
        ShowKind = "Select every {name}",
        Use = "use {count}",
        Sizes = "{alongMm:mm} along the hole, {acrossMm:mm} across",
        Cautions = "Cautions",
    };
}
