namespace Coilwright.Wording.GermanWords;

/// <summary>German words on the lining-up curve.</summary>
internal static class GermanWristCurve
{
    internal static WristCurveWords Make() => new()
    {
        Title = "Gleiches über Gleichem von Handgelenk zu Handgelenk",
        LinesUp = "Säulen",
        Mixed = "gemischt",
        Shows = "Wie viel über Gleichem liegt, an Handgelenken von {from} bis {to}.",
        Fails = "Von {from} bis {to} nicht wie gewünscht.",

        OnPaper = "{title}: wie viel über Gleichem liegt, an Handgelenken jeder Größe{?percent:; an einem Handgelenk von {wrist} sind es {percent:percent}}.",
        Axis = "der Gruppenlänge liegen über Gleichem",
        AxisRuns = "der Perlenlänge liegen über Gleichem",
        ThisWrist = "dieses Handgelenk, {wrist}",
        NotAsWished = "nicht wie gewünscht",
        WristRow = "Handgelenk",
        TurnsRow = "Windungen",
        Nothing = "Es liegt zu wenig übereinander, um eine Kurve zu zeichnen.",
        Averaged = "so genau, wie man ein Handgelenk kennt",
        Exact = "auf den Millimeter",
    };
}
