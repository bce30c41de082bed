using Coilwright.Core.Beads;
using Coilwright.Core.Pieces;
using Coilwright.Core.Settle;

namespace Coilwright.Core.Tests.Settle;

/// <summary>Which changes of a piece leave how it sits as it was.</summary>
public class SitAlikeTests
{
    private static Bead Rondelle(Func<BeadDescription, BeadDescription>? with = null) => SamplePieces.Bead("rondelle", "rondelle", 5, 8, colour: "#2e8b8b", with: with);

    private static Bead Stone(Func<BeadDescription, BeadDescription>? with = null) => SamplePieces.Bead("stone", "focal", 20, 25, 8, role: Role.Focal, with: d => (with ?? (x => x))(d with { HoleOffsetMm = 2.5 }));

    private static Piece With(Bead rondelle, Bead stone) => SamplePieces.Piece([rondelle, stone], Enumerable.Range(0, 41).Select(i => i == 20 ? 1 : 0));

    private static Piece Plain => With(Rondelle(), Stone());

    [Fact]
    public void Colour_name_price_pack_and_title_leave_it_as_it_sat_to_the_last_bit()
    {
        var other = With(Rondelle(d => d with { Colours = [], Name = "Sea glass", Price = 0.4m, Pack = new Pack("strand", 40), Lot = "B7", Coating = "matte", Aliases = ["r"] }), Stone(d => d with { Shows = 0.5 })) with { Title = "Another" };
        Assert.True(SitAlike.Are(Plain, other));
        Settled Of(Piece piece) => Settling.Of(piece, SamplePieces.Choices, new SettleRequest(165), TestContext.Current.CancellationToken);
        var (one, two) = (Of(Plain), Of(other));
        Assert.Equal(one.Beads.AsSpan(), two.Beads.AsSpan());
        Assert.Equal(one.FocalStands.AsSpan(), two.FocalStands.AsSpan());
        Assert.Equal((one.ResidualN, one.Worn, one.Relaxed, one.StressMPa), (two.ResidualN, two.Worn, two.Relaxed, two.StressMPa));
    }

    // A material that is lighter is a lighter bead; the same mass by another material is not.
    [Fact]
    public void A_bead_counts_by_its_mass_whatever_gives_it()
    {
        Assert.False(SitAlike.Are(Plain, With(Rondelle(d => d with { DensityGPerCm3 = 1.2 }), Stone())));
        var mass = Rondelle().MassG!.Value;
        Assert.True(SitAlike.Are(Plain, With(Rondelle(d => d with { DensityGPerCm3 = 1.2, MassG = mass }), Stone())));
    }

    public static TheoryData<string, Func<Piece, Piece>> WhatCounts => new()
    {
        { "a longer bead", _ => With(Rondelle(d => d with { Length = new BeadLength.Nominal(5.1) }), Stone()) },
        { "a hole elsewhere", _ => With(Rondelle(), Stone(d => d with { HoleOffsetMm = 2.4 })) },
        { "another role", _ => With(Rondelle(), Stone(d => d with { Role = Role.Main })) },
        { "thicker wire", p => p with { Wire = p.Wire with { WireMm = 0.64 } } },
        { "a smaller coil", p => p with { Wire = p.Wire with { SizeMm = 180 } } },
        { "another start", p => p with { Wearer = p.Wearer with { StartAngleDeg = 90 } } },
        { "a measured row", p => p with { MeasuredRows = [new MeasuredRow(1, 10, 50.5)] } },
        { "one bead fewer", p => p with { Order = new([.. p.Order.Kinds.Take(40)], []) } },
        { "two beads changed over", p => p with { Order = new([.. p.Order.Kinds.Take(19), 1, 0, .. p.Order.Kinds.Skip(21)], []) } },
    };

    [Theory]
    [MemberData(nameof(WhatCounts))]
    public void What_settling_looks_at_tells_two_apart(string what, Func<Piece, Piece> change) => Assert.False(SitAlike.Are(Plain, change(Plain)), what);
}
