using Coilwright.Core.Alignment;
using Coilwright.Core.Pieces;
using CsCheck;

namespace Coilwright.Core.Tests.Alignment;

/// <summary>Every reading of lining up against brute force over random pieces.</summary>
public class LiningUpAgainstLatticeTests
{
    // No shuffles: the rank has its own test.
    private static readonly ReckoningChoices Choices = SamplePieces.Choices with { Shuffles = 1 };

    private static readonly Gen<LatticePiece> Pieces = Gen.OneOf(LatticePieces.Any(focals: false, places: false),
        LatticePieces.Any(focals: true, places: false), LatticePieces.Any(focals: false, places: true), LatticePieces.Any(focals: true, places: true));

    private static (LiningUpReport, LatticeLiningUp) Both(LatticePiece p) =>
        (new LiningUpModel(p.Piece, Choices).Measure(p.Lie, p.PitchMm, p.AveragingMm, 1), p.SecondWay(Choices));

    [Fact]
    public void What_lies_over_anything_and_what_is_hidden_is_what_brute_force_counts() => Pieces.Sample(p =>
    {
        var (report, second) = Both(p);
        Near.Equal(second.ByBead().Over, report.OverMm, second.SlackMm, p);
        Near.Equal(second.HiddenMm, report.HiddenMm, second.SlackMm, p);
    }, iter: 200);

    [Fact]
    public void Share_by_bead_is_what_brute_force_counts() => Pieces.Sample(p =>
    {
        var (report, second) = Both(p);
        var (over, weighted, same) = second.ByBead();
        Ratio(weighted, over, report.Share, second, p);
        Ratio(same, over, report.StrictShare, second, p);
        if (report.Share is { } share && report.Chance > 0) Near.Equal(share / report.Chance.Value, report.Relative!.Value, 1e-12, p); // rounding
    }, iter: 200);

    [Fact]
    public void Averaged_by_bead_is_what_brute_force_averages() => Pieces.Sample(p =>
    {
        var (report, second) = Both(p);
        var mean = second.Averaged(p.AveragingMm, off =>
        {
            var (over, weighted, _) = second.ByBead(off);
            return [over, weighted];
        });
        Ratio(mean[1], mean[0], report.RelativeAveraged * report.Chance, second, p, chanceNought: report.Chance == 0);
    }, iter: 150);

    [Fact]
    public void Kind_over_kind_is_what_brute_force_counts() => Pieces.Sample(p =>
    {
        var (report, second) = Both(p);
        var kinds = second.ByKind();
        foreach (var kind in report.Kinds)
        {
            var (over, own) = kinds[p.Piece.Beads.IndexOf(p.Piece.Beads.Single(b => b.Id == kind.BeadId))];
            Near.Equal(over, kind.OverMm, second.SlackMm, p);
            Near.Equal(own, kind.OverOwnMm, second.SlackMm, p);
        }
    }, iter: 200);

    [Fact]
    public void Headline_exactly_at_T_is_what_brute_force_counts() => Pieces.Sample(p =>
    {
        var (report, second) = Both(p);
        var (own, over, any) = second.ByGroup();
        Cover(own.Sum(), over.Sum(), any, second.SeenByWish().Sum(), report.CoverExact, p, second);
    }, iter: 200);

    [Fact]
    public void Headline_averaged_and_by_wish_is_what_brute_force_averages() => Pieces.Sample(p =>
    {
        var (report, second) = Both(p);
        var mean = second.Averaged(p.AveragingMm, off =>
        {
            var (own, over, any) = second.ByGroup(off);
            return [.. own, .. over, any];
        });
        var seen = second.SeenByWish();
        Cover(mean[..3].Sum(), mean[3..6].Sum(), mean[6], seen.Sum(), report.Cover, p, second);
        foreach (var (wish, cover) in new[] { (LiningUpWish.Mix, report.MixCover), (LiningUpWish.Columns, report.ColumnsCover) })
            Cover(mean[(int)wish], mean[3 + (int)wish], mean[6], seen[(int)wish], cover, p, second);
        Assert.Equal(report.MixCover >= Choices.LinesUpFrom, report.FailsMix);
        Assert.Equal(report.ColumnsCover < Choices.LinesUpFrom, report.FailsColumns);
        Assert.Equal(report.FailsMix || report.FailsColumns, report.FailsWish);
        Assert.Equal(report.Cover switch
        {
            null => LiningUpWord.TooLittle,
            >= 0.30 => LiningUpWord.LinesUp,
            <= 0.20 => LiningUpWord.Mixed,
            _ => LiningUpWord.Between,
        }, report.Word);
    }, iter: 150);

