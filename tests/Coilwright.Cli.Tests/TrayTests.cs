using System.Globalization;
using System.Text;
using System.Text.Json.Nodes;
using Coilwright.Storage;
using Coilwright.Storage.Shelf.Sqlite;
using Coilwright.Wording;

namespace Coilwright.Cli.Tests;

/// <summary><c>tray</c>: a list looked through and taken in, found again, saved; and what it refuses.</summary>
public class TrayTests
{
    private static readonly AnswerSchema Schema = new("tray");

    private const string List = "Bezeichnung;Form;Länge;Fach;Farben\nMondperle;Kugel;4,5;B 2;#2ab5b0\nSternperle;Kugel;6;B 3;#c81e1e\n";

    private static OwnFolder Shelf()
    {
        var folder = new OwnFolder();
        ((ShelfOpening.Opened)SqliteShelf.Open(new SqliteShelfOptions { Folder = folder.Path }, DataFiles.LoadDefault().Data!, TimeProvider.System)).Shelf.Dispose();
        return folder;
    }

    private static JsonNode Json(int code, params string[] args)
    {
        var ran = TheProgram.Run(["tray", .. args, "--json"]);
        Assert.Equal((code, ""), (ran.Code, ran.Error));
        return Schema.Valid(ran.Out);
    }

    [Fact]
    public void A_list_changes_nothing_until_it_is_taken_in_and_is_found_and_saved_then()
    {
        using var folder = Shelf();
        var list = folder.Write("list.csv", List);
        Assert.Equal(0, (int)Json(0, "--shelf", folder.Path)["kinds"]!);
        var looked = Json(0, "--shelf", folder.Path, "--in", list);
        Assert.Equal((2, 0, 0, false, 0), ((int)looked["list"]!["adds"]!, (int)looked["list"]!["changes"]!, (int)looked["list"]!["wrong"]!, (bool)looked["list"]!["taken"]!, (int)looked["kinds"]!));
        Assert.Equal(["name", "shape", "lengthMm", "drawer", "colours"], looked["list"]!["columns"]!.AsArray().Select(c => (string)c!["column"]!));
        Assert.Equal(0, (int)Json(0, "--shelf", folder.Path)["kinds"]!);

        Assert.Equal(2, (int)Json(0, "--shelf", folder.Path, "--in", list, "--take")["kinds"]!);
        // The same list once more changes nothing.
        Assert.Equal(2, (int)Json(0, "--shelf", folder.Path, "--in", list, "--take")["list"]!["same"]!);
        var found = Json(0, "--shelf", folder.Path, "--find", "türkis kugel 4.5")["found"]!;
        Assert.Equal(("Mondperle", "4.5", "B 2"), ((string)Assert.Single(found["shown"]!.AsArray())!["name"]!, (string)found["shown"]![0]!["lengthMm"]!, (string)found["shown"]![0]!["drawer"]!));
        Assert.Equal((2, 1), ((int)Json(0, "--shelf", folder.Path, "--most", "1")["found"]!["count"]!, Json(0, "--shelf", folder.Path, "--most", "1")["found"]!["shown"]!.AsArray().Count));

        foreach (var name in new[] { "tray.csv", "tray.xlsx" })
        {
            Json(0, "--shelf", folder.Path, "--out", folder[name]);
            Assert.Equal(2, (int)Json(0, "--shelf", folder.Path, "--in", folder[name])["list"]!["same"]!);
        }
        Assert.StartsWith("id,name,shape,lengthMm", Encoding.UTF8.GetString(File.ReadAllBytes(folder["tray.csv"])).TrimStart('\uFEFF'), StringComparison.Ordinal);
    }

    [Fact]
    public void A_wrong_line_keeps_all_of_the_list_out_and_ends_with_1()
    {
        using var folder = Shelf();
        var list = folder.Write("list.csv", List + "Nachtperle;roond;vier;B 4;\n");
        var answer = Json(1, "--shelf", folder.Path, "--in", list, "--take");
        Assert.Equal((1, false, 0), ((int)answer["list"]!["wrong"]!, (bool)answer["list"]!["taken"]!, (int)answer["kinds"]!));
        var wrong = answer["list"]!["rows"]!.AsArray().Single(r => (string)r!["does"]! == "isWrong")!;
        Assert.Equal(4, (int)wrong["line"]!);
        Assert.Equal(2, wrong["faults"]!.AsArray().Count);
        foreach (var language in Languages.All)
        {
            var text = TheProgram.Run("tray", "--shelf", folder.Path, "--in", list, "--language", language.Code);
            Assert.Equal(1, text.Code);
            Assert.Contains(language.Fill(language.Bench.Tray.Line, ("line", 4)), text.Out, StringComparison.Ordinal);
            Assert.DoesNotContain(Template.Missing, text.Out, StringComparison.Ordinal);
            Assert.All(text.Out.Split('\n'), line => Assert.True(line.Length <= 80, line));
        }
    }

    [Fact]
    public void A_head_that_says_nothing_is_told_by_hand_and_a_wrong_one_is_refused()
    {
        using var folder = Shelf();
        var list = folder.Write("list.csv", "what,wie,lang\nMoon,round,4.5\n");
        Assert.Equal(2, TheProgram.Run("tray", "--shelf", folder.Path, "--in", list).Code);
        Assert.Equal(1, (int)Json(0, "--shelf", folder.Path, "--in", list, "--column", "what=name", "--column", "wie=shape", "--column", "lang=lengthMm", "--take")["list"]!["adds"]!);
        foreach (var (column, near) in new[] { ("what=nome", "name"), ("wath=name", "what") })
        {
            var ran = TheProgram.Run("tray", "--shelf", folder.Path, "--in", list, "--column", column);
            Assert.Equal(2, ran.Code);
            Assert.Contains(near, ran.Error, StringComparison.Ordinal);
        }
    }

    [Fact]
    public void What_is_missing_or_cannot_be_read_or_written_ends_with_2_and_makes_no_shelf()
    {
        using var folder = new OwnFolder();
        Assert.Equal(2, TheProgram.Run("tray", "--shelf", folder.Path).Code);
        Assert.Empty(Directory.GetFiles(folder.Path));
        Assert.Equal(2, TheProgram.Run("tray").Code);
        using var shelf = Shelf();
        Assert.Equal(2, TheProgram.Run("tray", "--shelf", shelf.Path, "--take").Code);
        Assert.Equal(2, TheProgram.Run("tray", "--shelf", shelf.Path, "--in", shelf["no-such.csv"]).Code);
        Assert.Equal(2, TheProgram.Run("tray", "--shelf", shelf.Path, "--in", shelf.Write("bad.csv", "name,shape\n\"open,round\n")).Code);
        Assert.Equal(2, TheProgram.Run("tray", "--shelf", shelf.Path, "--most", 0.ToString(CultureInfo.InvariantCulture)).Code);
        Assert.Equal(2, TheProgram.Run("tray", "--shelf", shelf.Path, "--out", Path.Combine(shelf.Path, "no", "such", "tray.csv")).Code);
        Assert.Equal(0, TheProgram.Run("tray", "--shelf", shelf.Path).Code);
    }
}
