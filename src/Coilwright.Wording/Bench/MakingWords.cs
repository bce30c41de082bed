namespace Coilwright.Wording;

/// <summary>What the pages of shopping and of wire have in common.</summary>
public sealed record MakingWords
{
    /// <summary>Over the pieces and how many of each.</summary>
    public required string WhatHeading { get; init; }

    /// <summary>How many of {title}.</summary>
    public required string HowMany { get; init; }

    /// <summary>One fewer.</summary>
    public required string OneFewer { get; init; }

    /// <summary>One more.</summary>
    public required string OneMore { get; init; }

    /// <summary>No piece is chosen.</summary>
    public required string Nothing { get; init; }

    /// <summary>A file was not read: {file}.</summary>
    public required string NotBroughtIn { get; init; }

    /// <summary>A list was not kept.</summary>
    public required string NotKept { get; init; }

    /// <summary>Another window kept a list meanwhile.</summary>
    public required string Behind { get; init; }
}
