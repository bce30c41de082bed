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

    /// <summary>What the picture on paper shows, for someone who cannot see it: {title}, {wrist}, {percent} (may be missing).</summary>
    public required string OnPaper { get; init; }

    /// <summary>What its height means.</summary>
    public required string Axis { get; init; }

    /// <summary>The same where the groups are runs of one kind.</summary>
    public required string AxisRuns { get; init; }

    /// <summary>The wrist that is reckoned on: {wrist}.</summary>
    public required string ThisWrist { get; init; }

    /// <summary>Wrists on which the piece is not as wished.</summary>
    public required string NotAsWished { get; init; }

    /// <summary>The row of wrists.</summary>
    public required string WristRow { get; init; }

    /// <summary>The row of turns.</summary>
    public required string TurnsRow { get; init; }

    /// <summary>Nothing can be shown.</summary>
    public required string Nothing { get; init; }

    /// <summary>The thick line.</summary>
    public required string Averaged { get; init; }

    /// <summary>The thin line.</summary>
    public required string Exact { get; init; }
}
