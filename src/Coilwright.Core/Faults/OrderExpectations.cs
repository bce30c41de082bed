namespace Coilwright.Core.Faults;

/// <summary>What the order notation expected: the values of {expected} in <see cref="FaultCodes.OrderExpected"/>.</summary>
public static class OrderExpectations
{
    /// <summary>A count, a bead, a group, a bracket, <c>mirror</c> or <c>backwards</c>.</summary>
    public const string Item = "item";

    /// <summary>What a count counts: a bead, a group, a bracket, <c>mirror</c> or <c>backwards</c>.</summary>
    public const string Part = "part";

    /// <summary>What is strung backwards: a bead, a group or a bracket.</summary>
    public const string NameOrBracket = "name-or-bracket";

    /// <summary>An opening bracket.</summary>
    public const string OpeningBracket = "opening-bracket";

    /// <summary>The word <c>between</c>.</summary>
    public const string Between = "between";

    /// <summary>A comma or the end of the line.</summary>
    public const string CommaOrLineEnd = "comma-or-line-end";

    /// <summary>A comma, the end of the line or a closing bracket.</summary>
    public const string CommaOrClosingBracket = "comma-or-closing-bracket";

    /// <summary>A line of its own, outside all brackets, for a group written down with <c>=</c>.</summary>
    public const string LineOfItsOwn = "line-of-its-own";
}
