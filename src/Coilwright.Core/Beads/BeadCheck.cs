using System.Collections.Immutable;
using System.Globalization;
using System.Text.RegularExpressions;
using Coilwright.Core.Beads.Shapes;
using Coilwright.Core.Faults;
using Coilwright.Core.Geometry;

namespace Coilwright.Core.Beads;

/// <summary>The rules that a bead must meet, in one place: everything wrong is said at once.</summary>
internal sealed partial class BeadCheck(BeadDescription d)
{
    private readonly List<Fault> _faults = [];

    // \z, not $, which would let a line break pass at the end.
    [GeneratedRegex(@"^[a-z][a-z0-9-]*\z")]
    internal static partial Regex IdForm();

    internal ImmutableArray<Fault> Run(out BeadShape? shape, out double lengthMm, out double widthMm, out double thicknessMm)
    {
        lengthMm = widthMm = thicknessMm = 0;
        CheckId("id", d.Id, _faults);
        shape = BeadShapes.Find(d.Shape);
        if (shape is null)
            _faults.Add(Fault.Of(FaultCodes.WordUnknown, "shape", d.Shape, ("known", string.Join(", ", BeadShapes.Names)),
                ("nearest", NearestName.Of(d.Shape, BeadShapes.Names) ?? "")));
        var lengthSound = CheckLength(out lengthMm);
        var measuresSound = Measure("widthMm", d.WidthMm) & Measure("thicknessMm", d.ThicknessMm) & Measure("boreMm", d.BoreMm)
            & Measure("endFaceMm", d.EndFaceMm) & Measure("wallMm", d.WallMm) & Measure("curveRadiusMm", d.CurveRadiusMm, 100_000)
            & Measure("massG", d.MassG, 1000, "g") & Measure("densityGPerCm3", d.DensityGPerCm3, 25, "g/cm3");
        if (d.HoleOffsetMm is { } offset && !double.IsFinite(offset)) measuresSound = NotFinite("holeOffsetMm", offset);
        if (d.Seat is { } seat)
            measuresSound &= Measure("seat.lengthMm", seat.LengthMm) & Measure("seat.clearMm", seat.ClearMm);
        if (d.Shows is { } shows)
        {
            if (!double.IsFinite(shows)) NotFinite("shows", shows);
            else if (shows < 0) _faults.Add(Fault.Of(FaultCodes.ValueAtLeast, "shows", Text(shows), ("min", "0"), ("unit", "")));
            else if (shows > 1) _faults.Add(Fault.Of(FaultCodes.ValueAtMost, "shows", Text(shows), ("max", "1"), ("unit", "")));
        }
        if (d.Price is < 0) _faults.Add(Fault.Of(FaultCodes.ValueAtLeast, "price", d.Price.Value.ToString(CultureInfo.InvariantCulture), ("min", "0"), ("unit", "")));
        if (d.Pack is { Beads: < 1 }) _faults.Add(Fault.Of(FaultCodes.ValueAtLeast, "pack.beads", d.Pack.Beads.ToString(CultureInfo.InvariantCulture), ("min", "1"), ("unit", "")));
        if (shape is null) return [.. _faults];

        CheckFieldsOf(shape);
        (widthMm, thicknessMm) = AcrossOf(shape, lengthMm);
        // Measures that are missing or unsound cannot be set against each other; everything else wrong is said beside them.
        if (lengthSound && measuresSound && widthMm > 0 && thicknessMm > 0) CheckAgainstEachOther(ref lengthMm, widthMm, thicknessMm);
        return [.. _faults];
    }

    /// <summary>Checks a name that the order may use: a bead's or a group's.</summary>
    internal static void CheckId(string field, string id, List<Fault> faults)
    {
        if (id.Length == 0) faults.Add(Fault.Of(FaultCodes.TextEmpty, field, id));
        else if (id.Length > 60) faults.Add(Fault.Of(FaultCodes.TextTooLong, field, id[..60] + "...", ("max", "60")));
        else if (!IdForm().IsMatch(id)) faults.Add(Fault.Of(FaultCodes.IdForm, field, id));
        else if (OrderWords.Reserved.Contains(id)) faults.Add(Fault.Of(FaultCodes.IdReserved, field, id, ("known", string.Join(", ", OrderWords.Reserved))));
    }

    private bool CheckLength(out double mm)
    {
        mm = 0;
        switch (d.Length)
        {
            case null:
                _faults.Add(Fault.Of(FaultCodes.LengthMissing, "lengthMm", "", ("fields", "lengthMm, lengthRangeMm, row")));
                return false;
            case BeadLength.Nominal n:
                mm = n.Mm;
                return Measure("lengthMm", n.Mm) & (n.ToleranceMm == 0 || Measure("toleranceMm", n.ToleranceMm, n.Mm));
            case BeadLength.Range r:
                if (!(Measure("lengthRangeMm[0]", r.MinMm) & Measure("lengthRangeMm[1]", r.MaxMm))) return false;
                if (r.MinMm > r.MaxMm)
                {
                    _faults.Add(Fault.Of(FaultCodes.RangeReversed, "lengthRangeMm", $"[{Text(r.MinMm)}, {Text(r.MaxMm)}]",
                        ("min", Text(r.MinMm)), ("max", Text(r.MaxMm))));
                    return false;
                }
                mm = r.MeanMm;
                return true;
            case BeadLength.Row row:
                if (row.Count < 1)
                {
                    _faults.Add(Fault.Of(FaultCodes.ValueAtLeast, "row.count", row.Count.ToString(CultureInfo.InvariantCulture), ("min", "1"), ("unit", "")));
                    return false;
                }
                if (!Measure("row.totalMm", row.TotalMm, Bead.MaxSizeMm * row.Count)) return false;
                mm = row.MeanMm;
                return true;
            default:
                throw new InvalidOperationException("A kind of length without a rule.");
        }
    }

