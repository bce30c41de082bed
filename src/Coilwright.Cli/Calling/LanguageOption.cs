using System.CommandLine;
using Coilwright.Core.Faults;
using Coilwright.Wording;

namespace Coilwright.Cli.Calling;

/// <summary>The option that says in which language people are spoken to: English unless another is asked for, whatever the machine's own is.</summary>
internal static class LanguageOption
{
    private const string Name = "--language";

    /// <summary>The language asked for, looked for by hand: help and a wrong call must already speak it. English where none, or none that is known, is asked for.</summary>
    public static Language AskedFor(IReadOnlyList<string> args)
    {
        for (var i = 0; i < args.Count && args[i] != "--"; i++)
        {
            if (!args[i].StartsWith(Name, StringComparison.Ordinal)) continue;
            var value = args[i].Length > Name.Length && args[i][Name.Length] is '=' or ':' ? args[i][(Name.Length + 1)..]
                : args[i].Length == Name.Length && i + 1 < args.Count ? args[i + 1] : "";
            if (Find(value) is { } language) return language;
        }
        return Languages.English;
    }

    /// <summary>The option, for a verb that has it.</summary>
    public static Option<string?> Make(Language language) => new(Name)
    {
        Description = language.Fill(language.Help.Language, ("codes", string.Join(", ", Codes))),
        HelpName = string.Join('|', Codes),
    };

    /// <summary>Adds a fault when a language was asked for that there is not.</summary>
    public static void Check(ParseResult parsed, Option<string?> option, List<Fault> faults)
    {
        if (parsed.GetValue(option) is not { } text || Find(text) is not null) return;
        faults.Add(Fault.Of(FaultCodes.WordUnknown, option.Name, text, ("known", string.Join(", ", Codes)), ("nearest", NearestName.Of(text, Codes) ?? "")));
    }

    private static readonly string[] Codes = [.. Languages.All.Select(l => l.Code)];

    private static Language? Find(string text) => Languages.Find(text.ToLowerInvariant());
}
