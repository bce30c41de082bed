using System.Collections.Immutable;
using System.CommandLine;
using Coilwright.Core.Faults;
using Coilwright.Core.Pieces;
using Coilwright.Core.Readings;
using Coilwright.Documents;
using Coilwright.Documents.Pages;
using Coilwright.Wording;

namespace Coilwright.Cli.Calling;

/// <summary>What every verb takes that writes a document of one piece, and how it is read.</summary>
internal sealed class DocumentOptions(Language language)
{
    private readonly Argument<string> _piece = new("PIECE") { Description = language.Help.Piece };
    private readonly Option<string?> _folder = new("--out") { Description = language.Help.SheetOut, HelpName = "DIR" };
    private readonly SetupOptions _setup = new(language);
    private readonly Option<string?> _sizes = new("--sizes") { Description = language.Help.SheetSizes, HelpName = "WRISTS" };
    private readonly Option<string?> _wrist = new("--wrist") { Description = language.Help.Wrist, HelpName = "MM" };
    private readonly Option<string?> _language = LanguageOption.Make(language);
    private readonly Option<bool> _json = new(Call.JsonFlag) { Description = language.Help.Json };

    /// <summary>The verb with these and its own options.</summary>
    public Command Verb(string name, string does, params ReadOnlySpan<Option> own)
    {
        var command = new Command(name, does) { _piece, _folder };
        _setup.AddTo(command);
        foreach (var option in own) command.Add(option);
        foreach (var option in (Option[])[_sizes, _wrist, _language, _json]) command.Add(option);
        return command;
    }

    /// <summary>What was asked for; null, with the faults noted, when it cannot be read.</summary>
    public Request? Read(ParseResult parsed, Command verb, List<Fault> faults)
    {
        var request = new ReckonRequest { WristMm = LengthOption.Read(parsed, _wrist, Wearer.LeastWristMm, Wearer.MostWristMm, faults) };
        var setup = _setup.Read(parsed, faults);
        var asked = parsed.GetValue(_sizes);
        var wrists = asked is null or UsualSizes ? ImmutableArray<double>.Empty : WristsOption.Read(parsed, _sizes, faults);
        LanguageOption.Check(parsed, _language, faults);
        if (parsed.GetValue(_folder) is not { Length: > 0 } target)
        {
            faults.Add(Fault.Of(UsageCodes.OptionMissing, "", _folder.Name, ("verb", verb.Name)));
            target = "";
        }
        return faults.Count > 0 ? null : new Request(parsed.GetRequiredValue(_piece), target, request, asked is null ? null : wrists, setup);
    }

    // Stands for the wrists that nobody has to name.
    private const string UsualSizes = "usual";

    /// <summary>What was asked for.</summary>
    /// <param name="Path">The piece's file.</param>
    /// <param name="Target">The folder to write into.</param>
    /// <param name="Reckon">How it is reckoned.</param>
    /// <param name="WristsMm">Wrists whose sizes are told too, mm; empty for the usual ones; null for none.</param>
    /// <param name="Setup">How it is printed.</param>
    public sealed record Request(string Path, string Target, ReckonRequest Reckon, ImmutableArray<double>? WristsMm, PageSetup Setup)
    {
        /// <summary>Writes a document of the piece.</summary>
        /// <param name="kind">The document.</param>
        /// <param name="language">The language.</param>
        /// <param name="cancel">Stops it.</param>
        /// <param name="beside">Makes what is written beside it; null for nothing.</param>
        public Task<DocumentsWritten> WriteAsync(DocumentKind kind, Language language, CancellationToken cancel, Func<DocumentSource, IEnumerable<DocumentFile>>? beside = null) =>
            Task.Run(() => DocumentWriting.WriteAsync(kind, this, language, beside, cancel), cancel).WaitAsync(cancel);
    }
}
