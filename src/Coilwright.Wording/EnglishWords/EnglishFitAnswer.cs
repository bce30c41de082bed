namespace Coilwright.Wording.EnglishWords;

/// <summary>English of <see cref="FitAnswerWords"/>.</summary>
internal static class EnglishFitAnswer
{
    internal static FitAnswerWords Make() => new()
    {
        Heading = "Will it fit me?",
        For = "For a wrist of {wristMm:exact}:",
        Yes = "Yes, it fits.",
        FewerTurns = "It can be worn, but it makes about {turns} {turns:turn|turns} in place of {designed}.",
        MoreTurns = "It can be worn; it makes about {turns} {turns:turn|turns}, more than the {designed} it is made for.",
        HangsLoose = "No: it would hang loose, with {roomMm:length} of room round your wrist.",
        UnderOneTurn = "No: it does not go once round your wrist. The beads cover {turns} of a turn.",
        EndsTooFar = "It can be worn, but its ends lie {mm:length} further apart than they are meant to.",
        NotAsItIs = "No: as it is, it cannot be made or worn ({reasons}).",
        Turns = "On you it makes about {turns} {turns:turn|turns}: between {from} and {to}, as no wrist is known to the millimetre.",
        EndsMeet = "The two ends meet.",
        EndsOverlap = "The two ends lie {mm:length} over each other.",
        EndsApart = "Between the two ends a gap of {mm:length} stays open.",
        Focal = "The focal ({bead}) sits {angleDeg:place}.",
        FocalBand = "On a slightly smaller or larger wrist: from {fromDeg:place} to {toDeg:place}.",
        LinesUp = "Like beads lie over like from turn to turn.",
        Between = "Some like beads lie over like from turn to turn.",
        Mixed = "Like beads lie mixed from turn to turn.",
        NearBorder = "This is near the border: a wrist {bandMm:length} smaller or larger may get another answer. Please measure again before you order.",
        OrderMore = "Ask for it made for your wrist of {wristMm:exact}: with about {mm:size} more of beads it makes its {designed} {designed:turn|turns}.",
        OrderLess = "Ask for it made for your wrist of {wristMm:exact}: with about {mm:size} less of beads it makes its {designed} {designed:turn|turns}.",
        OrderSmallerCoil = "Ask for it made for your wrist of {wristMm:exact}, on a smaller coil of wire.",
    };
}
