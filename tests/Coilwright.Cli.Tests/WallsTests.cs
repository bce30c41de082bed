namespace Coilwright.Cli.Tests;

public class WallsTests
{
    [Fact]
    public void This_project_is_run() => Assert.Equal("Coilwright.Cli.Tests", typeof(WallsTests).Assembly.GetName().Name);
}
