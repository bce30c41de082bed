using static Coilwright.Core.Tests.Stringing.OrderTexts;

namespace Coilwright.Core.Tests.Stringing;

/// <summary>What each construct of the order notation strings.</summary>
public class OrderNotationTests
{
    [Theory]
    // one after another
    [InlineData("round", "round")]
    [InlineData("round, disc", "round disc")]
    [InlineData("round\ndisc", "round disc")]
    [InlineData("round,\r\ndisc\r\n", "round disc")]
    [InlineData("round\rdisc", "round disc")]
    [InlineData("\n\n round \t,disc,\n\n\n", "round disc")]
    [InlineData("round,", "round")]
    [InlineData("round # , disc (\ndisc # )", "round disc")]
    [InlineData("#\nround#", "round")]
    // counts
    [InlineData("3 chip", "chip chip chip")]
    [InlineData("3x chip", "chip chip chip")]
    [InlineData("3 x chip", "chip chip chip")]
    [InlineData("3 × chip", "chip chip chip")]
    [InlineData("3×chip", "chip chip chip")]
    [InlineData("3chip", "chip chip chip")]
    [InlineData("1 chip", "chip")]
    [InlineData("007 chip", "chip chip chip chip chip chip chip")]
    // brackets
    [InlineData("(round)", "round")]
    [InlineData("2 (round, disc)", "round disc round disc")]
    [InlineData("2(round,disc,)", "round disc round disc")]
    [InlineData("(\nround\ndisc,\n\n)", "round disc")]
    [InlineData("2 (2 (chip), disc)", "chip chip disc chip chip disc")]
    // with ... between
    [InlineData("3 round with disc between", "round disc round disc round")]
    [InlineData("3 round with 2 disc between", "round disc disc round disc disc round")]
    [InlineData("2 (round, chip) with (disc, bar) between", "round chip disc bar round chip")]
    [InlineData("2 round with mirror (disc) around bar between", "round disc bar disc round")]
    [InlineData("1 round with disc between", "round")]
    [InlineData("round with disc between", "round")]
    [InlineData("2 round with (2 disc with chip between) between", "round disc chip disc round")]
    // groups
    [InlineData("g = chip, disc\ng", "g[chip disc]")]
    [InlineData("g\ng = chip, disc", "g[chip disc]")]
    [InlineData("g = chip, disc,\n2 g", "g[chip disc] g[chip disc]")]
    [InlineData("g = (chip\ndisc), bar\ng", "g[chip disc bar]")]
    [InlineData("g (chip, disc), g", "g[chip disc] g[chip disc]")]
    [InlineData("g, g (chip, disc)", "g[chip disc] g[chip disc]")]
    [InlineData("2 g (chip)", "g[chip] g[chip]")]
    [InlineData("3 g with h between\ng = chip\nh = disc", "g[chip] h[disc] g[chip] h[disc] g[chip]")]
    [InlineData("3 g (chip) with h (disc) between", "g[chip] h[disc] g[chip] h[disc] g[chip]")]
    [InlineData("outer (chip, inner (disc, bar)), inner", "outer[chip inner[disc bar]] inner[disc bar]")]
    [InlineData("g = h (chip), disc\nh, g", "h[chip] g[h[chip] disc]")]
    // mirrors
    [InlineData("mirror (round, disc, chip) around stone", "round disc chip stone chip disc round")]
    [InlineData("mirror (round, disc)", "round disc disc round")]
    [InlineData("2 mirror (round) around disc", "round disc round round disc round")]
    [InlineData("mirror (round) around (disc, bar)", "round disc bar round")]
    [InlineData("mirror (round) around 2 disc", "round disc disc round")]
    [InlineData("mirror (g (round, disc))", "g[round disc] g[disc round]")]
    [InlineData("mirror (g (h (round, disc), bar))", "g[h[round disc] bar] g[bar h[disc round]]")]
    [InlineData("mirror (2 round with (disc, bar) between)", "round disc bar round round bar disc round")]
    [InlineData("mirror (round) around mirror (disc) around chip", "round disc chip disc round")]
    [InlineData("mirror (mirror (round, disc) around (chip, bar))", "round disc chip bar disc round round disc bar chip disc round")]
    // backwards
    [InlineData("backwards (round, disc)", "disc round")]
    [InlineData("g (round, disc), backwards g", "g[round disc] g[disc round]")]
    [InlineData("backwards g (round, disc), g", "g[disc round] g[round disc]")]
    [InlineData("mirror (backwards g (round, disc))", "g[disc round] g[round disc]")]
    [InlineData("2 backwards (round, disc) with backwards (chip, bar) between", "disc round bar chip disc round")]
    public void Text_strings(string text, string expected) => Assert.Equal(expected, Strung(text));

    [Fact]
    public void Names_may_have_digits_and_hyphens()
    {
        string[] beads = ["x-ray", "r8", "a-b-2"];
        var read = Core.Stringing.Notation.OrderNotation.Read("x-ray, 2x r8, a-b-2", beads);
        Assert.Empty(read.Faults);
        Assert.Equal("x-ray r8 r8 a-b-2", Shown(read.Order!, beads));
    }
}
