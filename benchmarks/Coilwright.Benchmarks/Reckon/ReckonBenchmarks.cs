using BenchmarkDotNet.Attributes;
using Coilwright.Benchmarks.Running;
using Coilwright.Core.Pieces;
using Coilwright.Core.Readings;
using Coilwright.Storage;

namespace Coilwright.Benchmarks.Reckon;

/// <summary>Does reckoning keep up with reading? A 200-bead piece of five turns, read from its file and reckoned with everything.</summary>
/// <remarks>Reading is what the program does: the file is opened, checked and bound, the order read. It lies in the system's cache. Program data is
/// read beforehand for both. The reckoning shares its work over the cores; reading does not.</remarks>
public class ReckonBenchmarks
{
    private readonly ReckoningData _data = GeneratedPieces.Data;
    private string _file = "";
    private Piece _piece = null!;

    [GlobalSetup]
    public void WriteFile()
    {
        _file = Path.GetTempFileName();
        if (PieceFile.WriteTo(_file, GeneratedPieces.OfFiveTurns(200)) is { } fault) throw new InvalidOperationException(fault.ToString());
        _piece = Read();
        if (_piece.Order.Count != 200) throw new InvalidOperationException("The piece does not have 200 beads.");
    }

    [GlobalCleanup]
    public void RemoveFile() => File.Delete(_file);

    [Benchmark(Baseline = true)]
    public Piece Read() => PieceFile.ReadFrom(_file, _data).Piece!;

    [Benchmark]
    public Reckoned Reckon() => Reckoning.Of(_piece, _data);
}

/// <summary>Reckoning against reading.</summary>
public static class ReckonClaim
{
    public static Claim Claim { get; } = new("reckon", "The whole reckoning of 200 beads takes at most 10 times as long as reading its own file.", rounds =>
    {
        var measured = Rounds.Of<ReckonBenchmarks>(rounds);
        return [new Verdict("reckon / read", measured.Ratio(nameof(ReckonBenchmarks.Reckon), nameof(ReckonBenchmarks.Read)), Promise.AtMost, 10)];
    });
}
