namespace Coilwright.Wording;

/// <summary>Words of the sizes of a design. Names in braces are filled in; see <see cref="Template"/>.</summary>
public sealed record SizesWords
{
    /// <summary>Heading over all sizes.</summary>
    public required string Heading { get; init; }

    /// <summary>What every size keeps where the piece says how its ends lie: {turns}, {overlapMm}.</summary>
    public required string KeepsOverlap { get; init; }

    /// <summary>What every size keeps else: {turns}.</summary>
    public required string KeepsTurns { get; init; }

    /// <summary>That both halves stay mirrored.</summary>
    public required string KeepsMirrored { get; init; }

    /// <summary>A size by its wrist: {wristMm}.</summary>
    public required string Name { get; init; }

    /// <summary>Title of a size as a piece of its own: {title}, {wristMm}.</summary>
    public required string Title { get; init; }

    /// <summary>Column: the wrist.</summary>
    public required string Wrist { get; init; }

    /// <summary>Column: beads.</summary>
    public required string Beads { get; init; }

    /// <summary>Column: turns worn.</summary>
    public required string Turns { get; init; }

    /// <summary>Column: how far the length is off.</summary>
    public required string Length { get; init; }

    /// <summary>Column: the coil.</summary>
    public required string Coil { get; init; }

    /// <summary>Column: wire to cut.</summary>
    public required string ToCut { get; init; }

    /// <summary>Column: where the focal lies.</summary>
    public required string Focal { get; init; }

    /// <summary>Column: what lies against the wish.</summary>
    public required string Against { get; init; }

    /// <summary>Column: what changes from the base size.</summary>
    public required string Changes { get; init; }

    /// <summary>Loops in the column of wire to cut: {loops}.</summary>
    public required string Loops { get; init; }

    /// <summary>A coil by its diameter: {insideMm}.</summary>
    public required string CoilSize { get; init; }

    /// <summary>A share: {share}.</summary>
    public required string Share { get; init; }

    /// <summary>The length is as wanted, to what anyone sees.</summary>
    public required string AsWanted { get; init; }

    /// <summary>Too long, in a column: {mm}.</summary>
    public required string Long { get; init; }

    /// <summary>Too short, in a column: {mm}.</summary>
    public required string Short { get; init; }

    /// <summary>The size is the base size.</summary>
    public required string IsBase { get; init; }

    /// <summary>The order is the base size's.</summary>
    public required string Unchanged { get; init; }

    /// <summary>More beads in runs: {by}, {bead}, {one} for the only gap or {many} for several.</summary>
    public required string RunsMore { get; init; }

    /// <summary>Fewer beads in runs: {by}, {bead}, {one} for the only gap or {many} for several.</summary>
    public required string RunsFewer { get; init; }

    /// <summary>More groups at both ends: {count}, {what}.</summary>
    public required string MoreAtEachEnd { get; init; }

    /// <summary>Fewer groups at both ends: {count}, {what}.</summary>
    public required string FewerAtEachEnd { get; init; }

    /// <summary>More groups at the start: {count}, {what}.</summary>
    public required string MoreAtStart { get; init; }

    /// <summary>Fewer groups at the start: {count}, {what}.</summary>
    public required string FewerAtStart { get; init; }

    /// <summary>More groups at the finish: {count}, {what}.</summary>
    public required string MoreAtFinish { get; init; }

    /// <summary>Fewer groups at the finish: {count}, {what}.</summary>
    public required string FewerAtFinish { get; init; }

    /// <summary>A named group with what stands beside it: {group}, {beside} possibly missing.</summary>
    public required string Group { get; init; }

    /// <summary>Beads that are put on or taken off so many times: {count}, {beads}.</summary>
    public required string Times { get; init; }

    /// <summary>So many beads of one kind: {count}, {bead}.</summary>
    public required string Run { get; init; }

    /// <summary>Between the last two of a list.</summary>
    public required string And { get; init; }

    /// <summary>Between two changes.</summary>
    public required string Then { get; init; }

    /// <summary>The length does not come out, too short: {mm}, {toleranceMm}.</summary>
    public required string TooShort { get; init; }

    /// <summary>The length does not come out, too long: {mm}, {toleranceMm}.</summary>
    public required string TooLong { get; init; }

    /// <summary>It is strung on another coil: {insideMm}.</summary>
    public required string OtherCoil { get; init; }

    /// <summary>A smaller coil is wanted: {loopMm} of wire round this wrist.</summary>
    public required string SmallerCoil { get; init; }

    /// <summary>A larger coil is wanted: {loopMm} of wire round this wrist.</summary>
    public required string LargerCoil { get; init; }

    /// <summary>The wish fails on this wrist.</summary>
    public required string WishFails { get; init; }

    /// <summary>That some size does not come out, for the head of a table: {sizes} how many.</summary>
    public required string SomeDoNot { get; init; }

    /// <summary>How gaps are counted.</summary>
    public required string GapsNote { get; init; }

    /// <summary>Where a gap of the base size is: {gap}, {where}.</summary>
    public required string Gap { get; init; }

    /// <summary>Heading of the materials of all sizes.</summary>
    public required string Materials { get; init; }

    /// <summary>Column: the bead.</summary>
    public required string Bead { get; init; }

    /// <summary>Column: the most that any size takes.</summary>
    public required string Most { get; init; }

    /// <summary>Column: one of each size.</summary>
    public required string OneOfEach { get; init; }

    /// <summary>Column: packs for one of each size.</summary>
    public required string Buy { get; init; }

    /// <summary>Row: all beads of a size.</summary>
    public required string Together { get; init; }

    /// <summary>The same in one short word.</summary>
    public required string All { get; init; }

    /// <summary>Row: wire to cut, mm.</summary>
    public required string Wire { get; init; }

    /// <summary>What the columns of the materials mean.</summary>
    public required string MaterialsNote { get; init; }

    /// <summary>What the most of any size is good for.</summary>
    public required string MostNote { get; init; }

    /// <summary>A size was written: {file}.</summary>
    public required string Written { get; init; }
}
