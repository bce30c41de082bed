using System.Collections.Immutable;
using System.Globalization;
using Coilwright.Core.Beads;
using Coilwright.Core.Beads.Shapes;
using Coilwright.Core.Colour;
using Coilwright.Core.Faults;
using Coilwright.Core.Pieces;

namespace Coilwright.Core.Tray;

/// <summary>Makes the description of a kind of the cells of its line, over what the tray has of it already.</summary>
internal sealed class TrayDraft(TrayCells cells, TrayWords words, ReckoningData data)
{
    private static readonly string[] Lengths = ["lengthMm", "toleranceMm", "lengthMinMm", "lengthMaxMm", "row.count", "row.totalMm", TrayColumns.Size];
    private static readonly string[] RoleWords = [.. Enum.GetValues<Role>().Select(TrayColumns.RoleWord)];
    private static readonly char[] Separators = ['|', ';'], ColourSeparators = ['|', ';', ',', ' ', '/'];

    private readonly List<Fault> _faults = [];

    /// <summary>What could not be read.</summary>
    public IReadOnlyList<Fault> Faults => _faults;

    /// <summary>Whether a field could not be read, so that what the core says of it says nothing new.</summary>
    public bool IsWrong(string field)
    {
        var name = field.Split('[')[0];
        return _faults.Any(f => f.Field == name || name is "lengthMm" or "lengthRangeMm" && Lengths.Contains(f.Field))
            || name is "widthMm" or "thicknessMm" && _faults.Any(f => f.Field == TrayColumns.Size);
    }

    /// <summary>The description.</summary>
    public BeadDescription Describe(string key, BeadDescription? before)
    {
        var now = before ?? new BeadDescription { Id = key, Shape = "" };
        now = now with
        {
            Name = Text("name", now.Name),
            Shape = Shape(now.Shape),
            WidthMm = Number("widthMm", now.WidthMm),
            ThicknessMm = Number("thicknessMm", now.ThicknessMm),
            BoreMm = Number("boreMm", now.BoreMm),
            HoleOffsetMm = Number("holeOffsetMm", now.HoleOffsetMm),
            EndFaceMm = Number("endFaceMm", now.EndFaceMm),
            WallMm = Number("wallMm", now.WallMm),
            CurveRadiusMm = Number("curveRadiusMm", now.CurveRadiusMm),
            CurvedLength = LengthIs(now.CurvedLength),
            Matched = Matched(now.Matched),
            Seat = Seat(now.Seat),
            Colours = Colours(now.Colours),
            Coating = Text("coating", now.Coating),
            DensityGPerCm3 = Number("densityGPerCm3", now.DensityGPerCm3),
            MassG = Number("massG", now.MassG),
            Role = RoleOf(now.Role),
            Shows = Number("shows", now.Shows),
            Pack = PackOf(now.Pack),
            Price = Price(now.Price),
            Lot = Text("lot", now.Lot),
            Aliases = Aliases(now.Aliases),
        };
        return WithLength(WithMaterial(now));
    }

    private void Wrong(string code, string field, string value, params ReadOnlySpan<(string Name, string Value)> values) =>
        _faults.Add(Fault.Of(code, field, value.Length <= 60 ? value : value[..60] + "...", values));

    private string? Text(string column, string? before) => cells.Has(column) ? cells.Text(column) : before;

    private double? Number(string column, double? before) => cells.Has(column) ? Number(column) : before;

    private double? Number(string column)
    {
        if (cells.Text(column) is not { } text) return null;
        if (NumberOf(text, column) is { } number) return (double)number;
        Wrong(FaultCodes.TrayNumber, column, text);
        return null;
    }

    private int? Whole(string column)
    {
        if (Number(column) is not { } number) return null;
        if (Math.Abs(number) <= int.MaxValue && number == Math.Floor(number)) return (int)number;
        Wrong(FaultCodes.FieldType, column, cells.Text(column)!, ("expected", FaultTypes.WholeNumber), ("found", FaultTypes.Number));
        return null;
    }

