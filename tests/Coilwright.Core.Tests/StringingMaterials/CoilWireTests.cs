using Coilwright.Core.Measures;
using Coilwright.Core.StringingMaterials.MemoryWire;

namespace Coilwright.Core.Tests.StringingMaterials;

public class CoilWireTests
{
    private const double OunceG = 28.349523125; // avoirdupois ounce, exact by definition (international yard and pound agreement, 1959)

    // Densities of 0.286 and 0.284 lb/in3 from a spring-trade property table: Reference of the wire data.
    private static readonly WireSteel Stainless = new("stainless-302", 7.916, 193_053, 68_948, "0.286 lb/in3");
    private static readonly WireSteel MusicWire = new("music-wire", 7.861, 206_843, 79_290, "0.284 lb/in3");

    // Common practice, no source: memory wire is sold by weight, and an ounce of 2-inch bracelet wire is 68 to 70 loops. With 22 AWG it is, for both
    // steels and whether the 2 inches are the inside or the wire's centre line: 68.0 (stainless, inside) to 69.4 (music wire, centre line).
    // That a thicker or thinner wire gives something quite else is what makes this a check of the gauge as well.
    [Fact]
    public void An_ounce_of_two_inch_coil_is_68_to_70_loops_of_22_gauge_and_of_no_other()
    {
        Assert.True(WireGauge.TryParse("22 AWG", out var wire));
        foreach (var steel in new[] { Stainless, MusicWire })
            foreach (var datum in new[] { CoilDatum.Inside, CoilDatum.CentreLine })
                Assert.InRange(OunceG / new CoilWire(wire, datum, 50.8, steel).LoopMassG!.Value, 68, 70);
        foreach (var gauge in new[] { "21 AWG", "23 AWG", "22 SWG", "23 SWG", "24 SWG" })
        {
            Assert.True(WireGauge.TryParse(gauge, out var other));
            Assert.False(OunceG / new CoilWire(other, CoilDatum.Inside, 50.8, MusicWire).LoopMassG!.Value is >= 68 and <= 70, gauge);
        }
    }

    // Worked out apart from this code: an ounce of music wire in 69 loops of 2-inch inside diameter is wire of 0.642 mm.
    [Fact]
    public void Mass_length_and_thickness_agree()
    {
        var loop = new CoilWire(0.642, CoilDatum.Inside, 50.8, MusicWire);
        Near.Equal(69, OunceG / loop.LoopMassG!.Value, 0.12); // half of the last digit of 0.642, twice since mass goes with its square
        Near.Equal(11.15, 69 * loop.LoopMm / 1000, 0.005); // half of the last printed digit, m
    }

    // A maker's three figures for one coil (common practice, no source): a label of 60 mm inside, one loop stretched along a ruler of about 19 cm, and a
    // published project that strings 15.7, 17.2 and 18.8 cm on coils of 50, 55 and 60 mm, which is pi D to the last digit.
    [Theory]
    [InlineData(50, 157)]
    [InlineData(55, 172)]
    [InlineData(60, 188)]
    public void A_loop_is_pi_times_its_diameter(double diameter, double loop)
    {
        Near.Equal(loop, new CoilWire(0.62, CoilDatum.CentreLine, diameter, null).LoopMm, 1); // last printed digit, some cut off
        Near.Equal(Math.PI * 0.62, new CoilWire(0.62, CoilDatum.Inside, diameter, null).LoopMm - Math.PI * diameter, 1e-9); // rounding
    }

    [Fact]
    public void A_measured_loop_is_the_loop()
    {
        var coil = new CoilWire(0.62, CoilDatum.MeasuredLoop, 190, null);
        Near.Equal(190, coil.LoopMm, 1e-12); // rounding
        Near.Equal(60.5, 2 * coil.RelaxedRadiusMm, 0.05); // half of the last printed digit: "19 cm: 60.5 mm"
    }

    [Fact]
    public void Wire_of_unknown_steel_has_no_mass() => Assert.Null(new CoilWire(0.62, CoilDatum.Inside, 60, null).LoopMassG);
}
