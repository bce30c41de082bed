using System.Collections.Immutable;
using System.CommandLine;
using Coilwright.Core.Faults;
using Coilwright.Documents.Pages;

namespace Coilwright.Cli.Calling;

/// <summary>The option of the paper.</summary>
internal static class PaperOption
{
    private static readonly ImmutableArray<Paper> Papers = [Paper.A4, Paper.Letter];

    /// <summary>Reads it; the usual paper where it is not given or not known, and then a fault is added.</summary>
    public static Paper Read(ParseResult parsed, Option<string?> option, List<Fault> faults)
    {
        if (parsed.GetValue(option) is not { } text) return new PageSetup().Paper;
        if (Papers.FirstOrDefault(p => p.Name.Equals(text, StringComparison.OrdinalIgnoreCase)) is { } paper) return paper;
        var known = Papers.Select(p => p.Name.ToLowerInvariant()).ToArray();
        faults.Add(Fault.Of(FaultCodes.WordUnknown, option.Name, text, ("known", string.Join(", ", known)), ("nearest", NearestName.Of(text, known) ?? "")));
        return new PageSetup().Paper;
    }
}
