using System.Collections.Immutable;
using Coilwright.Core.Editing;
using Coilwright.Core.Pieces;
using Coilwright.Core.Readings;
using Coilwright.Core.Stringing;
using CsCheck;
using static Coilwright.Core.Tests.SamplePieces;

namespace Coilwright.Core.Tests.Readings;

public class OrderRuleTests
{
    private static readonly ImmutableArray<Core.Beads.Bead> Kinds = [Bead("a", "round", 6), Bead("b", "round", 6, colour: "#aa3355"), Bead("c", "round", 6, colour: "#33aa55")];

    private static Piece Strung(string letters, params OrderRule[] rules) =>
        Piece(Kinds, letters.Select(l => l - 'a')) with { Wishes = new Wishes { Rules = [.. rules] } };

    private static Notice? Told(string letters, OrderRule rule) =>
        Reckoning.Of(Strung(letters, rule), Data).Notices.SingleOrDefault(n => n.Code is NoticeCodes.RunTooLong or NoticeCodes.TooClose or NoticeCodes.NotApart
            or NoticeCodes.NotTogether or NoticeCodes.OtherEnd);

    [Fact]
    public void A_run_that_is_too_long_is_told_with_its_beads()
    {
        var told = Told("abbbacbbbbc", new OrderRule.LongestRun("b", 2))!;
        Assert.Equal(NoticeCodes.RunTooLong, told.Code);
        Assert.Equal((3, 2, 2, 4, 2), (told.Numbers["beads"], told.Numbers["most"], told.Numbers["firstBead"], told.Numbers["lastBead"], told.Numbers["times"]));
        Assert.Equal([1, 2, 3, 6, 7, 8, 9], told.Positions);
        Assert.Null(Told("abbbacbbbbc", new OrderRule.LongestRun("b", 4)));
    }

    [Fact]
    public void Too_many_close_together_are_told_with_their_beads()
    {
        var rule = new OrderRule.InAnyRow(["a", "b"], 2, 4);
        var told = Told("ccacbbcc", rule)!;
        Assert.Equal((NoticeCodes.TooClose, 3, 3, 6), (told.Code, told.Numbers["beads"], told.Numbers["firstBead"], told.Numbers["lastBead"]));
        Assert.Null(Told("ccaccbccbcc", rule));
    }

    [Fact]
    public void Kinds_that_should_be_apart_and_those_that_lack_a_neighbour_are_told()
    {
        Assert.Equal([1, 2], Told("cabc", new OrderRule.Apart("b", "a"))!.Positions);
        Assert.Equal([0, 1, 2], Told("aaacab", new OrderRule.Apart("a", "a"))!.Positions);
        Assert.Equal([3], Told("abcac", new OrderRule.Together("a", "b"))!.Positions);
        Assert.Null(Told("abcba", new OrderRule.Together("a", "b")));
    }

    [Fact]
    public void Another_bead_at_an_end_is_told()
    {
        Assert.Equal([0], Told("abc", new OrderRule.StartsWith("b"))!.Positions);
        Assert.Equal([2], Told("abc", new OrderRule.EndsWith("b"))!.Positions);
        Assert.Null(Told("abc", new OrderRule.StartsWith("a")));
    }

    [Fact]
    public void Groups_are_counted_whatever_stands_between_them()
    {
        ImmutableArray<GroupRun> groups = [new GroupRun("one", 0, 2), new GroupRun("one", 4, 2), new GroupRun("two", 8, 2)];
        var piece = Piece(Kinds, "abccabccbb".Select(l => l - 'a'), groups: groups);
        var broken = Assert.Single(RuleBreaks.Of(piece.Order, Kinds, [new OrderRule.Apart("one", "one"), new OrderRule.Apart("two", "two"), new OrderRule.LongestRun("one", 2)]));
        Assert.Equal(new OrderRule.Apart("one", "one"), broken.Rule);
        Assert.Equal([new Stretch(null, 0, 6)], broken.Places);
    }

