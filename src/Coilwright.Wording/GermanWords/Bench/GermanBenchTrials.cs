namespace Coilwright.Wording.GermanWords;

/// <summary>German of <see cref="TrialWords"/>.</summary>
internal static class GermanBenchTrials
{
    internal static TrialWords Make() => new()
    {
        Heading = "Versuche",
        Lead = "Was auf der Matte probiert wurde, wie es aussah und warum es verworfen wurde. Jeder Eintrag merkt sich die Perlen, wie sie damals gefädelt waren.",
        WriteDown = "Einen Versuch aufschreiben",
        Tried = "Was probiert wurde, in einer Zeile",
        TriedHint = "Das Stück, wie es jetzt ist, wird mit aufgehoben.",
        ChoosePhoto = "Ein Foto wählen",
        TakePhoto = "Ein Foto aufnehmen",
        PhotoHint = "JPEG, PNG oder WebP, höchstens {max}. Es wird bei den Stücken aufgehoben.",
        Reading = "Das Foto wird gelesen …",
        PhotoChosen = "Mit dem Foto {file} ({mb} MB)",
        WithoutPhoto = "Das Foto weglassen",
        Keep = "Aufschreiben",
        Entries = "Bisher probiert, das Letzte zuerst",
        None = "Noch ist nichts aufgeschrieben.",
        TriedAs = "Stand {state}, {date}",
        PhotoOf = "Foto: {tried}",
        DroppedBecause = "Verworfen, weil",
        KeepReason = "Grund aufheben",
        ReasonKept = "Aufgehoben.",
        LayBeside = "Das Foto neben die Reihen legen",
        TakeOut = "Aus der Liste nehmen",
        TakeOutSure = "Diesen Eintrag mit seinem Foto endgültig herausnehmen?",
        TakeOutYes = "Herausnehmen",
        TakeOutNo = "Darin lassen",
        NotKept = "Das konnte nicht aufgehoben werden. Auf dieser Seite ist es noch da.",
        Gone = "Das gibt es nicht mehr; ein anderes Fenster hat es herausgenommen.",
        BesideRows = "Foto neben den Reihen",
        NoneBeside = "keines",
        PutPhotoAway = "Das Foto weglegen",
    };
}
