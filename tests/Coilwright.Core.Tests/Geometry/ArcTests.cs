using Coilwright.Core.Geometry;
using CsCheck;

namespace Coilwright.Core.Tests.Geometry;

public class ArcTests
{
    [Fact]
    public void Bow_and_arc_are_those_of_the_table()
    {
        foreach (var row in ReferenceTable.Read("sagitta.csv").Rows)
        {
            // Half of the last printed digit.
            Near.Equal(row["sagitta_mm"], Arc.SagittaMm(row["chord_mm"], row["R_mm"]), 0.0000005, row);
            Near.Equal(row["arc_mm"], Arc.LengthMm(row["chord_mm"], row["R_mm"]), 0.0000005, row);
        }
    }

    [Fact]
    public void Chord_undoes_arc() =>
        Gen.Select(Gen.Double[1, 100], Gen.Double[0, 0.999]).Sample((radius, share) =>
        {
            var chord = 2 * radius * share;
            // Rounding, made worse near half a turn where the arc grows without bound in the chord: 1/sqrt(1-0.999^2) is 22.
            Near.Equal(chord, Arc.ChordMm(Arc.LengthMm(chord, radius), radius), 1e-12 * radius);
        });

    [Fact]
    public void Half_a_circle_bows_by_its_radius()
    {
        Assert.Equal(7, Arc.SagittaMm(14, 7));
        Near.Equal(7 * Math.PI, Arc.LengthMm(14, 7), 1e-12); // rounding
    }
}
