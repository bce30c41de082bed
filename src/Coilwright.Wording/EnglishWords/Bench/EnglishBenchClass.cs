namespace Coilwright.Wording.EnglishWords;

/// <summary>English of <see cref="ClassPageWords"/>.</summary>
internal static class EnglishBenchClass
{
    internal static ClassPageWords Make() => new()
    {
        Heading = "Class",
        Lead = "Teach a piece: say how many come and for how long, and see what to pack, when each step begins, what does not fit, and what a place costs.",
        AskHeading = "The class",
        Participants = "How many take part",
        SpareKits = "Kits beside theirs",
        SpareBeads = "Spare beads in each bag",
        Factor = "Learners take so many times as long",
        Start = "Begins at",
        End = "Ends at",
        Breaks = "Breaks",
        BreakAt = "Break at",
        BreakMinutes = "Its minutes",
        AddBreak = "Add a break",
        TakeOutBreak = "Take out the break at {at}",
        Places = "Places at the tables",
        Around = "Your minutes to set up and clear away",
        Room = "Room, and what else is paid once",
        Rule = "A place is priced by",
        Shares = "Who shares tools",
        ShareHint = "One for so many; 1 is one for each. Eye protection is for each, always.",
        Own = "Your own minutes",
        OwnHint = "What is empty is taken from the timed steps in your costs that say which steps they are.",
        BeforehandHeading = "You do beforehand",
        Working = "Working it out…",
        NotMade = "It cannot be worked out:",
        SaveTeacher = "Save your sheet as PDF",
        SaveTeacherPage = "Save your sheet as a web page",
        SavePlace = "Save the participants' sheet as PDF",
        SavePlacePage = "Save the participants' sheet as a web page",
        NoTime = "That is no time of day. Write it like 10:00.",
        OpenHint = "Open a figure of a kit to see what it comes from.",
        KitCost = "One kit",
    };
}
