namespace Coilwright.Core.Readings;

/// <summary>Key letters, tying materials, bags and steps together: A to Z, then AA, AB.</summary>
public static class KeyLetters
{
    /// <summary>The letter of the kind with this index, from 0.</summary>
    public static string Of(int index)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(index);
        var text = "";
        for (var left = index; left >= 0; left = left / 26 - 1) text = (char)('A' + left % 26) + text;
        return text;
    }
}
