using Coilwright.Core.Colour;

namespace Coilwright.Core.Tests.Colour;

public class LabTests
{
    [Fact]
    public void Screen_colours_have_the_lab_that_was_worked_out_elsewhere()
    {
        foreach (var row in ReferenceTable.Read("srgb-to-lab-d65.csv").Rows)
        {
            var lab = Lab.FromSrgb(new Srgb((byte)row["R"], (byte)row["G"], (byte)row["B"]));
            // Half of the last printed digit.
            Near.Equal(row["L_lindbloom"], lab.L, 0.00005, row);
            Near.Equal(row["a_lindbloom"], lab.A, 0.00005, row);
            Near.Equal(row["b_lindbloom"], lab.B, 0.00005, row);
        }
    }

    [Fact]
    public void Every_grey_is_without_hue()
    {
        for (var v = 0; v < 256; v++)
        {
            var lab = Lab.FromSrgb(new Srgb((byte)v, (byte)v, (byte)v));
            // The seven-digit matrix adds up to its white within 1e-7; times 500 that is at most 5e-5 after the cube root.
            Near.Equal(0, lab.A, 5e-5, v);
            Near.Equal(0, lab.B, 5e-5, v);
        }
    }

    [Fact]
    public void Several_colours_count_as_their_mean()
    {
        Assert.Null(Lab.MeanOf([]));
        var teal = new Srgb(0, 128, 128);
        Assert.Equal(Lab.FromSrgb(teal), Lab.MeanOf([teal]));
        var grey = Lab.MeanOf([new Srgb(0, 0, 0), new Srgb(255, 255, 255)])!.Value;
        Near.Equal(50, grey.L, 0.00001); // mean of 0 and 100
        var (one, two) = (Lab.FromSrgb(new Srgb(200, 10, 10)), Lab.FromSrgb(new Srgb(10, 10, 200)));
        var both = Lab.MeanOf([new Srgb(200, 10, 10), new Srgb(10, 10, 200)])!.Value;
        Near.Equal((one.A + two.A) / 2, both.A, 1e-12); // rounding
        Near.Equal((one.B + two.B) / 2, both.B, 1e-12);
    }
}
