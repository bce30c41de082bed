using System.Text;
using Coilwright.Core.Faults;
using Coilwright.Core.Pieces;

namespace Coilwright.Storage.Tests;

/// <summary>The program's own data, and the folders of the repository that the tests read.</summary>
internal static class TestData
{
    public static ReckoningData Data { get; } = Loaded();

    /// <summary>The repository: the folder above the tests that holds the solution.</summary>
    public static string Root { get; } = FindRoot();

    public static string Examples => Path.Combine(Root, "examples");

    public static IEnumerable<string> ExampleFiles => Directory.GetFiles(Examples, "*.piece.json").Order(StringComparer.Ordinal);

    public static PieceReadResult Read(string json) => PieceFile.Read(Encoding.UTF8.GetBytes(json), "test.piece.json", Data);

    /// <summary>The only fault of a text that has one.</summary>
    public static Fault OnlyFault(string json)
    {
        var read = Read(json);
        Assert.Null(read.Piece);
        return Assert.Single(read.Faults);
    }

    private static ReckoningData Loaded()
    {
        var read = DataFiles.LoadDefault();
        Assert.Empty(read.Faults);
        return read.Data!;
    }

    private static string FindRoot()
    {
        var at = new DirectoryInfo(AppContext.BaseDirectory);
        while (!File.Exists(Path.Combine(at.FullName, "Coilwright.slnx"))) at = at.Parent!;
        return at.FullName;
    }
}
