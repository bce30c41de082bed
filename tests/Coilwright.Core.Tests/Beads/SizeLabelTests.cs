using Coilwright.Core.Beads;
using CsCheck;

namespace Coilwright.Core.Tests.Beads;

public class SizeLabelTests
{
    [Theory]
    [InlineData("4x6", 4, 6)]
    [InlineData("6 x 4 mm", 4, 6)]
    [InlineData("4mm x 6mm", 4, 6)]
    [InlineData("2,5 × 4", 2.5, 4)]
    [InlineData("8 by 8", 8, 8)]
    [InlineData("3*5.5", 3, 5.5)]
    public void A_label_is_read_the_smaller_number_first(string text, double smaller, double larger)
    {
        Assert.True(SizeLabel.TryParse(text, out var label));
        Assert.Equal(new SizeLabel(smaller, larger), label);
    }

    [Theory]
    [InlineData("")]
    [InlineData(null)]
    [InlineData("4")]
    [InlineData("4 x")]
    [InlineData("4 x 6 x 8")]
    [InlineData("-4 x 6")]
    [InlineData("0 x 6")]
    [InlineData("4 x NaN")]
    [InlineData("4 x 1e999")]
    [InlineData("4 x 5000")]
    public void What_is_not_two_sizes_is_refused(string? text) => Assert.False(SizeLabel.TryParse(text, out _));

    // Common practice, no source: rondelles run along the smaller number, tubes and ovals along the larger.
    [Theory]
    [InlineData("rondelle", 4, 6)]
    [InlineData("faceted-rondelle", 4, 6)]
    [InlineData("tube", 6, 4)]
    [InlineData("oval", 6, 4)]
    public void A_shape_proposes_the_way_that_the_trade_reads_it(string shape, double along, double across)
    {
        Assert.True(SizeLabel.TryParse("6x4", out var label));
        Assert.Equal((along, across), label.Along(Core.Beads.Shapes.BeadShapes.Find(shape)!.LabelRunsAlongLarger));
    }

    [Fact]
    public void Whatever_is_typed_it_answers() => Gen.String.Sample(text => !SizeLabel.TryParse(text, out var label) || label.SmallerMm <= label.LargerMm);
}
