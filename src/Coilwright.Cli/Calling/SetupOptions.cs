using System.CommandLine;
using Coilwright.Core.Faults;
using Coilwright.Documents.Pages;
using Coilwright.Wording;

namespace Coilwright.Cli.Calling;

/// <summary>How documents are put on paper. Labels and their pick list take a paper alone (<see cref="PaperOption"/>): labels have a size that does not give way.</summary>
internal sealed class SetupOptions(Language language)
{
    private readonly Option<string?> _paper = new("--paper") { Description = language.Help.SheetPaper, HelpName = "a4|letter" };
    private readonly Option<bool> _large = new("--large-print") { Description = language.Help.SheetLargePrint };
    private readonly Option<bool> _grey = new("--greyscale") { Description = language.Help.SheetGreyscale };
    private readonly Option<bool> _spare = new("--ink-saving") { Description = language.Help.SheetInkSaving };

    /// <summary>Adds them to a verb.</summary>
    public void AddTo(Command command)
    {
        foreach (var option in (Option[])[_paper, _large, _grey, _spare]) command.Add(option);
    }

    /// <summary>Reads them; as usual where they are not given or not known, and then a fault is added.</summary>
    public PageSetup Read(ParseResult parsed, List<Fault> faults) => new()
    {
        Paper = PaperOption.Read(parsed, _paper, faults),
        LargePrint = parsed.GetValue(_large),
        Greyscale = parsed.GetValue(_grey),
        InkSaving = parsed.GetValue(_spare),
    };
}
