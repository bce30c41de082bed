using System.Collections;
using System.Reflection;
using Coilwright.Core.Alignment;
using Coilwright.Core.Beads;
using Coilwright.Core.Pieces;
using Coilwright.Core.Readings;
using Coilwright.Core.Stringing;
using Coilwright.Core.StringingMaterials.MemoryWire;
using Coilwright.Core.Tests.Alignment;
using CsCheck;

namespace Coilwright.Core.Tests.Readings;

/// <summary>Pieces at the edges of what a file may hold: every one is reckoned, and every number is a number.</summary>
public class OddPiecesTests
{
    private static readonly ReckoningData Quick = SamplePieces.Data with { Choices = SamplePieces.Choices with { Shuffles = 3, SpreadDraws = 3, CurveStepMm = 20 } };

    private static Gen<Piece> Any =>
        from order in Gen.Int[0, LatticePieces.Kinds.Length - 1].Array[1, 40]
        from scale in Gen.Double[0.2, 5]
        from wrist in Gen.Double[Wearer.LeastWristMm, Wearer.MostWristMm]
        from loop in Gen.Double[30, 630]
        from turns in Gen.Double[0.5, 6]
        from overlap in Gen.Double[-100, 500]
        from wish in Gen.Enum<LiningUpWish>()
        from grouped in Gen.Bool
        select SamplePieces.Piece([.. LatticePieces.Kinds.Select(k => Scaled(k, scale))], order, wrist, loop, grouped ? [new GroupRun("all", 0, order.Length)] : []) with
        {
            Ends = SamplePieces.Piece(LatticePieces.Kinds, [0]).Ends with { OverlapMm = overlap },
            Wishes = new Wishes { LiningUp = wish, Turns = turns, Places = [new PlaceWish(170, -170, LiningUpWish.Columns)] },
        };

    private static Bead Scaled(Bead bead, double by)
    {
        var d = bead.Description;
        var scaled = d with
        {
            Length = new BeadLength.Range(0.6 * by * bead.LengthMm, 1.4 * by * bead.LengthMm),
            WidthMm = bead.WidthMm * by,
            ThicknessMm = bead.ThicknessMm * by,
            BoreMm = null,
            HoleOffsetMm = d.HoleOffsetMm * by,
            Seat = d.Seat is { } seat ? new Seat(seat.LengthMm * by, seat.ClearMm * by) : null,
        };
        return Bead.TryMake(scaled, out var made, out var faults) ? made! : throw new InvalidOperationException(string.Join("; ", faults));
    }

    [Fact]
    public void Every_number_of_every_reading_is_a_number() => Any.Sample(piece => Finite(Reckoning.Of(piece, Quick), "reckoned", []), iter: 300);

    [Fact]
    public void One_bead_is_reckoned_and_says_that_nothing_lies_over_anything()
    {
        var r = Reckoning.Of(SamplePieces.Piece(LatticePieces.Kinds, [0]), Quick);
        Finite(r, "reckoned", []);
        Assert.Equal(LiningUpWord.TooLittle, r.LiningUp.Word);
        foreach (var reading in new[] { "cover", "coverExact", "share", "relative", "rank", "strictShare", "strictRelative" })
            Assert.Equal("nothing-over", r.LiningUp.WhyNull[reading]);
        Assert.Null(r.Repeat);
        Assert.Null(r.Wrists.FromMm);
        Assert.Contains(r.Notices, n => n.Code == NoticeCodes.UnderOneTurn);
    }

    [Fact]
    public void Two_beads_are_a_repeat_if_they_are_alike()
    {
        Assert.Equal(1, Reckoning.Of(SamplePieces.Piece(LatticePieces.Kinds, [0, 0]), Quick).Repeat!.Beads);
        Assert.Null(Reckoning.Of(SamplePieces.Piece(LatticePieces.Kinds, [0, 1]), Quick).Repeat);
    }

