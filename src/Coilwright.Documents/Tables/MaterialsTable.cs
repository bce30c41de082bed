using Coilwright.Core.Costing;
using Coilwright.Core.Readings;
using Coilwright.Wording;

namespace Coilwright.Documents.Tables;

/// <summary>What goes into a piece and what to buy for it as a table: a line for each kind of bead, then the wire and what the ends take.</summary>
public static class MaterialsTable
{
    // The names of the columns are promised: other programs read them.
    private static readonly string[] Columns = ["letter", "item", "name", "lengthMm", "widthMm", "holeMm", "material", "use", "unit", "holds", "units", "bought", "cost"];

    /// <summary>Comma-separated values, with English heads in every language: <see cref="TableFile.Csv"/>. What is not known is empty; so is the currency, which a piece does not tell.</summary>
    public static byte[] Csv(Reckoned reckoned, Language language) => TableFile.Csv(Columns, Rows(reckoned, language));

    private static IEnumerable<IReadOnlyList<object?>> Rows(Reckoned reckoned, Language language)
    {
        foreach (var (line, kind) in MaterialsList.Of(reckoned.Piece).Lines.Zip(reckoned.Counts))
        {
            var bead = line.Bead;
            var pack = bead.Description.Pack;
            yield return [kind.Letter, bead.Id, bead.Name, Mm(bead.LengthMm), Mm(bead.WidthMm), Mm(bead.BoreMm), bead.Description.Material?.Key ?? bead.Description.OtherMaterial, line.Use, pack?.Unit, pack?.Beads, line.Packs, line.Bought, line.Cost];
        }
        var wire = reckoned.Piece.Wire;
        var loops = (decimal)reckoned.Wire.LoopsToCut;
        yield return ["", "wire", language.Fill(language.Sheet.Wire, ("wireMm", wire.WireMm), ("gauge", wire.GaugeName)), Mm(reckoned.Wire.CutMm), Mm(wire.WireMm), null, null, loops, "loop", 1, Math.Ceiling(loops), Math.Ceiling(loops), null];
        foreach (var (end, count) in reckoned.Piece.Ends.Bought)
            yield return ["", end.IsTurned ? "dangle" : "cap", end.IsTurned ? language.Fill(language.Sheet.DangleItem, ("dangle", end.Dangle)) : language.Sheet.CapItem, Mm(end.IsTurned ? end.DangleMm : end.InsideMm), null, null, null, count, null, null, null, null, null];
    }

    private static decimal? Mm(double? mm) => mm is { } known ? Math.Round((decimal)known, 4) : null;
}
