namespace Coilwright.Wording.GermanWords;

/// <summary>German of <see cref="SizesPageWords"/>.</summary>
internal static class GermanBenchSizes
{
    internal static SizesPageWords Make() => new()
    {
        Lead = "Derselbe Entwurf an anderen Handgelenken, überall in gleich vielen Windungen. Zuerst ändern sich Zwischenperlen, dann ganze Gruppen an den Enden; Blickfang und Gruppen bleiben, wie sie sind.",
        Wrists = "Für diese Handgelenke",
        Add = "Noch ein Handgelenk",
        LeaveOut = "weglassen",
        Usual = "Die üblichen Handgelenke",
        UsualHint = "Üblich sind die, an denen das Stück gut sein soll, sonst zehn von schmalen bis kräftigen von Frauen und Männern.",
        Enough = "Mehr als {max} gehen nicht auf einmal.",
        Make = "Größen machen",
        MakeAgain = "Noch einmal machen",
        Making = "Sie werden gemacht. Die Arbeit kann weitergehen; sie warten hier.",
        TooManyWait = "Es ist schon so viel in Arbeit, dass dies nicht auch noch warten kann. Erst etwas wegräumen.",
        Earlier = "Das Stück wurde seitdem geändert. Noch einmal machen, um Größen des jetzigen Stands zu haben.",
        Stopped = "Die Arbeit wurde angehalten: es fehlen Größen.",
        AtAGlance = "Auf einen Blick",
        OneByOne = "Eine nach der anderen",
        KeepIt = "Als eigenes Stück aufheben",
        Kept = "Liegt bei den Stücken.",
        Open = "„{title}“ öffnen",
        NotKept = "Das konnte nicht aufgehoben werden.",
        WhereGaps = "Wo die Lücken sind",
        Job = "Größen von „{title}“",
        SoFar = "{made} von {of} gemacht.",
        See = "Die Größen ansehen",
    };
}
