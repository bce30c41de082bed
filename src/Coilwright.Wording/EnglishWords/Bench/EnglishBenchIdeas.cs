namespace Coilwright.Wording.EnglishWords;

/// <summary>English of <see cref="IdeasPageWords"/>.</summary>
internal static class EnglishBenchIdeas
{
    internal static IdeasPageWords Make() => new()
    {
        Lead = "Like beads that land over like are cured by a spacer more here and one fewer there. The fewest that do it are looked for first; groups stay as they are, unless the piece lets them change places.",
        Look = "Look for ideas",
        LookAgain = "Look again",
        LookLonger = "Look longer",
        Looking = "Looking. You can go on working; what is found waits here.",
        TooManyWait = "So much is in hand already that this cannot wait too. Clear something away first.",
        Earlier = "The piece was changed since these were found. Look again to have ideas for it as it is now.",
        AsItIs = "As it is strung",
        StringIt = "String it like this",
        CanBeTakenBack = "It can be taken back on the bench like any step.",
        NotKept = "That could not be kept.",
        Details = "Details",
        Job = "Ideas for “{title}”",
        LookingFor = "looking, {elapsed}",
        SoFar = "Best so far: {against:percent} against the wish.",
        See = "See the ideas",
    };
}
