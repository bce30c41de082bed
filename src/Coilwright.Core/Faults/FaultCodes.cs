namespace Coilwright.Core.Faults;

/// <summary>The codes of <see cref="Fault"/>. Each has one sentence per language in Coilwright.Wording; a test holds the two lists together.</summary>
/// <remarks>Those of numbers, texts, ids and fields are here, the others by what they are about in the files beside this one.</remarks>
public static partial class FaultCodes
{
    /// <summary>A number must be more than {min} {unit}.</summary>
    public const string ValueAbove = "value.above";

    /// <summary>A number must be at least {min} {unit}.</summary>
    public const string ValueAtLeast = "value.at-least";

    /// <summary>A number must be at most {max} {unit}.</summary>
    public const string ValueAtMost = "value.at-most";

    /// <summary>A number is not finite (NaN or infinite).</summary>
    public const string ValueNotFinite = "value.not-finite";

    /// <summary>A range has its smaller number second; {min} and {max} as written.</summary>
    public const string RangeReversed = "value.range-reversed";

    /// <summary>A text is empty where a name is needed.</summary>
    public const string TextEmpty = "text.empty";

    /// <summary>A text is longer than {max} characters.</summary>
    public const string TextTooLong = "text.too-long";

    /// <summary>An id does not match <c>[a-z][a-z0-9-]*</c>.</summary>
    public const string IdForm = "id.form";

    /// <summary>An id is used twice; {first} is where it was seen first.</summary>
    public const string IdTwice = "id.twice";

    /// <summary>A word that the order notation keeps for itself is used as a name; {known} lists such words.</summary>
    public const string IdReserved = "id.reserved";

    /// <summary>One of a list of words was expected; {known} lists them, {nearest} is the likeliest.</summary>
    public const string WordUnknown = "word.unknown";

    /// <summary>A field is not known at this place; {nearest} is the likeliest, {known} lists all.</summary>
    public const string FieldUnknown = "field.unknown";

    /// <summary>A field stands twice; {firstLine} is where it stood first.</summary>
    public const string FieldTwice = "field.twice";

    /// <summary>A field that must be there is missing.</summary>
    public const string FieldMissing = "field.missing";

    /// <summary>A field has the wrong JSON type; {expected} and {found} are each one of <see cref="FaultTypes"/>.</summary>
    public const string FieldType = "field.type";

    /// <summary>One of {fields} must be given, and only one; {given} is how many are, as a numeral.</summary>
    public const string FieldOneOf = "field.one-of";

    /// <summary>A field has no meaning beside {other}, which is written at {otherField}.</summary>
    public const string FieldNotWith = "field.not-with";

    /// <summary>A name is used twice where each is used once.</summary>
    public const string NameTwice = "name.twice";
}
