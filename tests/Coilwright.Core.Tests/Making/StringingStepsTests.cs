using System.Collections.Immutable;
using Coilwright.Core.Making;
using Coilwright.Core.Stringing;
using CsCheck;

namespace Coilwright.Core.Tests.Making;

public class StringingStepsTests
{
    private static StringingOrder Order(string kinds, params GroupRun[] groups) => new([.. kinds.Select(k => k - 'A')], [.. groups]);

    // As a maker would note it: "wrack: 2A 1B | 3(1A 1C)".
    private static string[] Noted(StringingOrder order) => [.. StringingSteps.Of(order).Select(s =>
        (s.Group is null ? "" : s.Group + ": ") + (s.Times > 1 ? s.Times + " times " : "")
        + string.Join(", ", s.Parts.Select(p => p.Times > 1 ? $"{p.Times}({Runs(p)})" : Runs(p))))];

    private static string Runs(StepPart part) => string.Join(' ', part.Runs.Select(r => r.Count + ((char)('A' + r.Kind)).ToString()));

    [Fact]
    public void Beads_of_one_kind_are_said_once() => Assert.Equal(["3A, 1B, 2A"], Noted(Order("AAABAA")));

    [Fact]
    public void A_running_repeat_is_said_once() => Assert.Equal(["45(3A 1B)"], Noted(Order(string.Concat(Enumerable.Repeat("AAAB", 45)))));

    [Fact]
    public void What_comes_before_and_after_a_repeat_stands_by_itself() => Assert.Equal(["1C, 3(1A 1B), 1A, 1C"], Noted(Order("CABABABAC")));

    [Fact]
    public void Of_two_repeats_the_one_that_covers_more_is_said() => Assert.Equal(["2(1A 1B 1A 1B 1C)"], Noted(Order("ABABCABABC")));

    [Fact]
    public void Named_groups_are_steps_and_loose_beads_between_them_too() =>
        Assert.Equal(["1C", "wave: 1A, 1B", "2C", "crest: 3A"], Noted(Order("CABCCAAA", new("wave", 1, 2), new("crest", 5, 3))));

    [Fact]
    public void A_group_strung_several_times_on_end_is_one_step() =>
        Assert.Equal(["wave: 3 times 1A, 1B", "1C", "wave: 1A, 1B"], Noted(Order("ABABABCAB", new("wave", 0, 2), new("wave", 2, 2), new("wave", 4, 2), new("wave", 7, 2))));

    [Fact]
    public void A_group_that_differs_under_the_same_name_is_a_step_of_its_own() =>
        Assert.Equal(["wave: 1A, 1B", "wave: 1B, 1A"], Noted(Order("ABBA", new("wave", 0, 2), new("wave", 2, 2))));

    [Fact]
    public void Of_nested_groups_the_innermost_count() =>
        Assert.Equal(["1A", "eye: 1B", "1A"], Noted(Order("ABA", new("wave", 0, 3), new("eye", 1, 1))));

    [Fact]
    public void A_long_stretch_of_loose_beads_is_several_steps()
    {
        var steps = StringingSteps.Of(Order("ABCDEFGHIJKLMNOPQRST"));
        Assert.Equal([8, 8, 4], steps.Select(s => s.Parts.Length));
        Assert.Equal([0, 8, 16], steps.Select(s => s.First));
    }

    private static readonly Gen<StringingOrder> Orders = Gen.Select(Gen.Int[0, 3].Array[1, 60], Gen.Int[0, 59].Array[0, 8]).Select((kinds, cuts) =>
    {
        var bounds = cuts.Select(c => c % kinds.Length).Append(0).Append(kinds.Length).Distinct().Order().ToArray();
        var groups = ImmutableArray.CreateBuilder<GroupRun>();
        for (var i = 0; i + 1 < bounds.Length; i += 2) groups.Add(new GroupRun("g" + kinds[bounds[i]], bounds[i], bounds[i + 1] - bounds[i]));
        return new StringingOrder([.. kinds], groups.ToImmutable());
    });

    [Fact]
    public void Followed_to_the_letter_the_steps_string_the_order() => Orders.Sample(order =>
    {
        var strung = new List<int>();
        foreach (var step in StringingSteps.Of(order))
        {
            Assert.Equal(strung.Count, step.First);
            for (var t = 0; t < step.Times; t++)
                foreach (var part in step.Parts)
                    for (var u = 0; u < part.Times; u++)
                        foreach (var run in part.Runs) strung.AddRange(Enumerable.Repeat(run.Kind, run.Count));
            Assert.Equal(strung.Count, step.First + step.Beads);
        }
        Assert.Equal(order.Kinds, strung);
    });
}
