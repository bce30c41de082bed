namespace Coilwright.Wording;

/// <summary>The page of the wire.</summary>
public sealed record CutPageWords
{
    /// <summary>Heading.</summary>
    public required string Heading { get; init; }

    /// <summary>What it is for.</summary>
    public required string Lead { get; init; }

    /// <summary>Over the wire at hand.</summary>
    public required string WireHeading { get; init; }

    /// <summary>There is none.</summary>
    public required string NoWire { get; init; }

    /// <summary>A lot: {mm} long, {loops} loops, {wireMm} thick; an {offcut} or new, {count} of it or {any} number, at {price}.</summary>
    public required string LotSays { get; init; }

    /// <summary>Takes a lot out.</summary>
    public required string TakeOut { get; init; }

    /// <summary>Opens the form of more wire.</summary>
    public required string Add { get; init; }

    /// <summary>Whose wire it is.</summary>
    public required string WireOf { get; init; }

    /// <summary>What it is.</summary>
    public required string What { get; init; }

    /// <summary>New packs.</summary>
    public required string Packs { get; init; }

    /// <summary>An offcut.</summary>
    public required string Offcut { get; init; }

    /// <summary>Loops in a pack.</summary>
    public required string Loops { get; init; }

    /// <summary>Length of an offcut.</summary>
    public required string Length { get; init; }

    /// <summary>Price of a pack.</summary>
    public required string Price { get; init; }

    /// <summary>How many packs.</summary>
    public required string HowManyPacks { get; init; }

    /// <summary>How many offcuts.</summary>
    public required string HowManyOffcuts { get; init; }

    /// <summary>Notes it.</summary>
    public required string AddIt { get; init; }

    /// <summary>Name of an offcut: of {title}.</summary>
    public required string OffcutOf { get; init; }

    /// <summary>Name of packs of {loops} loops for {title}.</summary>
    public required string PacksFor { get; init; }

    /// <summary>Brings a file of wire in.</summary>
    public required string Bring { get; init; }

    /// <summary>The list that is kept cannot be read.</summary>
    public required string Unreadable { get; init; }

    /// <summary>It is being planned.</summary>
    public required string Planning { get; init; }

    /// <summary>What was planned is cut.</summary>
    public required string ItIsCut { get; init; }

    /// <summary>What that does.</summary>
    public required string ItIsCutHint { get; init; }

    /// <summary>It was noted.</summary>
    public required string Done { get; init; }
}
