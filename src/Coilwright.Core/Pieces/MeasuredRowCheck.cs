using System.Collections.Immutable;
using System.Globalization;
using Coilwright.Core.Beads;
using Coilwright.Core.Faults;
using Coilwright.Core.Stringing;

namespace Coilwright.Core.Pieces;

/// <summary>The rules that a row measured on the wire must meet against the piece's own order and beads.</summary>
/// <remarks>Catches slips of the pen (a bead too many, inches for millimetres), not poor measuring: on the curve a row honestly differs from the sum of
/// its beads' lengths by what they hinge, so the share allowed is wide (<see cref="ReckoningChoices.MeasuredAbsurdShare"/>).</remarks>
public static class MeasuredRowCheck
{
    /// <summary>What is wrong with a row; empty when nothing is. Fields are relative to the row.</summary>
    /// <param name="row">The row.</param>
    /// <param name="order">The order it was measured on.</param>
    /// <param name="beads">The piece's beads.</param>
    /// <param name="absurdShare">How far it may differ from the beads' own lengths, as a share of them.</param>
    public static ImmutableArray<Fault> Of(MeasuredRow row, StringingOrder order, ImmutableArray<Bead> beads, double absurdShare)
    {
        if (row.FirstBead < 1)
            return [Fault.Of(FaultCodes.ValueAtLeast, "firstBead", Text(row.FirstBead), ("min", "1"), ("unit", ""))];
        if (row.LastBead < row.FirstBead)
            return [Fault.Of(FaultCodes.ValueAtLeast, "lastBead", Text(row.LastBead), ("min", Text(row.FirstBead)), ("unit", ""))];
        if (row.LastBead > order.Count)
            return [Fault.Of(FaultCodes.MeasuredBeyond, row.FirstBead > order.Count ? "firstBead" : "lastBead",
                Text(row.FirstBead > order.Count ? row.FirstBead : row.LastBead), ("beads", Text(order.Count)))];
        var expectedMm = 0.0;
        for (var i = row.FirstBead - 1; i < row.LastBead; i++) expectedMm += beads[order.Kinds[i]].LengthOnWireMm;
        // Written so that NaN counts as absurd.
        return Math.Abs(row.TotalMm - expectedMm) <= absurdShare * expectedMm ? []
            : [Fault.Of(FaultCodes.MeasuredAbsurd, "totalMm", Text(row.TotalMm), ("expected", Text(expectedMm)))];
    }

    private static string Text(double value) => value.ToString("0.##", CultureInfo.InvariantCulture);
}
