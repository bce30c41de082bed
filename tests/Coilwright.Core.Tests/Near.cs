namespace Coilwright.Core.Tests;

/// <summary>Compares with a stated tolerance and says what was compared.</summary>
public static class Near
{
    public static void Equal(double expected, double actual, double tolerance, object? what = null) =>
        Assert.True(Math.Abs(expected - actual) <= tolerance,
            FormattableString.Invariant($"Expected {expected:R} within {tolerance:R}, got {actual:R} (off by {actual - expected:R}). {what}"));
}
