namespace Coilwright.Wording.EnglishWords;

/// <summary>English of <see cref="CoilPageWords"/>.</summary>
internal static class EnglishBenchCoil
{
    internal static CoilPageWords Make() => new()
    {
        Heading = "In the round",
        Lead = "Turn the piece as you would in your hand. Beads are as large as they are, and stand where the wire holds them.",
        Pose = "How it lies",
        Worn = "On the wrist, as reckoned",
        AsItSits = "On the wrist, as it sits",
        AtRest = "At rest",
        ShownAsItSits = "You see it as it sits on an oval wrist of {wristMm:mm}.",
        ShownAsReckoned = "What you see stays as it was.",
        StoppedShort = "Stopped. What you see stays as it was.",
        Picture = "The piece in space",
        Keys = "Drag or use the arrow keys to turn it, plus and minus to come nearer or go back, Home for how it was at first. Tap a bead to know it.",
        DrawnOnly = "This browser cannot show pictures that turn, so the piece is drawn. The list of beads answers all the same.",
        Turning = "Turn it",
        Left = "Left",
        Right = "Right",
        FromAbove = "From above",
        FromBelow = "From below",
        Nearer = "Nearer",
        Farther = "Farther",
        AsAtFirst = "As at first",
        Beads = "Beads, turn by turn",
        Turn = "Turn {turn}",
        Bead = "Bead {number}: {letter}, {name}, turn {turn}, {angleDeg:place}",
        NonePicked = "Tap a bead, in the picture or in the list, and it is told here.",
        Next = "Next bead",
        Back = "Bead before",
        Still = "Pictures to keep",
        StillNote = "As you look at it now, on the paper behind it, at any size.",
        Width = "Width, pixels",
        Height = "Height, pixels",
        SaveStill = "Save this view",
        Count = "Pictures all round",
        SaveTurntable = "Save them all round",
        At = "Picture {at} of {of}",
        Trouble = "That could not be made. Try a smaller size, or load the page anew.",
        Model = "For other programs",
        ModelNote = "A model to turn, light and print in other programs: glTF 2.0 in one file (.glb), metres, up is +Y, each bead named by its place, letter and name.",
        SaveWorn = "Save it as worn",
        SaveAsItSits = "Save it as it sits",
        SaveAtRest = "Save it at rest",
    };
}
