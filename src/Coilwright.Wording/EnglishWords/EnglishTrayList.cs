namespace Coilwright.Wording.EnglishWords;

/// <summary>English of <see cref="TrayListWords"/>.</summary>
internal static class EnglishTrayList
{
    internal static TrayListWords Make() => new()
    {
        Verb = "Find beads in the bench's own tray, look a list through and take it in whole or not at all, and save the tray as a table.",
        ShelfOption = "The folder that the bench keeps its pieces in.",
        FindOption = "Words to look for, of a name, shape, colour, material, finish, drawer or size: \"teal round 6\".",
        MostOption = "How many are shown at most. Without it: {usual}.",
        InOption = "A list to look through, as CSV or XLSX, a line for each kind, with heads.",
        ColumnOption = "What a column of the list is, where its head does not say so: \"Perle=name\".",
        TakeOption = "Take the list in, when no line of it is wrong. Without it nothing is changed.",
        OutOption = "Save the tray as this file: .csv, or .xlsx as a workbook. A file of that name is replaced.",
        ExampleList = "beads.csv",
        ExampleFind = "teal round",
        Found = "{found} of {kinds} {kinds:kind|kinds}.",
        Column = "{head}: {column}",
        ColumnLeftOut = "{head}: left out",
        NotTakenYet = "Nothing is changed yet. With --take it is taken in.",
        Written = "{kinds} {kinds:kind|kinds} saved: {file}",
    };
}
