using System.Globalization;
using Coilwright.Benchmarks.Running;
using Coilwright.Core.Arrangement;

namespace Coilwright.Benchmarks.Ideas;

/// <summary>Tables against laying every bead, and how near to the best possible the ideas are known to be.</summary>
public static class IdeasClaim
{
    private const int Instances = 30;

    // The tables take the mean width of the beads, and so the wire of a turn, as it is: a spacer more moves it by a few thousandths of a millimetre.
    private const double Agreement = 1e-3;

    public static Claim Claim { get; } = new("ideas", "One gap changed costs at most a hundredth of laying every bead on 12 wrists; most of 30 pieces come to within 2 % of a bound.", Measure);

    private static Verdict[] Measure(int rounds)
    {
        if (new GapChangeBenchmarks().LargestDifference() is var off and > Agreement)
            throw new InvalidOperationException(FormattableString.Invariant($"The tables differ from laying every bead by {off}."));
        var near = 0;
        for (var i = 0; i < Instances; i++)
        {
            // From 4 gaps and 20 beads to 40 gaps and 400 beads.
            var (gaps, beads) = (4 + 36 * i / (Instances - 1), 20 + 380 * i / (Instances - 1));
            var problem = new OrderSpace(ClusterPieces.Of(gaps, beads, (ulong)i + 1), GeneratedPieces.Data).Problem;
            var found = new BestCounts(effort: 10, seed: 1).Find(problem)!;
            var gap = found.Loss > 0 ? found.GapToBound / found.Loss : 0;
            if (gap <= 0.02) near++;
            Console.WriteLine(string.Create(CultureInfo.InvariantCulture,
                $"{i + 1,2}  {gaps,2} gaps  10^{Math.Log10(problem.Ways),4:0.0} ways  as strung {problem.Loss(problem.Start.AsSpan()):0.0000}  best {found.Loss:0.0000}  bound {found.Bound:0.0000}  {(found.IsProven ? "proven" : gap.ToString("0.0%", CultureInfo.InvariantCulture))}"));
        }
        var measured = Rounds.Of<GapChangeBenchmarks>(rounds);
        return
        [
            new Verdict("every bead laid / looked up", measured.Ratio(nameof(GapChangeBenchmarks.EveryBeadLaid), nameof(GapChangeBenchmarks.LookedUp)), Promise.AtLeast, 100),
            new Verdict($"of {Instances} pieces, known to be within 2 % of the best there is", [near], Promise.AtLeast, 24),
        ];
    }
}
