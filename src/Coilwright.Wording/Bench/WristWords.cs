namespace Coilwright.Wording;

/// <summary>The wrist that the piece is looked at on.</summary>
public sealed record WristWords
{
    /// <summary>Heading.</summary>
    public required string Heading { get; init; }

    /// <summary>The slider.</summary>
    public required string Slider { get; init; }

    /// <summary>The size that can be typed.</summary>
    public required string Typed { get; init; }

    /// <summary>What can be typed there.</summary>
    public required string TypedHint { get; init; }

    /// <summary>What was typed is no length: {min}, {max} as lengths.</summary>
    public required string TypedWrong { get; init; }

    /// <summary>One millimetre smaller.</summary>
    public required string Smaller { get; init; }

    /// <summary>One millimetre larger.</summary>
    public required string Larger { get; init; }

    /// <summary>Back to the wrist the piece is made for: {mm}.</summary>
    public required string Back { get; init; }

    /// <summary>The piece is looked at on another wrist than its own: {mm}.</summary>
    public required string Elsewhere { get; init; }
}
