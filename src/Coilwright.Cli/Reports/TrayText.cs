using System.Collections.Immutable;
using System.Globalization;
using Coilwright.Core.Tray;
using Coilwright.Wording;

namespace Coilwright.Cli.Reports;

/// <summary>What is told of a tray.</summary>
/// <param name="Kinds">How many kinds are in it now.</param>
/// <param name="Found">What was found; null when nothing was looked for.</param>
/// <param name="Columns">The heads of a list and what each was taken for; null for left out.</param>
/// <param name="Import">What the list would do, or did; null when there is none.</param>
/// <param name="Taken">Whether the list was taken in.</param>
/// <param name="File">The file that the tray was saved as; null when it was not.</param>
internal sealed record TrayTold(int Kinds, TrayFound? Found, ImmutableArray<(string Head, string? Column)> Columns, TrayImport? Import, bool Taken, string? File);

/// <summary>What is told of a tray, as a page of text.</summary>
internal static class TrayText
{
    private const int MostLines = 60;

    /// <summary>The page.</summary>
    public static string Of(TrayTold told, Language language)
    {
        var (page, words, tray) = (new TextPage(), language.TrayList, language.Bench.Tray);
        page.Title(tray.Heading);
        if (told.Import is { } import)
        {
            page.Heading(tray.ColumnsHeading);
            foreach (var (head, column) in told.Columns)
                page.Hanging("- ", column is null ? language.Fill(words.ColumnLeftOut, ("head", head)) : language.Fill(words.Column, ("head", head), ("column", NameOf(column))));
            page.Heading(tray.Preview);
            page.Paragraph(language.Fill(tray.Would, ("adds", import.Count(TrayRowDoes.Adds)), ("changes", import.Count(TrayRowDoes.Changes)), ("same", import.Count(TrayRowDoes.Nothing)),
                ("wrong", import.Count(TrayRowDoes.IsWrong) is > 0 and var wrong ? wrong : null)));
            // What is wrong first: that is what she has to look at.
            TrayRow[] shown = [.. import.Rows.Where(r => r.Does == TrayRowDoes.IsWrong), .. import.Rows.Where(r => r.Does == TrayRowDoes.Changes), .. import.Rows.Where(r => r.Does == TrayRowDoes.Adds)];
            foreach (var row in shown.Take(MostLines))
            {
                page.Hanging(row.Does == TrayRowDoes.IsWrong ? "! " : "  ", $"{language.Fill(tray.Line, ("line", row.Line))}: {row.Kind?.Bead.Name ?? row.Key} ({Does(row.Does)})");
                foreach (var fault in row.Faults) page.Hanging("    ", Said(fault, language));
                foreach (var change in row.Changes) page.Hanging("    ", language.Fill(tray.Change, ("column", NameOf(change.Column)), ("before", Cell(change.Before)), ("after", Cell(change.After))));
            }
            if (shown.Length > MostLines) page.Paragraph(language.Fill(tray.AndMore, ("more", shown.Length - MostLines)), 2);
            page.Blank();
            page.Paragraph(!import.IsSound ? tray.Mend
                : told.Taken ? language.Fill(tray.Took, ("adds", import.Count(TrayRowDoes.Adds)), ("changes", import.Count(TrayRowDoes.Changes))) : words.NotTakenYet);
        }
        if (told.Found is { } found)
        {
            page.Blank();
            page.Paragraph(told.Kinds == 0 ? tray.NoneYet : language.Fill(words.Found, ("found", found.Count), ("kinds", told.Kinds)));
            page.Table([("", false), (tray.Shape, false), (NameOf("lengthMm"), true), (tray.Drawer, false)], found.Shown.Select(k => new[]
            {
                k.Bead.Name, language.Terms.Shapes[k.Bead.Shape.Name], language.Number(k.Bead.LengthMm, 2), k.Drawer ?? "",
            }), 0, 3);
            if (found.Count > found.Shown.Length) page.Paragraph(language.Fill(tray.LabelMore, ("more", (found.Count - found.Shown.Length).ToString(CultureInfo.InvariantCulture))), 2);
        }
        if (told.File is { } file)
        {
            page.Blank();
            page.Paragraph(language.Fill(words.Written, ("kinds", told.Kinds), ("file", file)));
        }
        return page.ToString();

        string NameOf(string column) => tray.Columns.GetValueOrDefault(column, column);

        string Cell(string text) => text.Length == 0 ? tray.Empty : text;

        string Does(TrayRowDoes does) => does switch { TrayRowDoes.Adds => tray.Adds, TrayRowDoes.Changes => tray.Changes, TrayRowDoes.IsWrong => tray.Wrong, _ => tray.Same };
    }

    /// <summary>What is wrong and how to mend it.</summary>
    public static string Said(Core.Faults.Fault fault, Language language)
    {
        var said = language.Say(fault);
        return $"{said.Message} {said.Mend}".TrimEnd();
    }
}
