namespace Coilwright.Wording.EnglishWords;

/// <summary>English of <see cref="SizesPageWords"/>.</summary>
internal static class EnglishBenchSizes
{
    internal static SizesPageWords Make() => new()
    {
        Lead = "The same design on other wrists: as many turns on each. Spacers are put in or taken out first, then whole groups at the ends; the focal and the groups stay as they are.",
        Wrists = "For these wrists",
        Add = "One more wrist",
        LeaveOut = "leave out",
        Usual = "The usual wrists",
        UsualHint = "The usual wrists are those that the piece is to be good on, else ten from small to large women's and men's.",
        Enough = "Those are as many as can be made at once: {max}.",
        Make = "Make the sizes",
        MakeAgain = "Make them again",
        Making = "They are being made. You can go on working; they wait here.",
        TooManyWait = "So much is in hand already that this cannot wait too. Clear something away first.",
        Earlier = "The piece was changed since these were made. Make them again to have them of the piece as it is now.",
        Stopped = "The work was stopped: sizes are missing.",
        AtAGlance = "At a glance",
        OneByOne = "One by one",
        KeepIt = "Keep as a piece of its own",
        Kept = "Kept among your pieces.",
        Open = "Open “{title}”",
        NotKept = "That could not be kept.",
        WhereGaps = "Where the gaps are",
        Job = "Sizes of “{title}”",
        SoFar = "{made} of {of} made.",
        See = "See the sizes",
    };
}
