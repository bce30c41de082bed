using System.CommandLine;
using System.Globalization;
using Coilwright.Wording;

namespace Coilwright.Cli.Reports;

/// <summary>The help: what it does, how to call it, an example.</summary>
internal static class HelpPage
{
    private static readonly (string Verb, string Said)[] Examples =
    [
        ("reckon", "{piece}"),
        ("reckon", "{piece} --wrist \"6 1/2in\""),
        ("reckon", "{piece} --wrist 165 --json"),
        ("reckon", "{piece} --draw {drawing}"),
        ("arrange", "{piece} --out {better}"),
        ("scatter", "{piece} --out {better} --seed 7"),
        ("settle", "{piece}"),
        ("sizes", "{piece} --wrists 145,160,175"),
        ("sizes", "{piece} --wrists 145,160,175 --out {folder}"),
        ("sheet", "{piece} --out {folder}"),
        ("sheet", "{piece} --out {folder} --paper letter --large-print"),
        ("sheet", "{piece} --out {folder} --language de"),
        ("pattern", "{piece} --out {folder}"),
        ("pattern", "{piece} --out {folder} --sizes usual --colourway {better}"),
        ("cut", "{piece} --loops 12"),
        ("cut", "{piece} {better} --count 6 --stock {wire}"),
        ("cut", "{piece} --stock {wire} --out {afterwards}"),
        ("shop", "{piece} --spares 5%"),
        ("shop", "{piece} {better} --count 6 --prices {prices} --more 6"),
        ("shop", "{piece} --prices {prices} --out {table}"),
        ("kit", "{piece} --count 6 --spares 2"),
        ("kit", "{piece} {better} --count 6 --shelf {folder} --out {folder}"),
        ("kit", "{piece} --out {folder} --labels 3x8,63.5x33.9,7.2x12.9,2.5x0"),
        ("price", "{piece} --costs {costs}"),
        ("price", "{piece} --costs {costs} --prices {prices} --count 6 --at 24.50"),
        ("publish", "{piece} --out {pack}"),
        ("publish", "{piece} --out {pack} --paper letter --pixels 2000x2000 --pixels 1080x1350"),
        ("errata", "{piece} {better} --out {folder}"),
        ("listing", "{piece}"),
        ("listing", "{piece} --wrist \"6 1/2in\" --json"),
        ("batch", "{piece} --count 10 --wells 12 --costs {costs}"),
        ("batch", "{piece} --out {folder}"),
        ("quote", "{piece} --wrist 165 --costs {costs}"),
        ("class", "{piece} --participants 8 --start 10:00 --end 13:00 --costs {costs}"),
        ("substitute", "{piece} --bead {bead} --among {better}"),
        ("palette", "{piece}"),
        ("tray", "--shelf {folder} --find \"{find}\""),
        ("tray", "--shelf {folder} --in {list} --take"),
        ("tray", "--shelf {folder} --out tray.xlsx"),
    ];

    public static string Of(RootCommand root, Command command, Language language)
    {
        var words = language.Help;
        var page = new TextPage();
        page.Paragraph(command.Description ?? "");

        page.Heading(words.UsageHeading);
        var call = command is RootCommand ? $"coilwright VERB PIECE [{words.OptionsWord}]" : $"coilwright {string.Join(' ', command.Arguments.Select(a => a.Name).Prepend(command.Name))} [{words.OptionsWord}]";
        page.Paragraph(call, 2);

        if (command.Subcommands.Count > 0)
        {
            page.Heading(words.VerbsHeading);
            page.Table([("", false), ("", false)], command.Subcommands.Select(c => new[] { c.Name, c.Description ?? "" }), 1);
        }

        page.Heading(words.OptionsHeading);
        var options = command.Options.Concat(command is RootCommand ? [] : root.Options.Where(o => o.Recursive));
        page.Table([("", false), ("", false)], command.Arguments.Select(a => new[] { a.Name, a.Description ?? "" })
            .Concat(options.Select(o => new[] { string.Join(", ", o.Aliases.Where(a => a != "-?").Prepend(o.Name)) + (o.HelpName is { } value ? " " + value : ""), o.Description ?? "" })), 1);

        page.Heading(words.ExamplesHeading);
        foreach (var example in command is RootCommand ? Examples.DistinctBy(e => e.Verb) : Examples.Where(e => e.Verb == command.Name))
            page.Paragraph($"coilwright {example.Verb} " + language.Fill(example.Said, ("piece", words.ExamplePiece), ("drawing", words.ExampleDrawing), ("folder", words.ExampleFolder), ("better", words.ExampleBetter),
                ("wire", language.Cut.ExampleWire), ("afterwards", language.Cut.ExampleAfterwards), ("prices", language.Shop.ExamplePrices), ("table", language.Shop.ExampleTable), ("costs", language.Price.ExampleCosts), ("bead", language.Substitutes.ExampleBead), ("pack", language.Publish.ExamplePack), ("list", language.TrayList.ExampleList), ("find", language.TrayList.ExampleFind)), 2);

        page.Heading(words.ExitCodesHeading);
        page.Table([("", true), ("", false)], words.ExitCodes.Select(c => new[] { c.Code.ToString(CultureInfo.InvariantCulture), c.Meaning }), 1);
        if (command is RootCommand)
        {
            page.Blank();
            page.Paragraph(language.Fill(words.More, ("command", "coilwright VERB --help")));
        }
        return page.ToString();
    }
}
