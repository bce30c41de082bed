namespace Coilwright.Wording.EnglishWords;

/// <summary>English of <see cref="TrialWords"/>.</summary>
internal static class EnglishBenchTrials
{
    internal static TrialWords Make() => new()
    {
        Heading = "Trials",
        Lead = "What you tried on the mat, how it looked, and why you dropped it. Each entry remembers the beads as they were strung then.",
        WriteDown = "Write down a trial",
        Tried = "What you tried, in a line",
        TriedHint = "The piece as it is now is remembered with it.",
        ChoosePhoto = "Choose a photo",
        TakePhoto = "Take a photo",
        PhotoHint = "JPEG, PNG or WebP, at most {max}. It is kept with your pieces.",
        Reading = "Reading the photo …",
        PhotoChosen = "With the photo {file} ({mb} MB)",
        WithoutPhoto = "Leave the photo out",
        Keep = "Write it down",
        Entries = "Tried so far, the last first",
        None = "Nothing is written down yet.",
        TriedAs = "state {state}, {date}",
        PhotoOf = "Photo: {tried}",
        DroppedBecause = "Dropped because",
        KeepReason = "Keep the reason",
        ReasonKept = "Kept.",
        LayBeside = "Lay the photo beside the rows",
        TakeOut = "Take out of the log",
        TakeOutSure = "Take this entry and its photo out for good?",
        TakeOutYes = "Take it out",
        TakeOutNo = "Leave it in",
        NotKept = "That could not be kept. It is still on this page.",
        Gone = "This is not there any more; another window took it out.",
        BesideRows = "Photo beside the rows",
        NoneBeside = "none",
        PutPhotoAway = "Put the photo away",
    };
}
