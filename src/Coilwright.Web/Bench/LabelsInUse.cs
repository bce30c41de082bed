using System.Collections.Immutable;
using System.Globalization;
using Coilwright.Documents.Kits;
using Coilwright.Documents.Pages;

namespace Coilwright.Web.Bench;

/// <summary>The sheet of labels that she uses, and which version of which piece she made labels of last.</summary>
/// <param name="Grid">The sheet.</param>
/// <param name="Paper">Its paper.</param>
/// <param name="Made">By piece the version.</param>
public sealed record LabelsInUse(LabelGrid Grid, Paper Paper, ImmutableSortedDictionary<Guid, long> Made)
{
    private static readonly ImmutableArray<Paper> Papers = [Paper.A4, Paper.Letter];

    /// <summary>The usual sheet; no labels were made yet.</summary>
    public static LabelsInUse None { get; } = new(LabelGrid.Usual, new PageSetup().Paper, ImmutableSortedDictionary<Guid, long>.Empty);

    /// <summary>A paper by its name; null when there is none of it.</summary>
    public static Paper? PaperOf(string name) => Papers.FirstOrDefault(p => p.Name == name);

    /// <summary>As it is kept: the paper, the sheet, then a line for each piece.</summary>
    public string Text => string.Join('\n', Made.Select(m => string.Create(CultureInfo.InvariantCulture, $"{m.Key:D} {m.Value}")).Prepend(Grid.Text).Prepend(Paper.Name));

    /// <summary>Reads it as it is kept; what is not understood is as if it were not there.</summary>
    public static LabelsInUse Read(string text)
    {
        var lines = text.Split('\n');
        var made = ImmutableSortedDictionary.CreateBuilder<Guid, long>();
        foreach (var line in lines.Skip(2))
            if (line.Split(' ') is [var id, var version] && Guid.TryParseExact(id, "D", out var piece) && long.TryParse(version, NumberStyles.None, CultureInfo.InvariantCulture, out var number)) made[piece] = number;
        return new LabelsInUse(lines.Length > 1 && LabelGrid.Read(lines[1]) is { } grid ? grid : LabelGrid.Usual, PaperOf(lines[0]) ?? None.Paper, made.ToImmutable());
    }
}
