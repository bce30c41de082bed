namespace Coilwright.Core.Faults;

// Tables and lists that are brought in.
public static partial class FaultCodes
{
    /// <summary>A cell of a table is no number with a decimal point and at most three decimals where things are counted.</summary>
    public const string TableNumber = "table.number";

    /// <summary>A cell of a table is no day.</summary>
    public const string TableDay = "table.day";

    /// <summary>A table cannot be told into lines and cells from some line on.</summary>
    public const string TableBroken = "table.broken";

    /// <summary>A cell of a list of beads is no number with one decimal point or comma at most.</summary>
    public const string TrayNumber = "tray.number";

    /// <summary>A cell of a list of beads is no size as labels have it.</summary>
    public const string TraySize = "tray.size";

    /// <summary>A workbook cannot be read, or is none.</summary>
    public const string WorkbookBroken = "workbook.broken";

    /// <summary>A kind of bead in the tray cannot be read: {kind}; {detail} is the code of what is wrong in it.</summary>
    public const string TrayUnreadable = "tray.unreadable";

    /// <summary>A table has heads and no line.</summary>
    public const string TableNoRows = "table.no-rows";

    /// <summary>A table has more than {max} lines.</summary>
    public const string TableTooLong = "table.too-long";
}
