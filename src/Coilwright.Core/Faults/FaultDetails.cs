namespace Coilwright.Core.Faults;

/// <summary>Why a file could not be read as JSON, opened or written: the values of {detail} in the file codes.</summary>
public static class FaultDetails
{
    /// <summary>Nothing but blanks is in the file.</summary>
    public const string Empty = "empty";

    /// <summary>A comma stands before a closing bracket.</summary>
    public const string TrailingComma = "trailing-comma";

    /// <summary>A comment stands in the JSON; comments belong in the order's text.</summary>
    public const string Comment = "comment";

    /// <summary>A text is not closed on its line.</summary>
    public const string TextNotClosed = "text-not-closed";

    /// <summary>A backslash in a text is followed by what it cannot be followed by.</summary>
    public const string Escape = "escape";

    /// <summary>More follows after the end.</summary>
    public const string AfterTheEnd = "after-the-end";

    /// <summary>Something else was expected here.</summary>
    public const string Unexpected = "unexpected";

    /// <summary>There is no such file or folder.</summary>
    public const string NotFound = "not-found";

    /// <summary>It is a folder.</summary>
    public const string IsFolder = "is-folder";

    /// <summary>It is a file where a folder is needed.</summary>
    public const string IsFile = "is-file";

    /// <summary>The file's rights, or the folder's, do not allow it.</summary>
    public const string NotAllowed = "not-allowed";

    /// <summary>The disk is full, or a limit on the size of files is reached.</summary>
    public const string DiskFull = "disk-full";

    /// <summary>The path is empty, too long or has characters that no path has.</summary>
    public const string PathForm = "path-form";

    /// <summary>The system gave another reason, as {reason} in its own words.</summary>
    public const string Other = "other";
}
