namespace Coilwright.Wording.EnglishWords;

/// <summary>English of <see cref="StringingGuideWords"/>.</summary>
internal static class EnglishBenchStringing
{
    internal static StringingGuideWords Make() => new()
    {
        Heading = "String it",
        StepOf = "Step {step} of {steps}",
        Turn = "turn {turn}",
        Next = "Next",
        Back = "Back",
        Done = "Done",
        FromTheStart = "From the start",
        Leave = "Leave",
        ReadAloud = "Read aloud",
        NoVoice = "This browser has no voice for these words. Everything stands here to be read.",
        Keys = "Space, enter, the arrow keys and page down or up go on and back; so does a pedal that sends one of them.",
        WordsAreOld = "These words were written when the step strung something else. It now says:",
        NotKept = "Your place could not be kept. You can go on; after loading the page anew you may be at an earlier step.",
        Beads = "Beads of this step",
    };
}
