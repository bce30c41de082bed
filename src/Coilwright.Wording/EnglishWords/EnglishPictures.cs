namespace Coilwright.Wording.EnglishWords;

/// <summary>English captions of the smaller pictures.</summary>
internal static class EnglishPictures
{
    internal static PictureWords Make() => new()
    {
        Coil = "{title} as a coil of {turns} {turns:turn|turns}, {beads} {beads:bead|beads}, seen from the front and a little from above. "
            + "The top of the wrist faces you; what lies behind is pale.",
        CoilSeen = "the top of the wrist in front",

        Cards = "{title}: a card for each of {kinds} {kinds:kind|kinds} of bead, drawn at true size.",
        CardUse = "use {count}",
        CardHole = "hole {bore}",
        CardHoleUnknown = "hole not measured",
        CardScaled = "drawn at {percent:percent}",
        CardFront = "front",
        CardSide = "side",

        Ends = "{title}: how the ends of the wire are finished, step by step, drawn larger than they are.",
        BothEnds = "Both ends",
        StartEnd = "The end strung first",
        FinishEnd = "The end strung last",
        LoopTrim = "Trim the wire {wire} beyond the bead and file its tip smooth.",
        LoopGrip = "Grip the very tip in the pliers, where they are {inside} thick.",
        LoopRoll = "Roll it against the curve of the coil. Let go, grip again, and roll on.",
        LoopClose = "Close the loop and set it straight over the hole: {inside} inside.",
        DangleRoll = "Roll it against the curve of the coil, but leave a gap that the dangle goes through.",
        DangleHang = "Hang the dangle in. Close the loop and set it straight over the hole: {inside} inside.",
        CapRoughen = "Trim the wire {depth} beyond the bead and roughen that end with a file.",
        CapGlue = "Put a drop of strong glue into the hole of the cap.",
        CapPush = "Push the wire in to the bottom of the hole and leave it to set.",
    };
}
