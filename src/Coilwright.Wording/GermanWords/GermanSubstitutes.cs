namespace Coilwright.Wording.GermanWords;

/// <summary>German of <see cref="SubstituteWords"/>.</summary>
internal static class GermanSubstitutes
{
    internal static SubstituteWords Make() => new()
    {
        Verb = "Perlen suchen, die eine des Stücks ersetzen können, und das Stück mit jeder neu rechnen.",
        BeadOption = "Die Perle, die überall ersetzt werden soll, mit ihrem Namen in der Reihenfolge.",
        AmongOption = "Die Stückdateien, deren Perlen durchgesehen werden.",
        HomeOption = "Wie viele von einer Perle da sind, wie splitter=23. Ohne: nicht gezählt.",
        MostOption = "Wie viele höchstens genannt werden. Ohne: {usual}.",
        ExampleBead = "splitter",
        Title = "Was einspringen kann",
        For = "Für {bead} in {title}; {need} werden gebraucht.",
        Nothing = "Es gibt keine andere Perle zum Durchsehen.",
        NoneWouldDo = "Keine von diesen ginge ohne Weiteres.",
        Heading = "{bead}: {near}",
        VeryNear = "sehr nah",
        Near = "nah",
        SomeWayOff = "ein Stück entfernt",
        FarOff = "weit entfernt",
        TooFew = "{have} sind da, {need} werden gebraucht.",
        BringsStop = "Mit ihr sagt der Bericht Halt.",
        DiffersHardly = "Sie ist kaum anders.",
        DiffersIn = "Anders sind {parts}.",
        Length = "Länge",
        Across = "Breite oder Dicke",
        Bore = "Loch",
        Colour = "Farbe",
        Shape = "Form",
        Material = "Material",
        NowColumn = "jetzt",
        ThenColumn = "mit ihr",
    };
}
