namespace Coilwright.Wording;

/// <summary>Words of the answer to a buyer's "will it fit me?". Names in braces are filled in; see <see cref="Template"/>.</summary>
public sealed record FitAnswerWords
{
    /// <summary>Heading.</summary>
    public required string Heading { get; init; }

    /// <summary>For which wrist: {wristMm}.</summary>
    public required string For { get; init; }

    /// <summary>It fits: {turns} turns.</summary>
    public required string Yes { get; init; }

    /// <summary>It can be worn, but with {turns} turns in place of {designed}.</summary>
    public required string FewerTurns { get; init; }

    /// <summary>It can be worn, with {turns} turns in place of {designed}.</summary>
    public required string MoreTurns { get; init; }

    /// <summary>It hangs loose: {roomMm} of room.</summary>
    public required string HangsLoose { get; init; }

    /// <summary>It does not go once round: {turns} turns.</summary>
    public required string UnderOneTurn { get; init; }

    /// <summary>Its ends lie {mm} less far over each other than they are meant to.</summary>
    public required string EndsTooFar { get; init; }

    /// <summary>It cannot be made or worn as it is: {reasons}.</summary>
    public required string NotAsItIs { get; init; }

    /// <summary>How many turns it makes: {turns}, from {from} to {to}.</summary>
    public required string Turns { get; init; }

    /// <summary>The ends meet.</summary>
    public required string EndsMeet { get; init; }

    /// <summary>The ends lie over each other by {mm}.</summary>
    public required string EndsOverlap { get; init; }

    /// <summary>The ends stay apart by {mm}.</summary>
    public required string EndsApart { get; init; }

    /// <summary>Where the focal sits: {bead}, {angleDeg}.</summary>
    public required string Focal { get; init; }

    /// <summary>From {fromDeg} to {toDeg}.</summary>
    public required string FocalBand { get; init; }

    /// <summary>Like beads line up.</summary>
    public required string LinesUp { get; init; }

    /// <summary>Some like beads line up.</summary>
    public required string Between { get; init; }

    /// <summary>Like beads do not line up.</summary>
    public required string Mixed { get; init; }

    /// <summary>Near a border: within {bandMm}.</summary>
    public required string NearBorder { get; init; }

    /// <summary>Order it made for {wristMm}: with {mm} more of beads. {designed} turns then.</summary>
    public required string OrderMore { get; init; }

    /// <summary>Order it made for {wristMm}: with {mm} less of beads. {designed} turns then.</summary>
    public required string OrderLess { get; init; }

    /// <summary>Order it on a smaller coil for {wristMm}.</summary>
    public required string OrderSmallerCoil { get; init; }
}
