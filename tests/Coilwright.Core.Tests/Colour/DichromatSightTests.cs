using Coilwright.Core.Colour;
using CsCheck;

namespace Coilwright.Core.Tests.Colour;

public class DichromatSightTests
{
    private static readonly Gen<LinearLight> AnyLight = Gen.Select(Gen.Double[0, 1], Gen.Double[0, 1], Gen.Double[0, 1], (r, g, b) => new LinearLight(r, g, b));

    [Fact]
    public void Machados_colours_and_greys_are_those_that_a_browser_shows()
    {
        foreach (var row in ReferenceTable.Read("dichromat-colours.csv").Rows)
        {
            var light = LinearLight.FromSrgb(new Srgb((byte)row["R"], (byte)row["G"], (byte)row["B"]));
            var seen = (row.Text("eye") == "grey" ? light.InGrey() : DichromatSight.Seen(light, Enum.Parse<Dichromacy>(row.Text("eye"), ignoreCase: true), DichromacyModel.Machado2009)).ToSrgb();
            Near.Equal(row["seenR"], seen.Red, row["within"], row);
            Near.Equal(row["seenG"], seen.Green, row["within"], row);
            Near.Equal(row["seenB"], seen.Blue, row["within"], row);
        }
    }

    // The construction of the papers, a second time and from the cones. Viénot, Brettel and Mollon (1999) print for the screen of their day, from linear RGB to the cones,
    // the matrix below, and what is left of it: for protans L = 2.02344 M - 2.52581 S, for deutans M = 0.494207 L + 1.24827 S (read in public code that quotes them).
    // Tolerance: half of the last digit printed of the matrix, 3.5e-6 of its largest, grows by a factor of ten or so in the division of small differences.
    [Fact]
    public void The_plane_through_white_and_blue_is_the_one_that_was_printed_in_1999()
    {
        double[][] cones = [[17.8824, 43.5161, 4.11935], [3.45565, 27.1554, 3.86714], [0.0299566, 0.184309, 1.46709]];
        var n = Cross(Times(cones, [1, 1, 1]), Times(cones, [0, 0, 1]));
        Near.Equal(2.02344, -n[1] / n[0], 5e-5);
        Near.Equal(-2.52581, -n[2] / n[0], 5e-5);
        Near.Equal(0.494207, -n[0] / n[1], 5e-5);
        Near.Equal(1.24827, -n[2] / n[1], 5e-5);
    }

    // Cones of Smith and Pokorny (1975) as in the papers; sRGB primaries; anchors of Brettel, Viénot and Mollon (1997) at 475, 575, 485 and 660 nm as CIE 1931 has them.
    private static readonly double[][] ConesOfXyz = [[0.15514, 0.54312, -0.03286], [-0.15514, 0.45684, 0.03286], [0, 0, 0.01608]];
    private static readonly double[][] XyzOfLight = [[0.4124564, 0.3575761, 0.1804375], [0.2126729, 0.7151522, 0.0721750], [0.0193339, 0.1191920, 0.9503041]];
    private static readonly double[] At475 = [0.1421, 0.1126, 1.0419], At575 = [0.8425, 0.9154, 0.0018], At485 = [0.05795, 0.1693, 0.6162], At660 = [0.1649, 0.0610, 0];

    [Theory]
    [InlineData(Dichromacy.Protan), InlineData(Dichromacy.Deutan), InlineData(Dichromacy.Tritan)]
    public void What_is_seen_by_the_models_of_1997_and_1999_follows_from_the_cones(Dichromacy eye) => AnyLight.Sample(light =>
    {
        var cones = Times(ConesOfXyz, Times(XyzOfLight, [light.Red, light.Green, light.Blue]));
        var white = Times(ConesOfXyz, Times(XyzOfLight, [1, 1, 1]));
        var missing = (int)eye;
        // The half plane on whose side the light is: beyond white as the first anchor is, or not. The other two cones decide it.
        var (first, second) = eye == Dichromacy.Tritan ? (At485, At660) : (At475, At575);
        var border = Cross(white, [missing == 0 ? 1 : 0, missing == 1 ? 1 : 0, missing == 2 ? 1 : 0]);
        var side = Dot(border, cones) * Dot(border, Times(ConesOfXyz, first));
        // Within a hair of the border either will do: both half planes meet there.
        Same(Replaced(cones, missing, Cross(white, Times(ConesOfXyz, side >= 0 ? first : second))), DichromatSight.Seen(light, eye, DichromacyModel.Brettel1997));
        if (eye != Dichromacy.Tritan)
            Same(Replaced(cones, missing, Cross(white, Times(ConesOfXyz, Times(XyzOfLight, [0, 0, 1])))), DichromatSight.Seen(light, eye, DichromacyModel.Vienot1999));

        static void Same(double[] cones, LinearLight seen)
        {
            var light = Solve(ConesOfXyz, XyzOfLight, cones);
            var expected = new LinearLight(light[0], light[1], light[2]).OnScreen();
            // Five printed digits of nine numbers; and the border's three, which decide only within a hair of it.
            Near.Equal(expected.Red, seen.Red, 2e-4, (expected, seen));
            Near.Equal(expected.Green, seen.Green, 2e-4, (expected, seen));
            Near.Equal(expected.Blue, seen.Blue, 2e-4, (expected, seen));
        }
    });

