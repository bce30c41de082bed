namespace Coilwright.Core.Faults;

// The order's text.
public static partial class FaultCodes
{
    /// <summary>The order is empty.</summary>
    public const string OrderEmpty = "order.empty";

    /// <summary>Something else was expected; {expected} is one of <see cref="OrderExpectations"/>. The value is empty at the end of a line.</summary>
    public const string OrderExpected = "order.expected";

    /// <summary>A name in the order is neither a bead nor a group; {nearest} is the likeliest.</summary>
    public const string OrderUnknownName = "order.unknown-name";

    /// <summary>A name in the order has letters that names do not have; {lower} is its small form where that is a name, {nearest} the likeliest.</summary>
    public const string OrderNameForm = "order.name-form";

    /// <summary>A group in the order is named by a word that the notation keeps for itself; {known} lists those.</summary>
    public const string OrderNameReserved = "order.name-reserved";

    /// <summary>A group contains itself; {path} tells how.</summary>
    public const string OrderGroupInItself = "order.group-in-itself";

    /// <summary>A group is named twice; {firstLine}.</summary>
    public const string OrderGroupTwice = "order.group-twice";

    /// <summary>A group has the id of a bead.</summary>
    public const string OrderGroupIsBead = "order.group-is-bead";

    /// <summary>A count is 0 or above {max}.</summary>
    public const string OrderCount = "order.count";

    /// <summary>Brackets or groups stand deeper than {max} inside one another.</summary>
    public const string OrderTooDeep = "order.too-deep";

    /// <summary>The order strings more than {max} beads.</summary>
    public const string OrderTooMany = "order.too-many";

    /// <summary>The order strings named groups more than {max} times.</summary>
    public const string OrderTooManyGroups = "order.too-many-groups";

    /// <summary>The order's text is longer than {max} characters.</summary>
    public const string OrderTooLong = "order.too-long";

    /// <summary>A closing bracket is missing; {openLine}, {openColumn} tell where it was opened.</summary>
    public const string OrderUnclosed = "order.unclosed";
}
