namespace Coilwright.Wording;

/// <summary>What the program says where it was started.</summary>
public sealed record StartWords
{
    /// <summary>Where the bench can be opened: {address}.</summary>
    public required string OpenAt { get; init; }

    /// <summary>How it is ended.</summary>
    public required string ToStop { get; init; }

    /// <summary>The port she asked for is in use: {port}.</summary>
    public required string PortTaken { get; init; }

    /// <summary>An option was not understood: {option}.</summary>
    public required string BadOption { get; init; }

    /// <summary>A folder and a database were named.</summary>
    public required string TwoPlaces { get; init; }
}
