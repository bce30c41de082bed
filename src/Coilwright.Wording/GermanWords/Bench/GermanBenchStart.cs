namespace Coilwright.Wording.GermanWords;

/// <summary>German of <see cref="StartWords"/>.</summary>
internal static class GermanBenchStart
{
    internal static StartWords Make() => new()
    {
        OpenAt = "Die Werkbank von Coilwright ist offen unter {address}",
        ToStop = "Nur dieser Rechner erreicht sie. Strg+C schließt sie.",
        PortTaken = "Anschluss {port} ist belegt. Mit --port einen anderen nennen, oder die Option weglassen: Dann wird ein freier genommen.",
        BadOption = "„{option}“ ist nicht zu verstehen. Die Optionen sind --port mit einer Zahl von 0 bis 65535 und --shelf mit dem Ordner, in dem die Stücke aufgehoben werden, oder --database mit der Adresse der Datenbank.",
        TwoPlaces = "Die Stücke liegen an einem Ort. Mit --shelf einen Ordner nennen oder mit --database eine Datenbank, nicht beides.",
    };
}
