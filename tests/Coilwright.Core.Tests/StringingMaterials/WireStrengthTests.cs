using Coilwright.Core.StringingMaterials.MemoryWire;
using CsCheck;

namespace Coilwright.Core.Tests.StringingMaterials;

public class WireStrengthTests
{
    private const double WireMm = 0.62, RestMm = 28.885;
    private const double YoungsModulusMPa = 28e6 * 0.006894757; // 28e6 psi, as printed for stainless spring wire; 1 psi = 0.006894757 MPa

    // Worked apart from this code (docs/theory/strength.md): I = pi 0.62^4 / 64 = 7.25332e-3 mm4. Tolerances here and below: half of the last printed digit.
    [Fact]
    public void Bending_stiffness_of_0_62_mm_stainless_wire_is_the_worked_figure() =>
        Near.Equal(1400.28, WireStrength.BendingStiffnessNmm2(WireMm, YoungsModulusMPa), 0.005);

    [Theory]
    [InlineData(35, 8.4697, 361.99)]
    [InlineData(40, 13.4707, 575.73)]
    public void Opening_a_coil_takes_the_worked_moment_and_stress(double radiusMm, double momentNmm, double stressMPa)
    {
        Near.Equal(momentNmm, WireStrength.OpeningMomentNmm(WireMm, YoungsModulusMPa, RestMm, radiusMm), 0.00005);
        Near.Equal(stressMPa, WireStrength.SurfaceStressMPa(WireMm, YoungsModulusMPa, RestMm, radiusMm), 0.005);
    }

    // Second way: the wire's round section cut into thin strips, each strained by its distance from the middle times the change of curvature. Their forces make
    // the moment, and the outermost is strained most. Strips: 20,000; the midpoint rule is off by far less than a part in a million.
    [Fact]
    public void Moment_and_stress_are_those_of_the_strips_that_the_wire_is_made_of() =>
        Gen.Select(Gen.Double[0.3, 1.2], Gen.Double[150_000, 220_000], Gen.Double[20, 40], Gen.Double[20, 60]).Sample((wire, young, rest, radius) =>
        {
            const int strips = 20_000;
            double moment = 0, most = 0, half = wire / 2, bend = 1 / rest - 1 / radius;
            for (var s = 0; s < strips; s++)
            {
                var y = half * (2 * (s + 0.5) / strips - 1);
                var stress = young * y * bend;
                moment += stress * y * 2 * Math.Sqrt(half * half - y * y) * wire / strips;
                if (Math.Abs(stress) > Math.Abs(most)) most = stress;
            }
            Near.Equal(moment, WireStrength.OpeningMomentNmm(wire, young, rest, radius), 1e-6 * Math.Abs(moment) + 1e-12);
            // The outermost strip's middle lies a 20,000th of half the wire within its surface.
            Near.Equal(Math.Abs(most), Math.Abs(WireStrength.SurfaceStressMPa(wire, young, rest, radius)), 1e-4 * Math.Abs(most) + 1e-12);
        }, iter: 30);

    // Closed form of an end moment on a straight rod: it closes into one full circle under M = 2 pi E I / L (a benchmark of large bends; any handbook).
    [Fact]
    public void A_straight_wire_closes_into_a_circle_under_the_published_moment()
    {
        const double length = 180;
        var closes = WireStrength.OpeningMomentNmm(WireMm, YoungsModulusMPa, 1e15, length / (2 * Math.PI));
        // Straight is a radius of 1e15 mm here: its own curvature is below rounding.
        Near.Equal(-2 * Math.PI * WireStrength.BendingStiffnessNmm2(WireMm, YoungsModulusMPa) / length, closes, 1e-9);
    }

    // A ring slit open, with a moment M at the slit: its ends turn against each other by 2 pi M R / (E I) (Castigliano; by finite elements 6.28325 M R / E I).
    [Fact]
    public void The_ends_of_a_slit_ring_turn_as_published()
    {
        const double radius = 32;
        var turned = 2 * Math.PI - 2 * Math.PI * RestMm / radius;
        var moment = WireStrength.OpeningMomentNmm(WireMm, YoungsModulusMPa, RestMm, radius);
        Near.Equal(2 * Math.PI * moment * RestMm / WireStrength.BendingStiffnessNmm2(WireMm, YoungsModulusMPa), turned, 1e-12);
        Near.Equal(6.28325, turned / (moment * RestMm / WireStrength.BendingStiffnessNmm2(WireMm, YoungsModulusMPa)), 0.0001); // the elements' own error
    }

    [Fact]
    public void At_rest_nothing_pulls_and_a_coil_that_is_closed_pulls_the_other_way()
    {
        Assert.Equal(0, WireStrength.OpeningMomentNmm(WireMm, YoungsModulusMPa, RestMm, RestMm));
        Assert.Equal(0, WireStrength.SurfaceStressMPa(WireMm, YoungsModulusMPa, RestMm, RestMm));
        Assert.True(WireStrength.OpeningMomentNmm(WireMm, YoungsModulusMPa, RestMm, 25) < 0);
        Assert.True(WireStrength.SurfaceStressMPa(WireMm, YoungsModulusMPa, RestMm, 25) < 0);
    }

    [Fact]
    public void Wire_twice_as_thick_takes_sixteen_times_the_moment_and_twice_the_stress() => Gen.Select(Gen.Double[20, 40], Gen.Double[20, 60]).Sample((rest, radius) =>
    {
        var (moment, stress) = (WireStrength.OpeningMomentNmm(0.4, YoungsModulusMPa, rest, radius), WireStrength.SurfaceStressMPa(0.4, YoungsModulusMPa, rest, radius));
        Near.Equal(16 * moment, WireStrength.OpeningMomentNmm(0.8, YoungsModulusMPa, rest, radius), 1e-12 * Math.Abs(16 * moment)); // rounding
        Near.Equal(2 * stress, WireStrength.SurfaceStressMPa(0.8, YoungsModulusMPa, rest, radius), 1e-12 * Math.Abs(2 * stress));
    });
}
