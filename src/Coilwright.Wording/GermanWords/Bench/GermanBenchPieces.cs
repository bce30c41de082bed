namespace Coilwright.Wording.GermanWords;

/// <summary>German of <see cref="PiecesWords"/>.</summary>
internal static class GermanBenchPieces
{
    internal static PiecesWords Make() => new()
    {
        Heading = "Stücke",
        Search = "Nach Titel suchen",
        ShowArchived = "Auch zeigen, was weggelegt ist",
        NoneFound = "Kein Stück hat das im Titel.",
        ChangedOn = "geändert {date}",
        PutAway = "weggelegt, geändert {date}",
        Copy = "Kopieren",
        CopyOf = "{title}, Kopie",
        Archive = "Weglegen",
        TakeOut = "Wieder hervorholen",
        SaveFile = "Als Datei speichern",
        BringIn = "Ein Stück aus einer Datei holen",
        BringInHint = "Eine Datei, deren Name auf .piece.json endet",
        NotBroughtIn = "{file} wurde nicht hereingeholt:",
        AtPlace = "Zeile {line}, Spalte {column}:",
        NotKept = "Das konnte nicht aufgehoben werden.",
    };
}
