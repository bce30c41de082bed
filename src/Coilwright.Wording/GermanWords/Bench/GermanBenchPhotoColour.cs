using System.Collections.Frozen;
using Coilwright.Core.Colour;

namespace Coilwright.Wording.GermanWords;

/// <summary>German of <see cref="PhotoColourWords"/>.</summary>
internal static class GermanBenchPhotoColour
{
    internal static PhotoColourWords Make() => new()
    {
        Heading = "Farbe aus einem Foto",
        Lead = "Im eigenen Foto auf eine Perle tippen, um ihre Farbe abzulesen. Das Foto bleibt in diesem Browser: nur die wenigen Punkte im Ring werden angesehen, und nichts davon wird aufgehoben.",
        Choose = "Ein Foto wählen",
        ChooseHint = "JPEG, PNG, WebP oder GIF. Am besten am Fenster, ohne Blitz, mit einem Blatt weißem Papier neben den Perlen.",
        Takes = "Ein Tippen nimmt",
        TakesBead = "die Farbe einer Perle",
        TakesWhite = "weißes Papier",
        Ring = "Ringgröße",
        Small = "klein",
        Middling = "mittel",
        Large = "groß",
        Photo = "Das Foto",
        Keys = "Dorthin tippen, wo abgelesen werden soll. Mit Tasten: die Pfeiltasten bewegen den Ring, mit Umschalt um einzelne Punkte; Eingabe nimmt, was darin ist; Plus und Minus ändern seine Größe.",
        Take = "Nehmen, was im Ring ist",
        Opened = "Geöffnet: {wide} mal {high} Punkte.",
        SampledDown = "Es ist groß und wird mit {wide} mal {high} Punkten gelesen.",
        Moves = "Es ist ein bewegtes Bild; das erste wird gezeigt.",
        CalledOtherwise = "Dem Namen nach ist es von anderer Art, aber es ist {kind} und wurde so gelesen.",
        Refused = new Dictionary<string, string>(StringComparer.Ordinal)
        {
            ["no-picture"] = "Diese Datei ist kein Bild, das hier gelesen werden kann. Ein JPEG, PNG, WebP oder GIF wählen.",
            ["heic"] = "Das ist ein HEIC-Bild, das Browser nicht öffnen. Als JPEG speichern: am Telefon beim Verschicken oder in den Einstellungen der Kamera.",
            ["too-large"] = "Dieses Bild hat {megapixels} Millionen Punkte, gelesen werden höchstens {most} Millionen. Verkleinern oder den Teil mit den Perlen ausschneiden.",
            ["broken"] = "Dieses Bild lässt sich nicht öffnen: etwas darin ist beschädigt. Noch einmal von der Kamera kopieren.",
            ["cut-short"] = "Dieses Bild ist abgeschnitten: das Ende fehlt. Noch einmal von der Kamera kopieren.",
            ["inks"] = "Dieses Bild ist in Druckfarben (CMYK), deren Farben auf einem Bildschirm nur geraten sind. In RGB speichern.",
        }.ToFrozenDictionary(StringComparer.Ordinal),
        Taken = "{colour}, Helligkeit {l}, Grün bis Rot {a}, Blau bis Gelb {b}",
        Counted = "{counted} von {pixels} Punkten zählten; Glanz und Schatten blieben weg.",
        Mixed = "Die Punkte im Ring sind sehr verschieden: er liegt vielleicht auf einer Kante oder einem Muster.",
        OffScreen = "So kräftig zeigt sie kein Bildschirm; genommen ist die nächste, die einer zeigt.",
        AsTaken = "Die Farben sind, wie die Kamera sie abgeglichen hat. Mit weißem Papier im Foto werden sie treuer: oben weißes Papier wählen und darauf tippen.",
        Balanced = "Die Farben sind nach dem Papier abgeglichen.",
        Unbalance = "Wie von der Kamera",
        WhiteTroubles = new Dictionary<WhiteTrouble, string>
        {
            [WhiteTrouble.TooBright] = "Das Papier ist dort so hell, dass sein Farbton verloren ist. Dorthin tippen, wo es etwas dunkler ist.",
            [WhiteTrouble.TooDark] = "Dort ist es zu dunkel, um das Licht daran abzulesen. Auf beleuchtetes Papier tippen.",
            [WhiteTrouble.NotWhite] = "Das ist kaum weißes Papier. Auf eine rein weiße Stelle tippen.",
        }.ToFrozenDictionary(),
        How = "Wie das berechnet wird",
        HowText = "Von den Punkten im Ring bleiben das dunkelste Viertel, das hellste Drittel und alles weg, was die Kamera nicht mehr fassen konnte; der Rest wird als Licht gemittelt. Nach weißem Papier wird das Licht mit der Matrix von Bradford auf Tageslicht (D65) gebracht und so stark gemacht, als gäbe das Papier 88 von 100 zurück. Lab ist CIE Lab unter D65.",
        PutOn = "Perle",
        MakeColour = "Zu ihrer Farbe machen",
        AddColour = "Zu ihren Farben dazu",
        Put = "{name} hat sie jetzt.",
    };
}
