using System.Globalization;
using Coilwright.Core.Faults;

namespace Coilwright.Core.Pieces;

/// <summary>How large the file of a photo may be, of a trial as of a cover: the one place that says so, for what is kept, what is printed and what is told.</summary>
public static class PhotoSize
{
    private const int MostMb = 16;

    /// <summary>Largest file, bytes: above what a telephone's camera makes, and below what would choke a backup. Our choice.</summary>
    public const int MostBytes = MostMb * 1024 * 1024;

    /// <summary>The same, as it is said.</summary>
    public static string Most { get; } = MostMb.ToString(CultureInfo.InvariantCulture) + " MB";

    /// <summary>What is wrong with a file's size, before it is read; null when nothing is.</summary>
    /// <param name="bytes">Its size, bytes.</param>
    /// <param name="field">What it is given for; empty when it is no field.</param>
    public static Fault? Check(long bytes, string field = "") => bytes > MostBytes ? Fault.Of(FaultCodes.PhotoTooLarge, field, "", ("max", Most)) : null;
}
