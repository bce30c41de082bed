namespace Coilwright.Storage.Tests;

public class WallsTests
{
    [Fact]
    public void This_project_is_run() => Assert.Equal("Coilwright.Storage.Tests", typeof(WallsTests).Assembly.GetName().Name);
}
