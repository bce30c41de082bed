using System.Collections.Immutable;
using System.Reflection;
using Coilwright.Core.Beads;
using Coilwright.Core.Cures;
using Coilwright.Core.Editing;
using Coilwright.Core.Findings;
using Coilwright.Core.Pieces;
using Coilwright.Core.Readings;
using Coilwright.Core.StringingMaterials.MemoryWire;

namespace Coilwright.Core.Tests.Cures;

/// <summary>For each notice its cure, tried by doing the edit and reckoning with the usual choices; or why it has none.</summary>
public class CureTests
{
    private static readonly ReckoningData Data = SamplePieces.Data with
    {
        Choices = SamplePieces.Choices with { Shuffles = 2, SpreadDraws = 2, CurveStepMm = 20 },
        Steels = ImmutableSortedDictionary<string, WireSteel>.Empty.Add(Steel.Key, Steel),
    };

    private static WireSteel Steel => SamplePieces.Stainless with { Strengths = [new StrengthBand(0, 3, 1600, 1800)] };

    private static readonly Bead Round8 = SamplePieces.Bead("round", "round", 8);
    private static readonly Bead Dot = SamplePieces.Bead("dot", "round", 3, role: Role.Spacer);
    private static readonly Bead Star = SamplePieces.Bead("star", "focal", 24, 16, 8, role: Role.Focal, with: d => d with { HoleOffsetMm = 2 });

    private static Piece Rounds(int beads = 94, double wrist = 165, double loop = 188.5) => SamplePieces.Piece([Round8, Dot], Enumerable.Repeat(0, beads), wrist, loop);

    private static Piece With(double tubeBore, double wireMm = 0.62) =>
        SamplePieces.Piece([Round8, SamplePieces.Bead("tube", "tube", 12, 4, bore: tubeBore)], Enumerable.Range(0, 60).Select(i => i % 4 == 1 ? 1 : 0)) is var p
            ? p with { Wire = p.Wire with { WireMm = wireMm } } : null!;

    // One piece for each notice that has a cure, and the kind of cure that is expected of it.
    private static IEnumerable<(string Notice, string Cure, Piece Piece)> Ill()
    {
        yield return (NoticeCodes.WireTooShort, CureCodes.CutAnew, Rounds() with { Wire = Rounds().Wire with { CutMm = 700 } });
        yield return (NoticeCodes.GapAtTheEnd, CureCodes.StringMore, Rounds(92) with { Wishes = new Wishes { Turns = 4 } });
        yield return (NoticeCodes.GapAtTheEnd, CureCodes.StringAgain, Rounds(80) with { Ends = Rounds().Ends with { OverlapMm = 0 }, Wishes = new Wishes { Turns = 4 } });
        yield return (NoticeCodes.OverlapOff, CureCodes.TakeOffRow, Rounds(100) with { Ends = Rounds().Ends with { OverlapMm = 2 } });
        yield return (NoticeCodes.OverlapOff, CureCodes.TakeOff, Rounds(100) is var over ? over with { Ends = over.Ends with { OverlapMm = Of(over).Fit.EndsOverlapMm - 8 } } : null!);
        yield return (NoticeCodes.OverlapOff, CureCodes.StringMore, Rounds(98) is var under ? under with { Ends = under.Ends with { OverlapMm = Of(under).Fit.EndsOverlapMm + 9 } } : null!);
        yield return (NoticeCodes.CoilTooSmall, CureCodes.LargerCoil, SamplePieces.Piece([SamplePieces.Bead("ball", "round", 36, bore: 8)], Enumerable.Repeat(0, 6), 70, 100));
        yield return (NoticeCodes.BeadWillNotPass, CureCodes.Ream, With(0.7));
        yield return (NoticeCodes.BeadPassesTightly, CureCodes.Ream, With(1.3));
        yield return (NoticeCodes.EndBeadSlidesOff, CureCodes.LargerEndLoop, EndBead(5));
        // The loop cannot be turned so wide on this wire: what is cut already would not do.
        yield return (NoticeCodes.EndBeadSlidesOff, CureCodes.MoveToEnd, EndBead(5) is var cut ? cut with { Wire = cut.Wire with { CutMm = Of(cut).Wire.BeadedMm + Of(cut).Wire.EndsMm + 1 } } : null!);
        yield return (NoticeCodes.LikeOverLike, CureCodes.StringMore, Twice());
        yield return (NoticeCodes.LikeOverLike, CureCodes.StringMoreEverywhere, Repeat(LiningUpWish.Mix, "24 (pair, stack, dot)"));
        yield return (NoticeCodes.ColumnsMissed, CureCodes.TakeOffEverywhere, Repeat(LiningUpWish.Columns, "22 (pair, stack, 2 dot)"));
        yield return (NoticeCodes.FocalOffTop, CureCodes.FocalOnTop, SamplePieces.Piece([Round8, Star], Enumerable.Range(0, 80).Select(i => i == 38 ? 1 : 0)));
        yield return (NoticeCodes.FewerTurns, CureCodes.StringAgain, Rounds(80) with { Wishes = new Wishes { Turns = 4 } });
        yield return (NoticeCodes.UnderOneTurn, CureCodes.StringAgain, Rounds(15));
        yield return (NoticeCodes.UnderOneTurn, CureCodes.StringAgain, Rounds(5));
        yield return (NoticeCodes.HangsLoose, CureCodes.SmallerCoil, Rounds(wrist: 140, loop: 230));
        yield return (NoticeCodes.StressNearStrength, CureCodes.LargerCoil, Rounds(wrist: 240, loop: 150) is var tight ? tight with { Wire = tight.Wire with { Steel = Steel, WireMm = 0.8 } } : null!);
    }

