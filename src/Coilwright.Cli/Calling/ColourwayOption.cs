using System.Collections.Immutable;
using System.CommandLine;
using Coilwright.Core.Editing;
using Coilwright.Core.Faults;
using Coilwright.Core.Pieces;
using Coilwright.Storage;
using Coilwright.Wording;

namespace Coilwright.Cli.Calling;

/// <summary>The option of colourways: piece files of the same order, as often as there are some.</summary>
internal static class ColourwayOption
{
    public static Option<string[]> Make(Language language) => new("--colourway") { Description = language.Help.PatternColourway, HelpName = "PIECE" };

    /// <summary>Reads them; the faults, and the file that they are of, where one cannot be read or is of another order than the piece.</summary>
    public static (ImmutableArray<Piece> Pieces, ImmutableArray<Fault> Faults, string? File) Read(string path, string[] files)
    {
        if (files.Length == 0) return ([], [], null);
        var data = DataFiles.LoadDefault();
        if (data.Data is not { } known) return ([], [.. data.Faults], null);
        var read = PieceFile.ReadFrom(path, known);
        if (read.Piece is not { } piece) return ([], [.. read.Faults], path);
        var pieces = ImmutableArray.CreateBuilder<Piece>();
        foreach (var file in files)
        {
            var other = PieceFile.ReadFrom(file, known);
            if (other.Piece is not { } colourway) return ([], [.. other.Faults], file);
            if (!Colourway.Is(colourway, piece)) return ([], [Fault.Of(FaultCodes.ColourwayOther, "order", colourway.Title)], file);
            pieces.Add(colourway);
        }
        return (pieces.ToImmutable(), [], null);
    }
}
