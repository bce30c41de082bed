using Coilwright.Core.Pieces;
using Coilwright.Storage;

namespace Coilwright.Web.Tests.Components;

/// <summary>The program's own data and examples, as they lie beside the tests.</summary>
internal static class Examples
{
    public static ReckoningData Data { get; } = DataFiles.LoadDefault().Data!;

    public static Piece Boardwalk => Read("boardwalk");

    public static Piece Tidewrack => Read("tidewrack");

    public static Piece PuddleHop => Read("puddle-hop");

    private static Piece Read(string name) =>
        PieceFile.ReadFrom(Path.Combine(AppContext.BaseDirectory, "examples", name + ".piece.json"), Data).Piece!;
}
