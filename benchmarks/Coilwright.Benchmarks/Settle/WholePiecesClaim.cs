using System.Diagnostics;
using System.Globalization;
using Coilwright.Benchmarks.Running;
using Coilwright.Core.Beads;
using Coilwright.Core.Findings;
using Coilwright.Core.Pieces;
using Coilwright.Core.Settle;
using Coilwright.Core.StringingMaterials.MemoryWire;

namespace Coilwright.Benchmarks.Settle;

/// <summary>How a whole piece sits, from the order to every answer: how that grows, and what it takes after an edit.</summary>
/// <remarks>Invented pieces. Minutes long, so it is not among all.</remarks>
public static class WholePiecesClaim
{
    public static Claim Claim { get; } = new("sits", "How whole pieces sit: 41 to 2,000 beads, and after an edit. Takes minutes.", Measure);

    private static Verdict[] Measure(int rounds)
    {
        List<double> grown = [], recoloured = [], exchanged = [];
        Took("warming up", WithFocal());
        for (var round = 0; round < rounds; round++)
        {
            Took("41 beads with a focal, six ways of the arm", WithFocal());
            Took("80 of many kinds", GeneratedPieces.OnABraceletCoil(80));
            var many = GeneratedPieces.OnABraceletCoil(160);
            var anew = Took("160 of many kinds", many);
            var few = Took("200 rondelles", Strung("rondelle", 5, 8, 200));
            grown.Add(Took("650 rondelles", Strung("rondelle", 5, 8, 650)) / 650 / (few / 200));
            recoloured.Add(Compared(many, many with { Title = "Another", Beads = [.. many.Beads.Select(b => b.WithColours([]))] }) / anew);
            var kinds = many.Order.Kinds;
            exchanged.Add(Took("160 of many kinds, one exchanged", many with { Order = new([.. kinds.Take(80), (kinds[80] + 1) % many.Beads.Length, .. kinds.Skip(81)], []) }) / anew);
        }
        Took("2,000 seed beads, once", Strung("seed-bead", 3, 4, 2000));
        return
        [
            new Verdict("time for each bead, 650 rondelles / 200", grown, Promise.AtMost, null),
            new Verdict("after an edit that settling does not look at / anew, 160 of many kinds", recoloured, Promise.AtMost, 1.0 / 3),
            new Verdict("after one bead is exchanged / anew, 160 of many kinds", exchanged, Promise.AtMost, 1.0 / 3),
        ];
    }

    private static double Took(string what, Piece piece)
    {
        var clock = Stopwatch.StartNew();
        var settled = Settling.Of(piece, GeneratedPieces.Data.Choices, new SettleRequest(165));
        var took = clock.Elapsed.TotalSeconds;
        Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{what}: {took:0.00} s, {settled.Outcome} {settled.Reason}, {string.Join(" + ", settled.StageSteps)} steps, {settled.Worn?.Turns:0.0} turns"));
        return took;
    }

    // That both sit alike is all that is asked before an answer is given again.
    private static double Compared(Piece one, Piece other)
    {
        var clock = Stopwatch.StartNew();
        if (!SitAlike.Are(one, other)) throw new InvalidOperationException("They do not sit alike.");
        return clock.Elapsed.TotalSeconds;
    }

    private static Piece WithFocal() => Of([Kind("rondelle", 5, 8), Kind("focal", 20, 25, d => d with { ThicknessMm = 8, HoleOffsetMm = 2.5, Role = Role.Focal })], Enumerable.Range(0, 41).Select(i => i == 20 ? 1 : 0));

    private static Piece Strung(string shape, double lengthMm, double widthMm, int beads) => Of([Kind(shape, lengthMm, widthMm)], Enumerable.Repeat(0, beads));

    private static Piece Of(Bead[] kinds, IEnumerable<int> order) => new()
    {
        Title = "A whole piece",
        Beads = [.. kinds],
        Wire = new CoilWire(0.62, CoilDatum.MeasuredLoop, 188.5, GeneratedPieces.Data.Steels["stainless-302"]),
        Ends = new WireEnds(new WireEnd(EndFinish.TurnedLoop, 3), new WireEnd(EndFinish.TurnedLoop, 3), 20, 0),
        Wearer = new Wearer(165, 0),
        Order = new([.. order], []),
    };

    private static Bead Kind(string shape, double lengthMm, double widthMm, Func<BeadDescription, BeadDescription>? with = null)
    {
        var description = new BeadDescription { Id = shape, Shape = shape, Length = new BeadLength.Nominal(lengthMm), WidthMm = widthMm, BoreMm = 1, DensityGPerCm3 = 2.5, Role = Role.Main };
        return Bead.TryMake(with is null ? description : with(description), out var bead, out var faults) ? bead! : throw new InvalidOperationException(string.Join("; ", faults));
    }
}