    /// <summary>A number with a point or a comma before its fraction, the column's own unit behind it or not; null when it is none.</summary>
    private static double? NumberOf(string text, string column)
    {
        var unit = column.EndsWith("Mm", StringComparison.Ordinal) ? "mm" : column == "massG" ? "g" : "";
        if (unit.Length > 0 && text.EndsWith(unit, StringComparison.OrdinalIgnoreCase)) text = text[..^unit.Length].TrimEnd();
        if (text.Count(c => c is '.' or ',') > 1) return null;
        const NumberStyles styles = NumberStyles.AllowLeadingSign | NumberStyles.AllowDecimalPoint | NumberStyles.AllowExponent;
        return double.TryParse(text.Replace(',', '.'), styles, CultureInfo.InvariantCulture, out var number) && double.IsFinite(number) ? number : null;
    }

    private decimal? Price(decimal? before)
    {
        if (Number("price", (double?)before) is not { } price) return null;
        if (Math.Abs(price) <= 1e9) return (decimal)price;
        Wrong(FaultCodes.ValueAtMost, "price", cells.Text("price")!, ("max", PieceRules.Price.Max.ToString(CultureInfo.InvariantCulture)), ("unit", ""));
        return null;
    }

    private string Shape(string before)
    {
        if (cells.Text("shape") is not { } text)
        {
            if (before.Length == 0) Wrong(FaultCodes.FieldMissing, "shape", "");
            return before;
        }
        if ((BeadShapes.Find(text) ?? BeadShapes.Find(TrayKey.Of(text)))?.Name is { } known) return known == BeadShapes.Find(before)?.Name ? before : known;
        if (words.Shape(text) is { } said) return said == BeadShapes.Find(before)?.Name ? before : said;
        Wrong(FaultCodes.WordUnknown, "shape", text, ("known", string.Join(", ", BeadShapes.Names)), ("nearest", NearestName.Of(TrayKey.Of(text), BeadShapes.Names) ?? ""));
        return "";
    }

    private Role RoleOf(Role before)
    {
        if (!cells.Has("role")) return before;
        if (cells.Text("role") is not { } text) return Role.Main;
        var word = words.Role(text) ?? TrayKey.Of(text);
        if (Array.IndexOf(RoleWords, word) is var at and >= 0) return Enum.GetValues<Role>()[at];
        Wrong(FaultCodes.WordUnknown, "role", text, ("known", string.Join(", ", RoleWords)), ("nearest", NearestName.Of(word, RoleWords) ?? ""));
        return before;
    }

    private CurvedLength? LengthIs(CurvedLength? before)
    {
        if (!cells.Has("lengthIs")) return before;
        switch (cells.Text("lengthIs")?.ToUpperInvariant())
        {
            case null: return null;
            case "ARC": return CurvedLength.Arc;
            case "CHORD": return CurvedLength.Chord;
            default:
                Wrong(FaultCodes.WordUnknown, "lengthIs", cells.Text("lengthIs")!, ("known", "arc, chord"), ("nearest", ""));
                return before;
        }
    }

    private bool Matched(bool before)
    {
        if (!cells.Has("matched")) return before;
        switch (cells.Text("matched")?.ToUpperInvariant())
        {
            case null or "NO" or "NEIN" or "FALSE" or "0": return false;
            case "YES" or "JA" or "TRUE" or "1" or "X": return true;
            default:
                Wrong(FaultCodes.WordUnknown, "matched", cells.Text("matched")!, ("known", "yes, no"), ("nearest", ""));
                return before;
        }
    }

    private Seat? Seat(Seat? before)
    {
        if (!cells.Has("seat.lengthMm") && !cells.Has("seat.clearMm")) return before;
        double? length = Number("seat.lengthMm", before?.LengthMm), clear = Number("seat.clearMm", before?.ClearMm);
        if (length is { } l && clear is { } c) return new Seat(l, c);
        if (length is not null) Missing("seat.clearMm");
        if (clear is not null) Missing("seat.lengthMm");
        return null;
    }

