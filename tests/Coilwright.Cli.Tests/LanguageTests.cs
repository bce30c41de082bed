using System.Text.Json.Nodes;

namespace Coilwright.Cli.Tests;

/// <summary><c>--language</c>: sentences follow it, figures for programs never do, and the machine's own language has no say.</summary>
public class LanguageTests
{
    public static TheoryData<string> Examples => [.. TheProgram.Examples.Select(p => Path.GetRelativePath(TheProgram.Root, p))];

    [Theory, MemberData(nameof(Examples))]
    public void A_German_report_has_commas_and_no_line_wider_than_a_page(string example)
    {
        var english = TheProgram.Run("reckon", example);
        var german = TheProgram.Run("reckon", example, "--language", "de");
        Assert.Equal(english.Code, german.Code);
        Assert.Contains("Passt es?", german.Out, StringComparison.Ordinal);
        Assert.All(german.Out.Split('\n'), line => Assert.True(line.Length <= 80, line));
        Assert.DoesNotContain("(?)", german.Out, StringComparison.Ordinal);
        // Every figure with a fraction has a comma: a point stands only at a sentence's end.
        Assert.DoesNotMatch(@"\d\.\d", german.Out);
        Assert.Matches(@"\d,\d", german.Out);
    }

    // Only messages may differ: keys, codes and figures are a contract.
    [Theory, MemberData(nameof(Examples))]
    public void As_JSON_nothing_but_messages_differs(string example)
    {
        static JsonNode? Bare(JsonNode? node) => node switch
        {
            JsonObject fields => new JsonObject(fields.Where(f => f.Key is not ("message" or "whatToDo" or "language")).Select(f => KeyValuePair.Create(f.Key, Bare(f.Value)))),
            JsonArray items => new JsonArray([.. items.Select(Bare)]),
            _ => node?.DeepClone(),
        };
        string[] call = ["reckon", example, "--json"];
        var german = JsonNode.Parse(TheProgram.Run([.. call, "--language", "de"]).Out);
        Assert.Equal(Bare(JsonNode.Parse(TheProgram.Run(call).Out))!.ToJsonString(), Bare(german)!.ToJsonString());
        using var folder = new OwnFolder();
        call = ["sheet", example, "--out", folder.Path, "--json"];
        var first = JsonNode.Parse(TheProgram.Run(call).Out);
        var second = JsonNode.Parse(TheProgram.Run([.. call, "--language", "de"]).Out);
        Assert.Equal(("en", "de"), ((string)first!["language"]!, (string)second!["language"]!));
        Assert.Equal(Bare(first)!.ToJsonString(), Bare(second)!.ToJsonString());
    }

    [Fact]
    public void A_German_sheet_is_German_in_page_and_drawing()
    {
        using var folder = new OwnFolder();
        var ran = TheProgram.Run("sheet", TheProgram.Example("boardwalk"), "--out", folder.Path, "--language", "DE");
        Assert.Equal(0, ran.Code);
        Assert.StartsWith("Geschrieben: ", ran.Out, StringComparison.Ordinal);
        var page = File.ReadAllText(folder["boardwalk-sheet.html"]);
        Assert.Contains("<html lang=\"de\"", page, StringComparison.Ordinal);
        Assert.Contains("auffädeln", page, StringComparison.Ordinal);
        Assert.Contains("Oberseite", File.ReadAllText(folder["boardwalk-turns.svg"]), StringComparison.Ordinal);
    }

    [Fact]
    public void An_option_takes_its_decimal_point_in_every_language()
    {
        var ran = TheProgram.Run("reckon", TheProgram.Example("boardwalk"), "--language", "de", "--wrist", "160.5");
        Assert.Contains("Für ein Handgelenk von 160,5 mm", ran.Out, StringComparison.Ordinal);
        ran = TheProgram.Run("reckon", TheProgram.Example("boardwalk"), "--language", "de", "--wrist", "160,5");
        Assert.Equal(2, ran.Code);
        Assert.Contains("So schreiben: 160.5.", ran.Error, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("reckon", "x", "--language", "fr")]
    [InlineData("sheet", "x", "--out", "y", "--language", "deutsch")]
    public void A_language_that_there_is_not_is_refused_with_those_that_there_are(params string[] args)
    {
        var ran = TheProgram.Run(args);
        Assert.Equal(2, ran.Code);
        Assert.Empty(ran.Out);
        Assert.Contains("(\"--language\") is \"", ran.Error, StringComparison.Ordinal);
        Assert.Contains("one of: en, de.", ran.Error.ReplaceLineEndings(" "), StringComparison.Ordinal);
        Assert.Equal("word.unknown", (string)JsonNode.Parse(TheProgram.Run([.. args, "--json"]).Out)!["error"]!["code"]!);
    }

    [Theory]
    [InlineData("reckon", "--language", "de", "--help")]
    [InlineData("sheet", "--help", "--language=de")]
    public void Help_and_slips_speak_the_language_asked_for(params string[] args)
    {
        var ran = TheProgram.Run(args);
        Assert.Equal(0, ran.Code);
        Assert.Contains("Optionen:", ran.Out, StringComparison.Ordinal);
        Assert.Contains("--language en|de", ran.Out, StringComparison.Ordinal);
        Assert.All(ran.Out.Split('\n'), line => Assert.True(line.Length <= 80, line));
        Assert.Contains("Eine Option --wrost gibt es nicht.", TheProgram.Run("reckon", "x", "--wrost", "3", "--language", "de").Error, StringComparison.Ordinal);
    }

    [Fact]
    public void The_machines_own_language_has_no_say() => Assert.Contains("Does it fit?",
        TheProgram.Run([("LANG", "de_DE.UTF-8"), ("LANGUAGE", "de"), ("LC_ALL", "de_DE.UTF-8")], ["reckon", TheProgram.Example("boardwalk")]).Out, StringComparison.Ordinal);
}
