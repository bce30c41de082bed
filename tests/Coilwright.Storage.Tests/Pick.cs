using CsCheck;

namespace Coilwright.Storage.Tests;

/// <summary>One of a few values at random.</summary>
internal static class Pick
{
    public static Gen<T> From<T>(params T[] values) => Gen.Int[0, values.Length - 1].Select(i => values[i]);
}