    private Pack? PackOf(Pack? before)
    {
        if (!cells.Has("pack.unit") && !cells.Has("pack.beads")) return before;
        var unit = Text("pack.unit", before?.Unit);
        var beads = cells.Has("pack.beads") ? Whole("pack.beads") : before?.Beads;
        if (unit is not null && beads is { } n) return new Pack(unit, n);
        if (unit is not null) Missing("pack.beads");
        if (beads is not null) Missing("pack.unit");
        return null;
    }

    // One that is there and cannot be read is told as that alone.
    private void Missing(string column)
    {
        if (_faults.All(f => f.Field != column)) Wrong(FaultCodes.FieldMissing, column, "");
    }

    private ImmutableArray<Srgb> Colours(ImmutableArray<Srgb> before)
    {
        if (!cells.Has("colours")) return before;
        var colours = ImmutableArray.CreateBuilder<Srgb>();
        foreach (var part in (cells.Text("colours") ?? "").Split(ColourSeparators, StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries))
            if (Srgb.TryParse(part, out var colour)) colours.Add(colour);
            else Wrong(FaultCodes.ColourForm, "colours", part);
        return colours.ToImmutable();
    }

    private ImmutableArray<string> Aliases(ImmutableArray<string> before) => !cells.Has("aliases") ? before
        : [.. (cells.Text("aliases") ?? "").Split(Separators, StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries)];

    private BeadDescription WithMaterial(BeadDescription now)
    {
        if (!cells.Has("material")) return now;
        if (cells.Text("material") is not { } text) return now with { Material = null, OtherMaterial = null };
        // As it was written before, it is what it was.
        if (text == (now.Material?.Key ?? now.OtherMaterial)) return now;
        return data.Materials.TryGetValue(text, out var known) || data.Materials.TryGetValue(TrayKey.Of(text), out known)
            ? now with { Material = known, OtherMaterial = null }
            : now with { Material = null, OtherMaterial = text };
    }

    private BeadDescription WithLength(BeadDescription now)
    {
        double? mm = Number("lengthMm"), tolerance = Number("toleranceMm"), least = Number("lengthMinMm"), most = Number("lengthMaxMm"), total = Number("row.totalMm");
        var count = Whole("row.count");
        bool isRange = least is not null || most is not null, isRow = count is not null || total is not null;
        if ((mm is null ? 0 : 1) + (isRange ? 1 : 0) + (isRow ? 1 : 0) > 1)
            Wrong(FaultCodes.LengthTwice, mm is null ? "row.totalMm" : "lengthMm", cells.Text(mm is null ? "row.totalMm" : "lengthMm") ?? "", ("fields", "lengthMm, lengthMinMm, lengthMaxMm, row.count, row.totalMm"));
        else if (isRange && least is null) Missing("lengthMinMm");
        else if (isRange && most is null) Missing("lengthMaxMm");
        else if (isRow && count is null) Missing("row.count");
        else if (isRow && total is null) Missing("row.totalMm");
        else if (isRange) return now with { Length = new BeadLength.Range(least!.Value, most!.Value) };
        else if (isRow) return now with { Length = new BeadLength.Row(count!.Value, total!.Value, data.Choices.RulerErrorMm) };
        else if (mm is { } length)
            return now with { Length = new BeadLength.Nominal(length, cells.Has("toleranceMm") ? tolerance ?? 0 : (now.Length as BeadLength.Nominal)?.ToleranceMm ?? 0) };
        else if (cells.Text(TrayColumns.Size) is { } label) return WithSize(now, label);
        return now;
    }

    private BeadDescription WithSize(BeadDescription now, string label)
    {
        if (SizeLabel.TryParse(label, out var size))
        {
            var (along, across) = size.Along(BeadShapes.Find(now.Shape)?.LabelRunsAlongLarger ?? true);
            return now with { Length = new BeadLength.Nominal(along), WidthMm = cells.Text("widthMm") is null ? across : now.WidthMm };
        }
        if (NumberOf(label, "lengthMm") is { } mm) return now with { Length = new BeadLength.Nominal(mm) };
        Wrong(FaultCodes.TraySize, TrayColumns.Size, label);
        return now;
    }
}
