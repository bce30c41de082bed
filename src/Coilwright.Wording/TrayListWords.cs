namespace Coilwright.Wording;

/// <summary>Words of the bead tray on the command line. Names in braces are filled in; see <see cref="Template"/>.</summary>
public sealed record TrayListWords
{
    /// <summary>What <c>tray</c> does.</summary>
    public required string Verb { get; init; }

    /// <summary><c>--shelf</c>.</summary>
    public required string ShelfOption { get; init; }

    /// <summary><c>--find</c>.</summary>
    public required string FindOption { get; init; }

    /// <summary><c>--most</c>; {usual}.</summary>
    public required string MostOption { get; init; }

    /// <summary><c>--in</c>.</summary>
    public required string InOption { get; init; }

    /// <summary><c>--column</c>.</summary>
    public required string ColumnOption { get; init; }

    /// <summary><c>--take</c>.</summary>
    public required string TakeOption { get; init; }

    /// <summary><c>--out</c>.</summary>
    public required string OutOption { get; init; }

    /// <summary>A list in the examples.</summary>
    public required string ExampleList { get; init; }

    /// <summary>What is looked for in the examples.</summary>
    public required string ExampleFind { get; init; }

    /// <summary>How many were found of how many: {found}, {kinds}.</summary>
    public required string Found { get; init; }

    /// <summary>The columns of a list and what they were taken for: {head}, {column}.</summary>
    public required string Column { get; init; }

    /// <summary>A column that was left out: {head}.</summary>
    public required string ColumnLeftOut { get; init; }

    /// <summary>Nothing was changed yet.</summary>
    public required string NotTakenYet { get; init; }

    /// <summary>The tray was written: {kinds} kinds to {file}.</summary>
    public required string Written { get; init; }
}