    private static Piece EndBead(double bore)
    {
        var wide = SamplePieces.Bead("wide", "round", 9, bore: bore);
        return SamplePieces.Piece([Round8, wide], Enumerable.Range(0, 94).Select(i => i == 93 ? 1 : 0));
    }

    private static readonly Bead Bar = SamplePieces.Bead("bar", "tube", 9, 3, bore: 1.6, role: Role.Connector);
    private static readonly Bead Disc = SamplePieces.Bead("disc", "rondelle", 3, 8, colour: "#884422");

    // Two groups and a filler by turns, written as a repeat, so that one edit can change every pass of it.
    private static Piece Repeat(LiningUpWish wish, string order) => Written(order + "\npair = 2 round\nstack = 4 disc") with { Wishes = new Wishes { LiningUp = wish } };

    // One group comes to lie over itself a turn later, with nothing but rounds and a bar between. The turn is known to 10 mm either way, so it takes bars.
    private static Piece Twice() => Written("stack = 4 disc\n6 round, stack, 11 round, bar, 10 round, stack, 20 round") with { Wishes = new Wishes { LiningUp = LiningUpWish.Mix } };

    private static Piece Written(string order) =>
        PieceEditing.Apply(SamplePieces.Piece([Round8, Dot, Disc, Bar], [0]), new SetOrderText(order), Data) is EditOutcome.Done done ? done.Piece
            : throw new InvalidOperationException(order);

    private static Reckoned Of(Piece piece) => Reckoning.Of(piece, Data);

    public static TheoryData<int> Cases => [.. Enumerable.Range(0, Ill().Count())];

    [Theory, MemberData(nameof(Cases))]
    public void What_is_proposed_ends_the_notice_stops_nothing_and_tells_what_it_brings(int which)
    {
        var (code, expected, piece) = Ill().ElementAt(which);
        var before = Of(piece);
        var notice = before.Notices.First(n => n.Code == code);
        var cure = CureFinder.Of(notice, piece, before, Data);
        Assert.NotNull(cure);
        Assert.Equal(expected, cure.Code);
        Assert.Contains(cure.Code, CureTable.Sought[code]);
        var done = Assert.IsType<EditOutcome.Done>(PieceEditing.Apply(piece, cure.Edit, Data));
        var after = Of(done.Piece);
        Assert.DoesNotContain(after.Notices, n => n.Code == code && n.BeadId == notice.BeadId);
        Assert.Empty(Stops(after).Except(Stops(before)));
        Assert.Equal(Warns(after).Except(Warns(before)), cure.Brings.Select(n => (n.Code, n.BeadId)).Distinct());

        static IEnumerable<(string, string?)> Stops(Reckoned r) => r.Notices.Where(n => n.Severity == Severity.Stop).Select(n => (n.Code, n.BeadId)).Distinct();
        static IEnumerable<(string, string?)> Warns(Reckoned r) => r.Notices.Where(n => n.Severity == Severity.Warn).Select(n => (n.Code, n.BeadId)).Distinct();
    }

