namespace Coilwright.Wording;

/// <summary>Words of packing kits. Names in braces are filled in; see <see cref="Template"/>.</summary>
public sealed record KitWords
{
    /// <summary>What <c>kit</c> does.</summary>
    public required string Verb { get; init; }

    /// <summary><c>--spares</c>.</summary>
    public required string SparesOption { get; init; }

    /// <summary><c>--home</c>.</summary>
    public required string HomeOption { get; init; }

    /// <summary><c>--shelf</c>.</summary>
    public required string ShelfOption { get; init; }

    /// <summary><c>--out</c>.</summary>
    public required string OutOption { get; init; }

    /// <summary><c>--labels</c>: {usual}.</summary>
    public required string LabelsOption { get; init; }

    /// <summary>Title of the plan.</summary>
    public required string Title { get; init; }

    /// <summary>The report of {name} says stop.</summary>
    public required string SaysStop { get; init; }

    /// <summary>Heading of what lies in each kit of a piece: {name}, how many kits {count}, optionally which {version}.</summary>
    public required string KitHeading { get; init; }

    /// <summary>Heading of the column of key letters.</summary>
    public required string LetterColumn { get; init; }

    /// <summary>Heading of the column of what lies in a bag.</summary>
    public required string BagColumn { get; init; }

    /// <summary>The wire of one kit: {loops} loops, {cutMm}.</summary>
    public required string Wire { get; init; }

    /// <summary>Heading of the pick list.</summary>
    public required string PickHeading { get; init; }

    /// <summary>The pick list is in the order of the drawers.</summary>
    public required string ByDrawer { get; init; }

    /// <summary>Heading of the column of drawers.</summary>
    public required string DrawerColumn { get; init; }

    /// <summary>Heading of the column of how many to take.</summary>
    public required string TakeColumn { get; init; }

    /// <summary>Heading of the column of the bags that they go into.</summary>
    public required string IntoColumn { get; init; }

    /// <summary>Heading of the column of what is missing.</summary>
    public required string ShortColumn { get; init; }

    /// <summary>Some go into a bag of a piece: {times} bags with {count} each, of {name} with the key letter {letter}.</summary>
    public required string Into { get; init; }

    /// <summary>Some are laid aside: {count}.</summary>
    public required string Aside { get; init; }

    /// <summary>What is laid aside lies in no bag.</summary>
    public required string AsideNote { get; init; }

    /// <summary>The wire of all kits of {name}: {count} lengths of {loops} loops, {cutMm}.</summary>
    public required string CutAll { get; init; }

    /// <summary>Heading of how many kits what is at home makes.</summary>
    public required string NowHeading { get; init; }

    /// <summary>{count} kits of {name}; the beads {first} run out first.</summary>
    public required string Now { get; init; }

    /// <summary>With the packs {packs} more, {count} kits; the beads {first} run out then.</summary>
    public required string OneMorePack { get; init; }

    /// <summary>A pack of one of {first} is not known.</summary>
    public required string NoPackKnown { get; init; }

    /// <summary>What is not counted.</summary>
    public required string NowNote { get; init; }

    /// <summary>A file was written: {file}.</summary>
    public required string Written { get; init; }

    /// <summary>Title of the labels.</summary>
    public required string LabelsTitle { get; init; }

    /// <summary>On a bag: {use} and {spare} to spare.</summary>
    public required string LabelSpare { get; init; }

    /// <summary>On a kit: {beads} beads in {bags} bags.</summary>
    public required string LabelBeads { get; init; }

    /// <summary>On a kit: the wire to cut, {cutMm}.</summary>
    public required string LabelWire { get; init; }

    /// <summary>On a kit: which {version} of the piece it is.</summary>
    public required string LabelVersion { get; init; }

    /// <summary>Heading over how many kits each bead makes.</summary>
    public required string EachHeading { get; init; }

    /// <summary>What that picture shows: {name}, {beads}.</summary>
    public required string EachSays { get; init; }

    /// <summary>A bead in it: {letter}, {bead}, {count}.</summary>
    public required string EachBead { get; init; }

    /// <summary>What a bag's label shows: {count} of {name}, for {piece}, with the key letter {letter}.</summary>
    public required string LabelAlt { get; init; }

    /// <summary>What a kit's own label shows: {piece}.</summary>
    public required string KitLabelAlt { get; init; }
}
