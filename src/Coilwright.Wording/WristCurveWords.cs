namespace Coilwright.Wording;

/// <summary>Words on the lining-up curve. Names in braces are filled in; see <see cref="Template"/>. Lengths come as text, in the units asked for.</summary>
public sealed record WristCurveWords
{
    /// <summary>What the picture is.</summary>
    public required string Title { get; init; }

    /// <summary>Where like lies over like.</summary>
    public required string LinesUp { get; init; }

    /// <summary>Where it seldom does.</summary>
    public required string Mixed { get; init; }

    /// <summary>What the picture shows, for someone who cannot see it: {from}, {to}.</summary>
    public required string Shows { get; init; }

    /// <summary>On these wrists it is not as wished: {from}, {to}.</summary>
    public required string Fails { get; init; }
}
