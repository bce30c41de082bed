using Coilwright.Core.Geometry;

namespace Coilwright.Core.Tests.Geometry;

public class PointTests
{
    [Fact]
    public void A_point_is_written_as_its_three_numbers() => Assert.Equal("(1, -2.5, 0)", new Point3(1, -2.5, 0).ToString());
}
