namespace Coilwright.Wording.EnglishWords;

/// <summary>English words on the lining-up curve.</summary>
internal static class EnglishWristCurve
{
    internal static WristCurveWords Make() => new()
    {
        Title = "Lining up from wrist to wrist",
        LinesUp = "lines up",
        Mixed = "mixed",
        Shows = "How much lies over its own kind, on wrists from {from} to {to}.",
        Fails = "Not as wished from {from} to {to}.",

        OnPaper = "{title}: how much lies over its own kind on wrists of every size{?percent:; on a wrist of {wrist} it is {percent:percent}}.",
        Axis = "of the groups' length lies over its own kind",
        AxisRuns = "of the beads' length lies over its own kind",
        ThisWrist = "this wrist, {wrist}",
        NotAsWished = "not as you wish",
        WristRow = "wrist",
        TurnsRow = "turns",
        Nothing = "Too little lies over anything to draw a curve.",
        Averaged = "as near as a wrist is known",
        Exact = "to the millimetre",
    };
}
