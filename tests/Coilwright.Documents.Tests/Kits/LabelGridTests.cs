using Coilwright.Documents.Kits;

namespace Coilwright.Documents.Tests.Kits;

/// <summary>A sheet of labels as it is typed.</summary>
public class LabelGridTests
{
    [Theory]
    [InlineData("3x7,64x36")]
    [InlineData("3x8,63.5x33.9,7.2x12.9")]
    [InlineData("3x8,63.5x33.9,7.2x12.9,2.5x0")]
    public void What_is_typed_is_what_is_written(string text) => Assert.Equal(text, LabelGrid.Read(text)!.Text);

    [Theory]
    [InlineData("")]
    [InlineData("3x7")]
    [InlineData("0x7,64x36")]
    [InlineData("3x51,64x36")]
    [InlineData("3x7,0.5x36")]
    [InlineData("3x7,64x1001")]
    [InlineData("3x7,64x36,1")]
    [InlineData("3x7,64x36,1x1,-1x0")]
    [InlineData("3x7,64x36,1x1,1x0,1x1")]
    public void What_is_no_sheet_is_none(string text) => Assert.Null(LabelGrid.Read(text));
}
