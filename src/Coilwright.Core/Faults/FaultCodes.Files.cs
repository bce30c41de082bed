namespace Coilwright.Core.Faults;

// Files, the program's own data, and photos.
public static partial class FaultCodes
{
    /// <summary>The file is not UTF-8; {offset} is the first bad byte.</summary>
    public const string FileNotUtf8 = "file.not-utf8";

    /// <summary>The file is not JSON at this place; {detail} is one of <see cref="FaultDetails"/>.</summary>
    public const string FileNotJson = "file.not-json";

    /// <summary>The file ends in the middle.</summary>
    public const string FileTruncated = "file.truncated";

    /// <summary>The file is larger than {max}.</summary>
    public const string FileTooLarge = "file.too-large";

    /// <summary>The file cannot be read; {detail} is one of <see cref="FaultDetails"/>.</summary>
    public const string FileUnreadable = "file.unreadable";

    /// <summary>The target cannot be written; {detail} is one of <see cref="FaultDetails"/>.</summary>
    public const string FileUnwritable = "file.unwritable";

    /// <summary>One of several files cannot be written when others are already: {written}; {detail} as before.</summary>
    public const string FileUnwritableAfter = "file.unwritable-after";

    /// <summary>The format is not one that this program reads; {known}.</summary>
    public const string FormatUnknown = "file.format";

    /// <summary>The file is one of ours, but of another kind than is asked for; {known}.</summary>
    public const string FormatOther = "file.format-other";

    /// <summary>Arrays and objects stand deeper than {max} inside one another.</summary>
    public const string FileTooDeep = "file.too-deep";

    /// <summary>A data file of the program itself is missing or wrong; {file}, and {detail}: one of
    /// <see cref="FaultDetails"/>, or else the code of what is wrong in it.</summary>
    public const string DataBroken = "data.broken";

    /// <summary>A photo is larger than {max}.</summary>
    public const string PhotoTooLarge = "photo.too-large";

    /// <summary>A file is not a photo of the kind that it is said to be; {known} lists the kinds.</summary>
    public const string PhotoKind = "photo.kind";

    /// <summary>A photo's file is broken, or ends too early.</summary>
    public const string PhotoBroken = "photo.broken";

    /// <summary>A photo has more than {max} million pixels.</summary>
    public const string PhotoTooManyPixels = "photo.too-many-pixels";

    /// <summary>A photo is narrower or lower than {min} pixels.</summary>
    public const string PhotoTooSmall = "photo.too-small";
}
