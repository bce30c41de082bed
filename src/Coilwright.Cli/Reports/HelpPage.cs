using System.CommandLine;
using System.Globalization;
using Coilwright.Wording;

namespace Coilwright.Cli.Reports;

/// <summary>The help: what it does, how to call it, an example.</summary>
internal static class HelpPage
{
    private static readonly (string Verb, string Said)[] Examples =
    [
        ("reckon", "my-bracelet.piece.json"),
        ("reckon", "my-bracelet.piece.json --wrist \"6 1/2in\""),
        ("reckon", "my-bracelet.piece.json --wrist 165 --json"),
        ("reckon", "my-bracelet.piece.json --draw my-bracelet.svg"),
        ("sheet", "my-bracelet.piece.json --out sheets"),
        ("sheet", "my-bracelet.piece.json --out sheets --paper letter --large-print"),
    ];

    public static string Of(RootCommand root, Command command, Language language)
    {
        var words = language.Help;
        var page = new TextPage();
        page.Paragraph(command.Description ?? "");

        page.Heading(words.UsageHeading);
        var call = command is RootCommand ? "coilwright VERB PIECE [options]" : $"coilwright {command.Name} {string.Join(' ', command.Arguments.Select(a => a.Name))} [options]";
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
        foreach (var example in Examples.Where(e => command is RootCommand || e.Verb == command.Name)) page.Paragraph($"coilwright {example.Verb} {example.Said}", 2);

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
