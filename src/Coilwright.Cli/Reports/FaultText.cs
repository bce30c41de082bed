using Coilwright.Core.Faults;
using Coilwright.Wording;

namespace Coilwright.Cli.Reports;

/// <summary>Faults for people: where, what, and how to mend it.</summary>
internal static class FaultText
{
    // More than this many at once are not read; what is shown is the beginning of the file.
    private const int Shown = 12;

    public static string Of(IReadOnlyList<Fault> faults, string? file, Language language)
    {
        var page = new TextPage();
        foreach (var fault in faults.Take(Shown))
        {
            var words = language.Say(fault);
            if (!ReferenceEquals(fault, faults[0])) page.Blank();
            if (file is not null) page.Paragraph(Place(fault, file, language) + ":");
            page.Paragraph(words.Message, file is null ? 0 : 2);
            if (words.Mend.Length > 0) page.Paragraph(words.Mend, file is null ? 0 : 2);
        }
        if (faults.Count > Shown) page.Paragraph(language.Sentence(language.Help.FurtherFaults, ("more", faults.Count - Shown)));
        return page.ToString();
    }

    private static string Place(Fault fault, string file, Language language) => language.Fill(language.Help.FaultPlace, ("file", file),
        ("line", fault.Line == 0 ? null : fault.Line), ("column", fault.Column == 0 ? null : fault.Column), ("field", fault.Field));
}