    private void CheckFieldsOf(BeadShape shape)
    {
        var needs = shape.Needs(d);
        Optional("holeOffsetMm", d.HoleOffsetMm);
        Optional("endFaceMm", d.EndFaceMm);
        Optional("wallMm", d.WallMm);
        Optional("curveRadiusMm", d.CurveRadiusMm);
        Optional("lengthIs", d.CurvedLength);
        Optional("seat", d.Seat);
        Optional("matched", d.Matched ? true : (bool?)null);

        void Optional<T>(string field, T? value)
        {
            if (value is null)
            {
                if (needs.Contains(field)) _faults.Add(Fault.Of(FaultCodes.ShapeNeeds, field, "", ("shape", shape.Name)));
            }
            else if (!shape.Takes.Contains(field))
                _faults.Add(Fault.Of(FaultCodes.ShapeHasNo, field, value is double mm ? Text(mm) : "", ("shape", shape.Name)));
        }
    }

    private (double WidthMm, double ThicknessMm) AcrossOf(BeadShape shape, double lengthMm)
    {
        switch (shape.Across)
        {
            case AcrossRule.AsLong:
                return (d.WidthMm ?? d.ThicknessMm ?? lengthMm, d.ThicknessMm ?? d.WidthMm ?? lengthMm);
            case AcrossRule.WideAsLong:
                if (d.ThicknessMm is null) _faults.Add(Fault.Of(FaultCodes.ShapeNeeds, "thicknessMm", "", ("shape", shape.Name)));
                return (d.WidthMm ?? lengthMm, d.ThicknessMm ?? 0);
            case AcrossRule.RoundAcross:
                if (d.WidthMm is null && d.ThicknessMm is null)
                    _faults.Add(Fault.Of(FaultCodes.ShapeNeeds, "widthMm", "", ("shape", shape.Name)));
                return (d.WidthMm ?? d.ThicknessMm ?? 0, d.ThicknessMm ?? d.WidthMm ?? 0);
            default:
                if (d.WidthMm is null) _faults.Add(Fault.Of(FaultCodes.ShapeNeeds, "widthMm", "", ("shape", shape.Name)));
                if (d.ThicknessMm is null) _faults.Add(Fault.Of(FaultCodes.ShapeNeeds, "thicknessMm", "", ("shape", shape.Name)));
                return (d.WidthMm ?? 0, d.ThicknessMm ?? 0);
        }
    }

    private void CheckAgainstEachOther(ref double lengthMm, double widthMm, double thicknessMm)
    {
        var across = Math.Min(widthMm, thicknessMm);
        if (d.BoreMm is { } bore && bore >= across)
            _faults.Add(Fault.Of(FaultCodes.BoreTooWide, "boreMm", Text(bore), ("limit", Text(across))));
        if (d.HoleOffsetMm is { } offset && Math.Abs(offset) > thicknessMm / 2 - (d.BoreMm ?? 0) / 2)
            _faults.Add(Fault.Of(FaultCodes.HoleOutside, "holeOffsetMm", Text(offset), ("limit", Text(thicknessMm / 2 - (d.BoreMm ?? 0) / 2))));
        AtMost("endFaceMm", d.EndFaceMm, thicknessMm);
        AtMost("wallMm", d.WallMm, Math.Min(across, lengthMm) / 2);
        if (d.CurveRadiusMm is { } curve && curve <= thicknessMm / 2)
            _faults.Add(Fault.Of(FaultCodes.ValueAbove, "curveRadiusMm", Text(curve), ("min", Text(thicknessMm / 2)), ("unit", "mm")));
        else if (d.CurvedLength == CurvedLength.Chord && d.CurveRadiusMm is { } radius)
        {
            if (lengthMm >= 2 * radius)
                _faults.Add(Fault.Of(FaultCodes.ValueAtMost, "lengthMm", Text(lengthMm), ("max", Text(2 * radius)), ("unit", "mm")));
            else
                lengthMm = Arc.LengthMm(lengthMm, radius);
        }
        else if (d.CurveRadiusMm is { } curved)
            // More than half a circle does not go over any coil, and its ends would no longer face its neighbours.
            AtMost("lengthMm", lengthMm, Math.PI * curved);
        if (d.Seat is { } seat)
        {
            AtMost("seat.lengthMm", seat.LengthMm, lengthMm);
            AtMost("seat.clearMm", seat.ClearMm, thicknessMm / 2 + (d.HoleOffsetMm ?? 0));
        }
    }

    private void AtMost(string field, double? mm, double limitMm)
    {
        if (mm > limitMm)
            _faults.Add(Fault.Of(FaultCodes.ValueAtMost, field, Text(mm.Value), ("max", Text(limitMm)), ("unit", "mm")));
    }

    private bool Measure(string field, double? value, double max = Bead.MaxSizeMm, string unit = "mm")
    {
        switch (value)
        {
            case null:
                return true;
            case { } v when !double.IsFinite(v):
                return NotFinite(field, v);
            case <= 0:
                _faults.Add(Fault.Of(FaultCodes.ValueAbove, field, Text(value.Value), ("min", "0"), ("unit", unit)));
                return false;
            case { } v when v > max:
                _faults.Add(Fault.Of(FaultCodes.ValueAtMost, field, Text(v), ("max", Text(max)), ("unit", unit)));
                return false;
            default:
                return true;
        }
    }

    private bool NotFinite(string field, double value)
    {
        _faults.Add(Fault.Of(FaultCodes.ValueNotFinite, field, Text(value)));
        return false;
    }

    private static string Text(double value) => value.ToString("0.####", CultureInfo.InvariantCulture);
}
