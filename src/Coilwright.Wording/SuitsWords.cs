using Coilwright.Core.Readings;

namespace Coilwright.Wording;

/// <summary>Which wrists a piece suits, in words. Places to fill: {fromMm}, {toMm}.</summary>
public sealed record SuitsWords
{
    /// <summary>From one wrist to another: {fromMm}, {toMm}.</summary>
    public required string FromTo { get; init; }

    /// <summary>From a wrist up: {fromMm}.</summary>
    public required string From { get; init; }

    /// <summary>Up to a wrist: {toMm}.</summary>
    public required string To { get; init; }

    /// <summary>None.</summary>
    public required string None { get; init; }

    /// <summary>The template for the wrists that a piece suits.</summary>
    public string Of(WristsServed wrists) => (wrists.FromMm, wrists.ToMm) switch
    {
        (null, null) => None,
        (null, _) => To,
        (_, null) => From,
        _ => FromTo,
    };
}
