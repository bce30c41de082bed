namespace Coilwright.Wording.EnglishWords;

/// <summary>English of <see cref="PiecesWords"/>.</summary>
internal static class EnglishBenchPieces
{
    internal static PiecesWords Make() => new()
    {
        Heading = "Pieces",
        Search = "Find by title",
        ShowArchived = "Show what is put away",
        NoneFound = "No piece has this in its title.",
        ChangedOn = "changed {date}",
        PutAway = "put away, changed {date}",
        Copy = "Copy",
        CopyOf = "{title}, copy",
        Archive = "Put away",
        TakeOut = "Take out again",
        SaveFile = "Save as a file",
        BringIn = "Bring in a piece from a file",
        BringInHint = "A file whose name ends in .piece.json",
        NotBroughtIn = "{file} was not brought in:",
        AtPlace = "Line {line}, column {column}:",
        NotKept = "That could not be kept.",
    };
}
