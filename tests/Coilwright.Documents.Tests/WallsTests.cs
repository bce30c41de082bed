namespace Coilwright.Documents.Tests;

public class WallsTests
{
    [Fact]
    public void This_project_is_run() => Assert.Equal("Coilwright.Documents.Tests", typeof(WallsTests).Assembly.GetName().Name);
}
