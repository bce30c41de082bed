using Coilwright.Core.Geometry;

namespace Coilwright.Core.Tests.Geometry;

public class RingOfBallsTests
{
    private static readonly ReferenceTable Rings = ReferenceTable.Read("ring-of-balls.csv");

    [Fact]
    public void Circles_are_those_of_the_table()
    {
        foreach (var row in Rings.Rows)
        {
            // Half of the last printed digit.
            Near.Equal(row["centre_circumference_mm"], 2 * Math.PI * RingOfBalls.CentreRadiusMm(row["b_mm"], (int)row["n"]), 0.0005, row);
            Near.Equal(row["inner_circumference_mm"], RingOfBalls.InsideCircumferenceMm(row["b_mm"], (int)row["n"]), 0.0005, row);
        }
    }

    [Fact]
    public void Two_balls_touch_at_the_middle_and_one_makes_no_ring()
    {
        Assert.Equal(4, RingOfBalls.CentreRadiusMm(8, 2));
        Assert.Throws<ArgumentOutOfRangeException>(() => RingOfBalls.CentreRadiusMm(8, 1));
    }
}
