namespace Coilwright.Core.Faults;

/// <summary>The words that <see cref="FaultCodes.FieldType"/> uses for JSON types, and the kinds of number asked for.</summary>
public static class FaultTypes
{
    /// <summary>A text in quotes.</summary>
    public const string Text = "text";

    /// <summary>A number.</summary>
    public const string Number = "number";

    /// <summary>A number without a fraction.</summary>
    public const string WholeNumber = "whole-number";

    /// <summary>A list in square brackets.</summary>
    public const string List = "list";

    /// <summary>An object in curly brackets.</summary>
    public const string Fields = "fields";

    /// <summary><c>true</c> or <c>false</c>.</summary>
    public const string YesOrNo = "yes-or-no";

    /// <summary><c>null</c>.</summary>
    public const string Nothing = "nothing";

    /// <summary>A number, or one of a list of words.</summary>
    public const string NumberOrWord = "number-or-word";

    /// <summary>A text in quotes, or an object in curly brackets.</summary>
    public const string TextOrFields = "text-or-fields";

    /// <summary>Two numbers in square brackets.</summary>
    public const string TwoNumbers = "two-numbers";
}
