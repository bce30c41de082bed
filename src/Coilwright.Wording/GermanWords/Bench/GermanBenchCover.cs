namespace Coilwright.Wording.GermanWords;

/// <summary>German of <see cref="CoverWords"/>.</summary>
internal static class GermanBenchCover
{
    internal static CoverWords Make() => new()
    {
        Legend = "Auf dem Titelblatt",
        Picture = "Das eigene Bild",
        Coil = "Die gezeichnete Spirale",
        SparedNote = "Seiten, die Tinte sparen, haben die gezeichnete Spirale: Ein Foto ist Tinte von Rand zu Rand.",
        Alt = "Das Bild für das Titelblatt von {title}",
        TakeOff = "Das Bild abnehmen",
        TakenOff = "Das Bild ist abgenommen; auf dem Titelblatt steht die gezeichnete Spirale.",
        PutBack = "Wieder einsetzen",
        ChoosePhoto = "Ein Foto des fertigen Stücks",
        PhotoHint = "JPEG oder PNG, höchstens {max}. Wo und wann es aufgenommen wurde, wird nicht aufgehoben.",
        Reading = "Das Foto wird gelesen.",
        NotKept = "Es steht nicht auf dem Titelblatt:",
        FromStill = "Diese Ansicht auf das Titelblatt der Anleitung",
        FromStillNote = "So, wie sie jetzt zu sehen ist, auf Weiß, {widthPx} mal {heightPx} Pixel: scharf auf Papier.",
        IsCover = "Diese Ansicht steht jetzt auf dem Titelblatt der Anleitung.",
        Look = "Zur Anleitung auf Papier",
        NoStill = "Dieser Browser gibt kein Bild vom Stück im Raum her. Die Anleitung behält ihr Titelblatt.",
    };
}
