using System.CommandLine;
using Coilwright.Core.Faults;
using Coilwright.Documents.Kits;
using Coilwright.Wording;

namespace Coilwright.Cli.Calling;

/// <summary>The option of a sheet of labels: pairs of numbers with an x between them, mm.</summary>
internal static class LabelsOption
{
    /// <summary>The usual sheet as it would be typed.</summary>
    public static string Usual { get; } = LabelGrid.Usual.Text;

    /// <summary>Reads it; the usual sheet where it is not given or is wrong, and then a fault is added.</summary>
    public static LabelGrid Read(ParseResult parsed, Option<string?> option, List<Fault> faults)
    {
        if (parsed.GetValue(option) is not { } text) return LabelGrid.Usual;
        if (LabelGrid.Read(text) is { } grid) return grid;
        faults.Add(Fault.Of(UsageCodes.LabelsForm, option.Name, text));
        return LabelGrid.Usual;
    }
}