    // The rules laid one by one, as the search does, and the whole order gone through, as the reckoning does, agree.
    [Fact]
    public void Watching_an_order_grow_says_what_going_through_the_whole_says() =>
        Gen.Select(Gen.Int[0, 2].Array[1, 9], AnyRule.Array[1, 3]).Sample((order, rules) =>
        {
            var whole = RuleBreaks.Keeps(new StringingOrder([.. order], []), Kinds, [.. rules]);
            var watch = new KindRules.Watch(new KindRules(["a", "b", "c"], rules));
            var kept = true;
            foreach (var kind in order) kept &= watch.Lay(kind);
            Assert.Equal(whole, kept && watch.IsWhole());
        }, iter: 20_000);

    // A piece that is closed, cut open anywhere, is that many pieces: the rules must hold however it is cut, when it is gone round twice.
    [Fact]
    public void In_a_closed_piece_rules_hold_across_the_join() =>
        Gen.Select(Gen.Int[0, 2].Array[4, 9], AnyRule.Where(r => r is not (OrderRule.StartsWith or OrderRule.EndsWith or OrderRule.InAnyRow { OfAny: > 4 }))).Sample((order, rule) =>
        {
            var watch = new KindRules.Watch(new KindRules(["a", "b", "c"], [rule])) { WrapsRound = true };
            var kept = true;
            foreach (var kind in order) kept &= watch.Lay(kind);
            int[] twice = [.. order, .. order];
            var broken = RuleBreaks.Of(new StringingOrder([.. twice], []), Kinds, [rule]).SelectMany(b => b.Places);
            // The two ends of the doubled row have no neighbour outside; only what begins within the first half, or lacks a neighbour inside, counts.
            var counts = rule is OrderRule.Together ? broken.Where(p => p.First > 0 && p.First < twice.Length - 1) : broken;
            Assert.Equal(!counts.Any(), kept && watch.IsWhole());
        }, iter: 20_000);

    [Fact]
    public void A_renamed_bead_keeps_its_rules_and_one_that_goes_takes_them_along()
    {
        var piece = Strung("abab", new OrderRule.LongestRun("a", 2), new OrderRule.InAnyRow(["c", "a"], 1, 2), new OrderRule.Apart("b", "c")) with
        {
            Wishes = new Wishes
            {
                Rules = [new OrderRule.LongestRun("a", 2), new OrderRule.InAnyRow(["c", "a"], 1, 2), new OrderRule.Apart("b", "c")],
                Free = new FreeToChange { StandIns = [new StandIn("c", "a", true)] },
            },
        };
        var renamed = ((EditOutcome.Done)PieceEditing.Apply(piece, new ChangeBead("a", Kinds[0].Description with { Id = "ash" }), Data)).Piece;
        Assert.Equal([new OrderRule.LongestRun("ash", 2), new OrderRule.InAnyRow(["c", "ash"], 1, 2), new OrderRule.Apart("b", "c")], renamed.Wishes.Rules);
        Assert.Equal([new StandIn("c", "ash", true)], renamed.Wishes.Free.StandIns);
        var without = ((EditOutcome.Done)PieceEditing.Apply(renamed, new RemoveBead("c"), Data)).Piece;
        Assert.Equal([new OrderRule.LongestRun("ash", 2), new OrderRule.InAnyRow(["ash"], 1, 2)], without.Wishes.Rules);
        Assert.Empty(without.Wishes.Free.StandIns);
    }

    private static readonly Gen<string> Letter = Gen.Int[0, 2].Select(i => "abc".Substring(i, 1));

    private static readonly Gen<OrderRule> AnyRule = Gen.OneOf<OrderRule>(
        from name in Letter from most in Gen.Int[1, 3] select (OrderRule)new OrderRule.LongestRun(name, most),
        from names in Letter.Array[1, 2] from upTo in Gen.Int[0, 2] from more in Gen.Int[1, 3] select (OrderRule)new OrderRule.InAnyRow([.. names], upTo, upTo + more),
        from name in Letter from beside in Letter select (OrderRule)new OrderRule.Apart(name, beside),
        from name in Letter from beside in Letter select (OrderRule)new OrderRule.Together(name, beside),
        from name in Letter select (OrderRule)new OrderRule.StartsWith(name),
        from name in Letter select (OrderRule)new OrderRule.EndsWith(name));
}
