namespace Coilwright.Wording;

/// <summary>Captions of the turn rows. Names in braces are filled in; see <see cref="Template"/>. Lengths come as text, in the units asked for.</summary>
public sealed record TurnRowsWords
{
    /// <summary>Caption of the wrist's size.</summary>
    public required string Wrist { get; init; }

    /// <summary>Caption of the wire in one turn.</summary>
    public required string WirePerTurn { get; init; }

    /// <summary>Caption of how many turns the beads make when worn.</summary>
    public required string TurnsWorn { get; init; }

    /// <summary>Caption of how many beads.</summary>
    public required string Beads { get; init; }

    /// <summary>Caption of where the focal lies.</summary>
    public required string Focal { get; init; }

    /// <summary>The focal lies on the top: {turn}.</summary>
    public required string FocalOnTop { get; init; }

    /// <summary>The focal lies past the top the way the beads run: {turn}, {off}.</summary>
    public required string FocalPast { get; init; }

    /// <summary>The focal lies before the top the way the beads run: {turn}, {off}.</summary>
    public required string FocalBefore { get; init; }

    /// <summary>How much of the groups lies over its own kind: {percent}.</summary>
    public required string Cover { get; init; }

    /// <summary>The same where the groups are runs of one kind: {percent}.</summary>
    public required string CoverRuns { get; init; }

    /// <summary>What the hatched bars mean.</summary>
    public required string Hatched { get; init; }

    /// <summary>What the open bars mean, where columns are wanted.</summary>
    public required string Open { get; init; }

    /// <summary>The line of the top of the wrist.</summary>
    public required string Top { get; init; }

    /// <summary>Both edges.</summary>
    public required string Underside { get; init; }

    /// <summary>The starting end of the wire.</summary>
    public required string Start { get; init; }

    /// <summary>The end strung last.</summary>
    public required string Finish { get; init; }

    /// <summary>A turn's number: {turn}.</summary>
    public required string Turn { get; init; }

    /// <summary>The line where every turn begins, where that is within the rows.</summary>
    public required string TurnsBegin { get; init; }

    /// <summary>What lines up, and how far off square: {name}, {off}.</summary>
    public required string OffSquare { get; init; }

    /// <summary>The same, shorter: {name}, {off}.</summary>
    public required string OffShort { get; init; }

    /// <summary>What lines up squarely: {name}.</summary>
    public required string Square { get; init; }

    /// <summary>How far the focal lies past the top: {off}.</summary>
    public required string PastTop { get; init; }

    /// <summary>How far the focal lies before the top: {off}.</summary>
    public required string BeforeTop { get; init; }

    /// <summary>Bare wire beyond the last bead: {length}.</summary>
    public required string BareWire { get; init; }

    /// <summary>Heading of the key.</summary>
    public required string Key { get; init; }

    /// <summary>How the key's sizes read.</summary>
    public required string KeySizes { get; init; }

    /// <summary>How many of a kind, and its size: {count}, {size}.</summary>
    public required string Use { get; init; }

    /// <summary>The same for a focal: {count}, {size}.</summary>
    public required string UseFocal { get; init; }

    /// <summary>A bead's size along and across the hole, without unit: {along}, {across}.</summary>
    public required string Size { get; init; }

    /// <summary>Beside the ruler of a picture at true size: {length}.</summary>
    public required string TrueSize { get; init; }

    /// <summary>Beside the ruler of a picture at another scale: {length}, {percent}.</summary>
    public required string Scaled { get; init; }

    /// <summary>Some letters had no room.</summary>
    public required string SomeLetters { get; init; }

    /// <summary>Some places that line up had no room for their words.</summary>
    public required string SomePlaces { get; init; }

    /// <summary>A bead pointed at: {number}, {name}, {turn}.</summary>
    public required string BeadTitle { get; init; }

    /// <summary>What the picture shows, for someone who cannot see it: {title}, {beads}, {wrist}.</summary>
    public required string Shows { get; init; }

    /// <summary>One place that lines up in words: {name}, {turn}, {next}, {place}, {off}.</summary>
    public required string ShowsPlace { get; init; }
}
