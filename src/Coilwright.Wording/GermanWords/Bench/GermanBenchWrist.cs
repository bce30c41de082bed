namespace Coilwright.Wording.GermanWords;

/// <summary>German of <see cref="WristWords"/>.</summary>
internal static class GermanBenchWrist
{
    internal static WristWords Make() => new()
    {
        Heading = "Am Handgelenk",
        Slider = "Handgelenk",
        Typed = "Handgelenk, eingetippt",
        TypedHint = "In Millimetern oder Zoll: 165, 6 1/2 Zoll",
        TypedWrong = "Eine Länge von {min} bis {max} eintippen, etwa 165 oder 6 1/2 Zoll.",
        Smaller = "Einen Millimeter kleiner",
        Larger = "Einen Millimeter größer",
        Back = "Zurück zu {mm:length}",
        Elsewhere = "Das Stück ist für {mm:length} gemacht; so sieht es an einem anderen Handgelenk aus.",
    };
}
