using System.Collections.Immutable;
using Coilwright.Core.Lies;
using CsCheck;

namespace Coilwright.Core.Tests.Lies;

public class LieTests
{
    private static readonly Gen<Lie> Lies = Gen.Select(Gen.Double[0.5, 30].Array[1, 60], Gen.Double[20, 300], Gen.Double[-180, 180])
        .Select((shares, turn, start) => new Lie([.. shares], turn, 30, start));

    // Second way: walk the shares one by one.
    [Fact]
    public void The_bead_at_a_place_is_the_one_whose_share_covers_it() =>
        Gen.Select(Lies, Gen.Double[-0.2, 1.2]).Sample((lie, share) =>
        {
            var place = share * lie.BeadedMm;
            int? walked = null;
            for (var i = 0; i < lie.Count; i++)
                if (place >= lie.StartsMm[i] && place < (i + 1 < lie.Count ? lie.StartsMm[i + 1] : lie.BeadedMm)) walked = i;
            return lie.BeadAt(place) == walked;
        });

    [Fact]
    public void Every_bead_lies_at_its_own_middle_and_start() =>
        Lies.Sample(lie => Enumerable.Range(0, lie.Count).All(i => lie.BeadAt(lie.MiddleMm(i)) == i && lie.BeadAt(lie.StartsMm[i]) == i));

    [Fact]
    public void What_lies_over_a_bead_is_about_a_turn_further_on() =>
        Gen.Select(Lies, Gen.Int[-2, 2]).Sample((lie, turns) =>
        {
            for (var i = 0; i < lie.Count; i++)
            {
                var place = lie.MiddleMm(i) + turns * lie.WirePerTurnMm;
                if (lie.BeadOver(i, turns) is { } over)
                {
                    if (Math.Abs(lie.MiddleMm(over) - place) > lie.SharesMm[over] / 2 + 1e-9) return false;
                }
                else if (place >= 0 && place < lie.BeadedMm) return false;
            }
            return true;
        });

    [Fact]
    public void Nothing_lies_before_the_start_or_after_the_end_or_nowhere()
    {
        var lie = new Lie(ImmutableArray.Create(5.0, 5), 20, 30, 180);
        Assert.Null(lie.BeadAt(-0.001));
        Assert.Null(lie.BeadAt(10));
        Assert.Null(lie.BeadAt(double.NaN));
        Assert.Null(lie.BeadOver(0, 1));
    }
}