    [Fact]
    public void Pairs_are_those_that_brute_force_finds() => Pieces.Sample(p =>
    {
        var (report, second) = Both(p);
        var pairs = second.Pairs().ToDictionary(x => (second.Runs[x.Key.A].First, second.Runs[x.Key.B].First));
        var lie = p.Lie;
        // A pair shorter than the slack may be seen by the one way and not by the other.
        var named = report.Pairs.Select(x => (x.FirstA, x.FirstB)).ToHashSet();
        Assert.All(pairs.Where(x => x.Value.Value.Length > second.SlackMm), x => Assert.Contains(x.Key, named));
        Assert.All(report.Pairs.Where(x => x.OverlapMm > second.SlackMm), x => Assert.Contains((x.FirstA, x.FirstB), pairs.Keys));
        // Nearest to square first, as far as a millionth of a millimetre tells them apart.
        var squarest = report.Pairs.Select(x => Math.Round(Math.Abs(x.OffSquareMm), 6)).ToArray();
        Assert.Equal(squarest.Order(), squarest);
        foreach (var pair in report.Pairs)
        {
            if (!pairs.TryGetValue((pair.FirstA, pair.FirstB), out var found)) continue;
            var (a, b) = (second.Runs[found.Key.A], second.Runs[found.Key.B]);
            Assert.Equal((a.Name, a.Count, b.Count), (pair.Name, pair.CountA, pair.CountB));
            Near.Equal(found.Value.Length, pair.OverlapMm, second.SlackMm, p);
            double Middle(Core.Stringing.GroupRun g) => lie.SharesMm.Take(g.First).Sum() + lie.SharesMm.Skip(g.First).Take(g.Count).Sum() / 2;
            var off = a == b ? 0 : Middle(b) - Middle(a) - lie.WirePerTurnMm;
            Near.Equal(off, pair.OffSquareMm, 1e-9, p); // rounding
            var middle = (found.Value.From + found.Value.To) / 2;
            Near.Equal(0, Math.IEEERemainder(pair.AngleDeg - (lie.StartAngleDeg + 360 * middle / lie.WirePerTurnMm), 360), 1e-6, p); // rounding, in degrees
            Near.Equal(found.Value.From, pair.OverlapFromMm, 1e-9, p); // rounding
            Near.Equal(found.Value.To, pair.OverlapToMm, 1e-9, p); // rounding
            if (a == b) continue;
            // The turns where they meet. The lattice tells the middle of the overlap to half a step, and one on the seam may be told of either turn.
            int Turn(double place) => 1 + (int)Math.Floor(place / lie.WirePerTurnMm);
            Assert.InRange(pair.TurnB, Turn(middle - p.StepMm), Turn(middle + p.StepMm));
            Assert.Equal(pair.TurnB - 1, pair.TurnA);
        }
    }, iter: 200);

    [Fact]
    public void The_glance_of_the_curve_is_what_the_report_says() => Pieces.Sample(p =>
    {
        var model = new LiningUpModel(p.Piece, Choices);
        var report = model.Measure(p.Lie, p.PitchMm, p.AveragingMm, 1);
        Assert.Equal(new LiningUpGlance(report.Cover, report.CoverExact, report.RelativeAveraged, report.FailsMix, report.FailsColumns),
            model.Glance(p.Lie, p.PitchMm, p.AveragingMm) with { AgainstWish = null });
    }, iter: 200);

    [Fact]
    public void A_draw_of_the_mean_lengths_says_what_the_report_says_exactly_at_T() => Pieces.Sample(p =>
    {
        var model = new LiningUpModel(p.Piece, Choices);
        var report = model.Measure(p.Lie, p.PitchMm, p.AveragingMm, 1);
        var draw = model.DrawnFrom(p.Lie, p.PitchMm);
        p.Lie.SharesMm.CopyTo(draw.Shares);
        for (var i = 0; i < p.Lie.Count; i++) draw.EndsMm[i] = p.Lie.StartsMm[i] + p.Lie.SharesMm[i];
        var (cover, relative) = draw.At(p.Lie.WirePerTurnMm);
        Assert.Equal((report.CoverExact is null, report.Relative is null), (cover is null, relative is null));
        // The same sums in another order: rounding.
        if (cover is { } c) Near.Equal(report.CoverExact!.Value, c, 1e-9, p);
        if (relative is { } r) Near.Equal(report.Relative!.Value, r, 1e-9, p);
    }, iter: 300);

    // Two lengths each off by the slack move their ratio by at most twice the slack over the length.
    private static void Ratio(double part, double over, double? actual, LatticeLiningUp second, LatticePiece p, bool chanceNought = false)
    {
        var least = Choices.LeastOverShare * p.Lie.WirePerTurnMm;
        if (Math.Abs(over - least) <= second.SlackMm || chanceNought) return;
        Assert.Equal(over < least, actual is null);
        if (actual is { } ratio) Near.Equal(part / over, ratio, 2 * second.SlackMm / over, p);
    }

    private static void Cover(double own, double over, double any, double seen, double? actual, LatticePiece p, LatticeLiningUp second)
    {
        var (turn, slack) = (p.Lie.WirePerTurnMm, second.SlackMm);
        var leastGroups = Choices.LeastOverShare * Math.Min(turn, seen);
        if (Math.Abs(any - Choices.LeastOverShare * turn) <= slack || Math.Abs(over - leastGroups) <= 2 * slack) return;
        Assert.Equal(any < Choices.LeastOverShare * turn || over < leastGroups, actual is null);
        if (actual is { } cover) Near.Equal(own / over, cover, 2 * slack / over, p);
    }
}
