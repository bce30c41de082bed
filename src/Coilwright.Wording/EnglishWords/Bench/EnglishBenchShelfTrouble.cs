namespace Coilwright.Wording.EnglishWords;

/// <summary>English of <see cref="ShelfTroubleWords"/>.</summary>
internal static class EnglishBenchShelfTrouble
{
    internal static ShelfTroubleWords Make() => new()
    {
        Heading = "Your pieces cannot be read just now",
        Where = "They are in this file: {file}",
        WhereDatabase = "They are in this database: {database}",
        Untouched = "Nothing was changed in it, and nothing will be until it can be read.",
        TryAgain = "Try again",
        IfItStays = "If it stays so",
        First = "Close Coilwright.",
        Second = "Move {file} to a safe place, with every file there whose name begins the same. Keep them: much can often be saved from them.",
        Third = "Start Coilwright again. It begins an empty shelf; under Pieces, Keep everything safe, bring back the last file that you saved.",
        OthersAreThere = "Your other pieces can be opened:",
    };
}
