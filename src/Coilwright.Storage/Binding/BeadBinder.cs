using System.Collections.Immutable;
using Coilwright.Core.Beads;
using Coilwright.Core.Colour;
using Coilwright.Core.Faults;
using Coilwright.Core.Pieces;
using Coilwright.Storage.Json;

namespace Coilwright.Storage.Binding;

/// <summary>Makes one bead of its object in the file. The rules that the bead must meet are the core's.</summary>
internal sealed class BeadBinder(ReckoningData data, FaultList faults)
{
    // Stand-ins where the field itself is missing or wrong, so that the rest of the bead is still checked; what the core says of them is dropped.
    private const string NoId = "bead", NoShape = "";

    /// <summary>The bead's id as written, or null; and the bead, or null with faults noted.</summary>
    public (string? Id, Bead? Bead) Bind(JsonValue at)
    {
        if (Fields.Of(at, PieceFields.Bead, faults) is not { } fields) return (null, null);
        var before = faults.Count;
        var id = fields.Require("id") ? fields.Text("id", most: int.MaxValue) : null;
        var shape = fields.Require("shape") ? fields.Text("shape") : null;
        var description = new BeadDescription
        {
            Id = id ?? NoId,
            Name = fields.Text("name"),
            Shape = shape ?? NoShape,
            Length = Length(fields),
            WidthMm = fields.Number("widthMm"),
            ThicknessMm = fields.Number("thicknessMm"),
            BoreMm = fields.Number("boreMm"),
            HoleOffsetMm = fields.Number("holeOffsetMm"),
            EndFaceMm = fields.Number("endFaceMm"),
            WallMm = fields.Number("wallMm"),
            CurveRadiusMm = fields.Number("curveRadiusMm"),
            Matched = fields.YesOrNo("matched") ?? false,
            CurvedLength = fields.Word("lengthIs", PieceFields.LengthIs),
            Seat = Seat(fields),
            Colours = Colours(fields),
            Coating = fields.Text("coating"),
            DensityGPerCm3 = fields.Number("densityGPerCm3"),
            MassG = fields.Number("massG"),
            Role = fields.Word("role", PieceFields.Roles) ?? Role.Main,
            Shows = fields.Number("shows"),
            Pack = Pack(fields),
            Price = Price(fields),
            Lot = fields.Text("lot"),
            Aliases = fields.Texts("aliases"),
        };
        description = WithMaterial(fields, description);
        if (Bead.TryMake(description, out var bead, out var found) && faults.Count == before) return (id, bead);
        foreach (var fault in found)
            if (!fields.Wrong(fault.Field))
                faults.AddFrom(at, fault);
        return (id, null);
    }

    private BeadLength? Length(Fields fields)
    {
        var ways = 0;
        string? second = null;
        foreach (var way in (ReadOnlySpan<string>)["lengthMm", "lengthRangeMm", "row"])
            if (fields.Has(way) && ++ways == 2)
                second = way;
        if (second is not null) fields.Fault(second, FaultCodes.LengthTwice, ("fields", "lengthMm, lengthRangeMm, row"));
        if (!fields.Has("lengthMm") && fields.Has("toleranceMm"))
        {
            if (fields.Has("lengthRangeMm")) fields.NotWith("toleranceMm", fields.At.Path + ".lengthRangeMm", "lengthRangeMm");
            else if (fields.Has("row")) fields.NotWith("toleranceMm", fields.At.Path + ".row", "row");
        }
        // Whatever is wrong with how the length is written, the core should not also say that it is missing.
        if (fields.Number("lengthMm") is { } mm) return new BeadLength.Nominal(mm, fields.Number("toleranceMm") ?? 0);
        if (fields.Has("lengthMm")) return null;
        if (fields["lengthRangeMm"] is { } range) return Range(fields, range);
        return fields.Has("row") ? Row(fields) : null;
    }

    private static BeadLength.Range? Range(Fields fields, JsonValue range)
    {
        if (range.Kind == JsonKind.List && range.Items.Take(3).ToArray() is [{ Kind: JsonKind.Number } min, { Kind: JsonKind.Number } max])
            return new BeadLength.Range(min.Number, max.Number);
        fields.WrongType("lengthRangeMm", range, FaultTypes.TwoNumbers);
        fields.MarkWrong("lengthMm");
        return null;
    }

    private BeadLength.Row? Row(Fields fields)
    {
        fields.MarkWrong("lengthMm");
        var before = faults.Count;
        if (fields.Inner("row", PieceFields.BeadRow) is not { } row) return null;
        var count = row.Require("count") ? row.Whole("count", PieceRules.RowBeads) : null;
        var total = row.Require("totalMm") ? row.Number("totalMm") : null;
        if (faults.Count > before) fields.MarkWrong("row");
        return count is { } n && total is { } mm ? new BeadLength.Row(n, mm, data.Choices.RulerErrorMm) : null;
    }

    private Seat? Seat(Fields fields)
    {
        var before = faults.Count;
        if (fields.Inner("seat", PieceFields.Seat) is not { } seat) return null;
        var length = seat.Require("lengthMm") ? seat.Number("lengthMm") : null;
        var clear = seat.Require("clearMm") ? seat.Number("clearMm") : null;
        if (faults.Count > before) fields.MarkWrong("seat");
        return length is { } l && clear is { } c ? new Seat(l, c) : null;
    }

    private Pack? Pack(Fields fields)
    {
        var before = faults.Count;
        if (fields.Inner("pack", PieceFields.Pack) is not { } pack) return null;
        var unit = pack.Require("unit") ? pack.Text("unit", mayBeEmpty: false) : null;
        var beads = pack.Require("beads") ? pack.Whole("beads", PieceRules.PackBeads) : null;
        if (faults.Count > before) fields.MarkWrong("pack");
        return unit is not null && beads is { } n ? new Pack(unit, n) : null;
    }

    private static decimal? Price(Fields fields)
    {
        if (fields.Number("price", PieceRules.Price) is null) return null;
        return fields["price"]!.Value.Money;
    }

    private static ImmutableArray<Srgb> Colours(Fields fields)
    {
        if (fields.List("colours") is not { } items) return [];
        var colours = ImmutableArray.CreateBuilder<Srgb>();
        foreach (var item in items)
            if (item.Kind != JsonKind.Text)
                fields.ItemFault("colours", item, FaultCodes.FieldType, ("expected", FaultTypes.Text), ("found", item.KindWord));
            else if (Srgb.TryParse(item.Text, out var colour))
                colours.Add(colour);
            else
                fields.ItemFault("colours", item, FaultCodes.ColourForm);
        return colours.ToImmutable();
    }

    private BeadDescription WithMaterial(Fields fields, BeadDescription description)
    {
        if (fields.Text("material", mayBeEmpty: false) is not { } key) return description;
        if (data.Materials.TryGetValue(key, out var material)) return description with { Material = material };
        if (description.DensityGPerCm3 is not null || description.MassG is not null) return description with { OtherMaterial = key };
        fields.Fault("material", FaultCodes.MaterialUnknown, ("known", string.Join(", ", data.Materials.Keys)),
            ("nearest", NearestName.Of(key, data.Materials.Keys) ?? ""));
        return description;
    }
}