    [Fact]
    public void A_piece_of_one_kind_lies_over_itself_and_nobody_is_told_so_who_did_not_ask()
    {
        var piece = SamplePieces.Piece(LatticePieces.Kinds, Enumerable.Repeat(0, 90));
        var r = Reckoning.Of(piece, Quick);
        Near.Equal(1, r.LiningUp.Cover!.Value, 1e-12);
        Assert.DoesNotContain(r.Notices, n => n.Code == NoticeCodes.LikeOverLike);
        // Who wants a mix is told, and of the one run that lies over itself.
        var mixed = Reckoning.Of(piece with { Wishes = new Wishes { LiningUp = LiningUpWish.Mix } }, Quick);
        var notice = Assert.Single(mixed.Notices, n => n.Code == NoticeCodes.LikeOverLike);
        Assert.Equal(0, notice.Numbers["offSquareMm"]);
        Assert.Equal(1, notice.Numbers["nextTurn"] - notice.Numbers["turn"]);
        Near.Equal(mixed.Lie.BeadedMm - mixed.Worn.WirePerTurnMm, notice.Numbers["overlapMm"], 1e-9);
        Assert.Equal(Enumerable.Range(0, 90), notice.Positions);
    }

    [Fact]
    public void A_piece_of_spacers_has_no_groups_to_judge_by()
    {
        var r = Reckoning.Of(SamplePieces.Piece(LatticePieces.Kinds, Enumerable.Repeat(3, 400)), Quick);
        Assert.Equal("no-groups", r.LiningUp.WhyNull["cover"]);
        Assert.Equal(LiningUpWord.TooLittle, r.LiningUp.Word);
        Assert.NotNull(r.LiningUp.Share);
    }

    [Fact]
    public void Groups_on_the_last_turn_alone_lie_over_nothing()
    {
        var r = Reckoning.Of(SamplePieces.Piece(LatticePieces.Kinds, Enumerable.Range(0, 60).Select(i => i % 3 == 0 ? 1 : 0), groups: [new GroupRun("end", 50, 8)]), Quick);
        Assert.Equal("no-group-over", r.LiningUp.WhyNull["cover"]);
    }

    [Fact]
    public void A_focal_at_the_very_start_hides_nothing_before_the_wire()
    {
        var order = Enumerable.Repeat(0, 60).ToArray();
        order[0] = 6;
        var r = Reckoning.Of(SamplePieces.Piece(LatticePieces.Kinds, order), Quick);
        var star = LatticePieces.Kinds[6];
        var half = r.Worn.RadiusMm * Math.Atan(13 / (r.Worn.RadiusMm + 2.5));
        // Hidden on its far side alone, from the end of its share on.
        Near.Equal(half - r.Lie.SharesMm[0] / 2, r.LiningUp.HiddenMm, 1e-9, star);
    }

    [Fact]
    public void A_coil_smaller_than_the_wrist_opens_and_one_larger_stays()
    {
        var small = Reckoning.Of(SamplePieces.Piece(LatticePieces.Kinds, Enumerable.Repeat(0, 60), 165, 120), Quick);
        Near.Equal(165 + 8 * Math.PI, small.Worn.CircumferenceMm, 1e-9);
        Assert.True(small.Worn.RoomMm < 0);
        Assert.True(small.Fit.TurnsRelaxed > small.Fit.TurnsWorn);
        Assert.Equal(220, Reckoning.Of(SamplePieces.Piece(LatticePieces.Kinds, Enumerable.Repeat(0, 60), 165, 220), Quick).Worn.CircumferenceMm, 9);
    }

    [Theory]
    [InlineData(60)]
    [InlineData(400)]
    public void A_wrist_far_outside_the_curve_is_reckoned(double wrist) =>
        Finite(Reckoning.Of(SamplePieces.Piece(LatticePieces.Kinds, Enumerable.Range(0, 90).Select(i => i % 3), wrist), Quick), "reckoned", []);

    private static void Finite(object? value, string path, HashSet<object> seen)
    {
        switch (value)
        {
            case double number:
                Assert.True(double.IsFinite(number), $"{path} is {number}");
                return;
            case null or string or Enum or Bead or Piece or BeadDescription or CoilWire:
                return;
            case IEnumerable many:
                if (value.GetType() is { IsGenericType: true } type && type.GetProperty("IsDefault")?.GetValue(value) is true) return;
                var index = 0;
                foreach (var item in many) Finite(item, $"{path}[{index++}]", seen);
                return;
        }
        if (value.GetType().IsPrimitive || (!value.GetType().IsValueType && !seen.Add(value))) return;
        foreach (var property in value.GetType().GetProperties(BindingFlags.Public | BindingFlags.Instance))
            if (property.GetIndexParameters().Length == 0) Finite(property.GetValue(value), $"{path}.{property.Name}", seen);
        foreach (var field in value.GetType().GetFields(BindingFlags.Public | BindingFlags.Instance))
            Finite(field.GetValue(value), $"{path}.{field.Name}", seen);
    }
}