    [Fact]
    public void Every_notice_has_cures_that_are_sought_or_a_reason_for_none_and_each_that_is_sought_is_found_somewhere()
    {
        var codes = typeof(NoticeCodes).GetFields(BindingFlags.Public | BindingFlags.Static).Select(f => (string)f.GetRawConstantValue()!).ToArray();
        Assert.Equal(codes.Order(StringComparer.Ordinal), CureTable.Sought.Keys.Concat(CureTable.None.Keys).Order(StringComparer.Ordinal));
        Assert.Equal(CureTable.Sought.Keys, Ill().Select(i => i.Notice).Distinct().Order(StringComparer.Ordinal));
        var cures = typeof(CureCodes).GetFields(BindingFlags.Public | BindingFlags.Static).Select(f => (string)f.GetRawConstantValue()!);
        Assert.Equal(cures.Order(StringComparer.Ordinal), CureTable.Sought.Values.SelectMany(c => c).Distinct().Order(StringComparer.Ordinal));
    }

    [Fact]
    public void A_wire_is_cut_anew_in_whole_quarters_of_a_loop_that_hold_beads_ends_and_grip()
    {
        var piece = Rounds() with { Wire = Rounds().Wire with { CutMm = 700 } };
        var before = Of(piece);
        var cure = CureFinder.Of(before.Notices.First(n => n.Code == NoticeCodes.WireTooShort), piece, before, Data)!;
        var (loops, cut) = (cure.Numbers["loops"], cure.Numbers["cutMm"]);
        Assert.Equal(loops, Math.Round(4 * loops) / 4);
        Assert.InRange(cut, loops * 188.5, loops * 188.5 + 1);
        Assert.InRange(cut - before.Notices.First(n => n.Code == NoticeCodes.WireTooShort).Numbers["neededMm"], 0, 188.5 / 4 + 1);
    }

    [Fact]
    public void A_larger_end_loop_forgets_the_practice_bend_of_the_smaller_one()
    {
        var piece = EndBead(5) is var p ? p with { Ends = p.Ends with { Finish = new WireEnd(EndFinish.TurnedLoop, 3) { MeasuredMm = 14 } } } : null!;
        var before = Of(piece);
        var cure = CureFinder.Of(before.Notices.First(n => n.Code == NoticeCodes.EndBeadSlidesOff), piece, before, Data)!;
        var finish = Assert.IsType<SetEnds>(cure.Edit).Ends.Finish;
        Assert.Null(finish.MeasuredMm);
        Assert.True(finish.OutsideMm(0.62) >= 5.1 - 1e-9);
    }

    [Fact]
    public void Nothing_is_proposed_where_only_a_measurement_tells()
    {
        var unknown = SamplePieces.Piece([Round8, SamplePieces.Bead("tube", "tube", 12, 4, bore: null)], Enumerable.Range(0, 60).Select(i => i % 4 == 1 ? 1 : 0));
        var before = Of(unknown);
        Assert.Null(CureFinder.Of(before.Notices.First(n => n.Code == NoticeCodes.BoreUnknown), unknown, before, Data));
    }

    [Fact]
    public void A_search_that_is_stopped_ends_so()
    {
        var piece = Repeat(LiningUpWish.Mix, "24 (pair, stack, dot)");
        var before = Of(piece);
        Assert.Throws<OperationCanceledException>(() => CureFinder.Of(before.Notices.First(n => n.Code == NoticeCodes.LikeOverLike), piece, before, Data,
            cancel: new CancellationToken(true)));
    }
}