    [Fact]
    public void What_a_dichromat_confuses_by_missing_cones_looks_the_same_to_it() => Gen.Select(AnyLight, Gen.Double[-0.02, 0.02], Gen.Enum<Dichromacy>()).Sample((light, shift, eye) =>
    {
        // Moved by nothing but the answer of the missing cones.
        var more = new double[3];
        more[(int)eye] = eye == Dichromacy.Tritan ? shift / 20 : shift;
        var change = Solve(ConesOfXyz, XyzOfLight, more);
        var other = new LinearLight(light.Red + change[0], light.Green + change[1], light.Blue + change[2]);
        var (one, two) = (DichromatSight.Seen(light, eye, DichromacyModel.Brettel1997), DichromatSight.Seen(other, eye, DichromacyModel.Brettel1997));
        // As above.
        Near.Equal(one.Red, two.Red, 2e-4, (light, eye));
        Near.Equal(one.Green, two.Green, 2e-4, (light, eye));
        Near.Equal(one.Blue, two.Blue, 2e-4, (light, eye));
    });

    [Fact]
    public void Greys_stay_as_they_are_to_every_eye_by_every_model()
    {
        foreach (var eye in Enum.GetValues<Dichromacy>())
            foreach (var model in DichromatSight.ModelsFor(eye))
                for (var v = 0; v < 256; v++)
                {
                    var grey = new Srgb((byte)v, (byte)v, (byte)v);
                    // Rows that add up to 1 but for 1e-5: less than a hundredth of a step.
                    Assert.Equal(grey, DichromatSight.Seen(LinearLight.FromSrgb(grey), eye, model).ToSrgb());
                }
    }

    [Fact]
    public void The_model_of_1999_is_not_asked_about_missing_short_waves()
    {
        Assert.DoesNotContain(DichromacyModel.Vienot1999, DichromatSight.ModelsFor(Dichromacy.Tritan));
        Assert.Throws<ArgumentException>(() => DichromatSight.Seen(default, Dichromacy.Tritan, DichromacyModel.Vienot1999));
    }

    [Fact]
    public void Every_screen_colour_is_its_own_light_and_back()
    {
        for (var v = 0; v < 256; v++) Assert.Equal(new Srgb((byte)v, 0, 255), LinearLight.FromSrgb(new Srgb((byte)v, 0, 255)).ToSrgb());
    }

    private static double[] Replaced(double[] cones, int missing, double[] n)
    {
        double[] seen = [.. cones];
        seen[missing] = 0;
        seen[missing] = -Dot(n, seen) / n[missing];
        return seen;
    }

    private static double[] Times(double[][] m, double[] v) => [.. m.Select(row => Dot(row, v))];

    private static double Dot(double[] a, double[] b) => a[0] * b[0] + a[1] * b[1] + a[2] * b[2];

    private static double[] Cross(double[] a, double[] b) => [a[1] * b[2] - a[2] * b[1], a[2] * b[0] - a[0] * b[2], a[0] * b[1] - a[1] * b[0]];

    // Light whose answer of the cones is this: by Cramer.
    private static double[] Solve(double[][] outer, double[][] inner, double[] of)
    {
        double[][] m = [.. outer.Select(row => (double[])[.. Enumerable.Range(0, 3).Select(c => row[0] * inner[0][c] + row[1] * inner[1][c] + row[2] * inner[2][c])])];
        double[] Column(int c) => [m[0][c], m[1][c], m[2][c]];
        double Det(double[] a, double[] b, double[] c) => Dot(a, Cross(b, c));
        var all = Det(Column(0), Column(1), Column(2));
        return [Det(of, Column(1), Column(2)) / all, Det(Column(0), of, Column(2)) / all, Det(Column(0), Column(1), of) / all];
    }
}
