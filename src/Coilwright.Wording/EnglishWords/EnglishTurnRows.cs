namespace Coilwright.Wording.EnglishWords;

/// <summary>English captions of the turn rows.</summary>
internal static class EnglishTurnRows
{
    internal static TurnRowsWords Make() => new()
    {
        Wrist = "wrist",
        WirePerTurn = "wire in one turn",
        TurnsWorn = "turns when worn",
        Beads = "beads",
        Focal = "focal",
        FocalOnTop = "turn {turn}, on the top",
        FocalPast = "turn {turn}, {off} past the top",
        FocalBefore = "turn {turn}, {off} before the top",
        Cover = "{percent:percent} of the groups' length lies over a group of its own kind.",
        CoverRuns = "{percent:percent} of the beads' length lies over a run of its own kind.",
        Hatched = "Hatched: like lies over like, and how far off square the middles stand.",
        Open = "Open bars: like stands over like, as you wish, and how far off square the middles stand.",
        Top = "top of the wrist",
        Underside = "underside",
        Start = "start",
        Finish = "finish",
        Turn = "turn {turn}",
        TurnsBegin = "each turn begins",
        OffSquare = "{name}, {off} off square",
        OffShort = "{name}, {off}",
        Square = "{name}, square",
        PastTop = "{off} past the top",
        BeforeTop = "{off} before the top",
        BareWire = "{length} of bare wire",
        Key = "Beads",
        KeySizes = "along the hole × across it",
        Use = "use {count}, {size}",
        UseFocal = "focal, use {count}, {size}",
        Size = "{along} × {across}",
        TrueSize = "This bar is {length} long when the page is printed at 100 %.",
        Scaled = "Drawn at {percent:percent} of true size: this bar is {length} of the piece.",
        SomeLetters = "Where beads are small, not every one has room for its letter.",
        SomePlaces = "Where places that line up crowd, not every one has room for its words.",
        BeadTitle = "Bead {number}, turn {turn}: {name}",
        Shows = "{title}: {beads} {beads:bead|beads} on a wrist of {wrist}, drawn as one straight row for each turn, "
            + "so that what lies over what on the wrist lies over what on the page.",
        ShowsPlace = "{name} over {name}, turns {turn} and {next}, {place}, {off} off square.",
    };
}
