namespace Coilwright.Wording.GermanWords;

/// <summary>German of <see cref="TrayListWords"/>.</summary>
internal static class GermanTrayList
{
    internal static TrayListWords Make() => new()
    {
        Verb = "Perlen im eigenen Perlenkasten finden, eine Liste durchsehen und ganz oder gar nicht aufnehmen, und den Perlenkasten als Tabelle sichern.",
        ShelfOption = "Der Ordner, in dem die Werkbank ihre Stücke aufhebt.",
        FindOption = "Wörter, nach denen gesucht wird, aus Name, Form, Farbe, Material, Oberfläche, Fach oder Größe, wie türkis Kugel 6.",
        MostOption = "Wie viele höchstens gezeigt werden. Ohne: {usual}.",
        InOption = "Eine Liste zum Durchsehen, als CSV oder XLSX, eine Zeile für jede Sorte, mit Überschriften.",
        ColumnOption = "Was eine Spalte der Liste ist, wo ihre Überschrift es nicht sagt, wie Perle=name.",
        TakeOption = "Die Liste aufnehmen, wenn keine Zeile falsch ist. Ohne wird nichts geändert.",
        OutOption = "Den Perlenkasten als diese Datei sichern: .csv, oder .xlsx als Arbeitsmappe. Eine Datei dieses Namens wird ersetzt.",
        ExampleList = "perlen.csv",
        ExampleFind = "türkis Kugel",
        Found = "{found} von {kinds} {kinds:Sorte|Sorten}.",
        Column = "Spalte {head}: {column}",
        ColumnLeftOut = "Spalte {head}: weggelassen",
        NotTakenYet = "Noch ist nichts geändert. Mit --take wird sie aufgenommen.",
        Written = "{kinds} {kinds:Sorte|Sorten} gesichert: {file}",
    };
}
