namespace Coilwright.Core.Tests;

public class WallsTests
{
    [Fact]
    public void This_project_is_run() => Assert.Equal("Coilwright.Core.Tests", typeof(WallsTests).Assembly.GetName().Name);
}
