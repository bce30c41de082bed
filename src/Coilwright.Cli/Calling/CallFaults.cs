using System.CommandLine;
using System.CommandLine.Parsing;
using Coilwright.Core.Faults;
using Coilwright.Wording;

namespace Coilwright.Cli.Calling;

/// <summary>What is wrong with a call, found in the parser's own findings and said with codes of ours.</summary>
internal static class CallFaults
{
    public static IReadOnlyList<Fault> In(ParseResult parsed)
    {
        var faults = new List<Fault>();
        var command = parsed.CommandResult.Command;
        var options = OptionsOf(parsed).SelectMany(o => o.Aliases.Prepend(o.Name)).ToArray();

        foreach (var result in parsed.CommandResult.Children.OfType<OptionResult>().Where(r => !r.Implicit))
        {
            var takesValue = result.Option.Arity.MinimumNumberOfValues > 0;
            if (takesValue && (result.Tokens.Count == 0 || options.Contains(result.Tokens[0].Value, StringComparer.Ordinal)))
                faults.Add(Fault.Of(UsageCodes.OptionEmpty, "", result.Option.Name));
            else if (takesValue && result.IdentifierTokenCount > 1 && result.Option.Arity.MaximumNumberOfValues == 1)
                faults.Add(Fault.Of(UsageCodes.OptionTwice, "", result.Option.Name));
        }

        var isRoot = command is RootCommand;
        var afterUnknownOption = false;
        foreach (var word in parsed.UnmatchedTokens)
        {
            var isOption = word.Length > 1 && word[0] == '-';
            if (isOption)
                faults.Add(Fault.Of(UsageCodes.OptionUnknown, "", word, ("known", string.Join(", ", options.Where(Long))),
                    ("nearest", NearestName.Of(word.Split('=', ':')[0], options) ?? "")));
            else if (isRoot && faults.Count == 0)
            {
                var verbs = command.Subcommands.Select(c => c.Name).ToArray();
                faults.Add(Fault.Of(UsageCodes.VerbUnknown, "", word, ("known", string.Join(", ", verbs)), ("nearest", NearestName.Of(word, verbs) ?? "")));
                // What follows belongs to the verb that was meant.
                break;
            }
            else if (!afterUnknownOption) faults.Add(Fault.Of(UsageCodes.WordTooMany, "", word));
            afterUnknownOption = isOption;
        }

        if (!isRoot && parsed.CommandResult.Children.OfType<ArgumentResult>().All(a => a.Tokens.Count == 0) && command.Arguments.Count > 0)
            faults.Add(Fault.Of(UsageCodes.PieceMissing, "", "", ("verb", command.Name)));
        else if (!isRoot && faults.Count == 0)
            faults.AddRange(parsed.CommandResult.Children.OfType<ArgumentResult>().Where(a => a.Tokens.Count < a.Argument.Arity.MinimumNumberOfValues)
                .Select(a => Fault.Of(UsageCodes.OptionMissing, "", a.Argument.Name, ("verb", command.Name))));
        // Whatever else the parser minds, in its own words rather than not at all.
        if (faults.Count == 0 && parsed.Errors.Count > 0) faults.Add(Fault.Of(UsageCodes.CallOther, "", parsed.Errors[0].Message));
        return faults;
    }

    private static bool Long(string option) => option.StartsWith("--", StringComparison.Ordinal);

    private static IEnumerable<Option> OptionsOf(ParseResult parsed) => parsed.CommandResult.Command.Options
        .Concat(parsed.RootCommandResult.Command.Options.Where(o => o.Recursive || parsed.CommandResult.Command is RootCommand)).Distinct();
}
