using Coilwright.Core.Beads;
using Coilwright.Core.Readings;

namespace Coilwright.Core.Tests.Readings;

public class ReckoningTests
{
    [Fact]
    public void A_plain_repeat_has_every_reading()
    {
        var round = SamplePieces.Bead("round", "round", 8, colour: "#6fa3a8");
        var spacer = SamplePieces.Bead("spacer", "heishi", 1.2, 4, role: Role.Spacer, colour: "#a9adb0");
        var piece = SamplePieces.Piece([round, spacer], Enumerable.Range(0, 190).Select(i => i % 2));
        var reckoned = Reckoning.Of(piece, SamplePieces.Data);
        Assert.Equal(190, reckoned.Lie.Count);
        Assert.Equal(2, reckoned.Repeat!.Beads);
        Assert.InRange(reckoned.Fit.TurnsWorn, 4, 5);
        Assert.NotNull(reckoned.LiningUp.Relative);
        Assert.NotNull(reckoned.LiningUp.Cover);
        Assert.Equal(61, reckoned.Curve.Length);
        Assert.NotNull(reckoned.Mass.TotalG);
    }

    [Fact]
    public void Key_letters_go_on_after_Z() =>
        Assert.Equal(["A", "Z", "AA", "AZ", "BA", "ZZ", "AAA"], new[] { 0, 25, 26, 51, 52, 701, 702 }.Select(KeyLetters.Of));
}
