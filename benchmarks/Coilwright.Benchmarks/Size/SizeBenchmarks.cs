using BenchmarkDotNet.Attributes;
using Coilwright.Benchmarks.Running;
using Coilwright.Core.Pieces;
using Coilwright.Core.Readings;
using Coilwright.Core.Stringing.Notation;

namespace Coilwright.Benchmarks.Size;

/// <summary>Does the time grow with the beads and no faster? Times are per bead.</summary>
/// <remarks>Both pieces are on the same bracelet coil: the long one goes round it some three thousand times, which nobody wears, but every bead is as hard as in the
/// short one.</remarks>
[CategoriesColumn]
public class SizeBenchmarks
{
    private const int Few = 1_000, Many = 100_000;

    private readonly ReckoningData _data = GeneratedPieces.Data;
    private readonly string _fewText = GeneratedPieces.OrderText(Few), _manyText = GeneratedPieces.OrderText(Many);
    private readonly Piece _few = GeneratedPieces.OnABraceletCoil(Few), _many = GeneratedPieces.OnABraceletCoil(Many);

    [Benchmark(Baseline = true, OperationsPerInvoke = Few)]
    [BenchmarkCategory("order")]
    public ReadOrder OrderOf1000() => GeneratedPieces.Read(_fewText);

    [Benchmark(OperationsPerInvoke = Many)]
    [BenchmarkCategory("order")]
    public ReadOrder OrderOf100000() => GeneratedPieces.Read(_manyText);

    [Benchmark(Baseline = true, OperationsPerInvoke = Few)]
    [BenchmarkCategory("reckon")]
    public Reckoned Reckon1000() => Reckoning.Of(_few, _data);

    [Benchmark(OperationsPerInvoke = Many)]
    [BenchmarkCategory("reckon")]
    public Reckoned Reckon100000() => Reckoning.Of(_many, _data);
}

/// <summary>Time per bead of a huge piece against a large one.</summary>
public static class SizeClaim
{
    public static Claim Claim { get; } = new("size", "A bead of 100,000 takes at most twice as long as a bead of 1,000, in reading the order and in the whole reckoning.", rounds =>
    {
        var measured = Rounds.Of<SizeBenchmarks>(rounds);
        return
        [
            new Verdict("read the order, per bead, 100,000 / 1,000", measured.Ratio(nameof(SizeBenchmarks.OrderOf100000), nameof(SizeBenchmarks.OrderOf1000)), Promise.AtMost, 2),
            new Verdict("reckon, per bead, 100,000 / 1,000", measured.Ratio(nameof(SizeBenchmarks.Reckon100000), nameof(SizeBenchmarks.Reckon1000)), Promise.AtMost, 2),
        ];
    });
}
