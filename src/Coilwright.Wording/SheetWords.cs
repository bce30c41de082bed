namespace Coilwright.Wording;

/// <summary>Words of the printed pattern sheet. Names in braces are filled in; see <see cref="Template"/>.</summary>
public sealed record SheetWords
{
    // The page.

    /// <summary>{page}, {pages}.</summary>
    public required string PageOf { get; init; }

    /// <summary>Where a strip too long for the paper is joined: {letter}.</summary>
    public required string JoinAt { get; init; }

    /// <summary>At the foot of every page: {title}.</summary>
    public required string Foot { get; init; }

    // What it is.

    /// <summary>{turns}, {wristMm}.</summary>
    public required string Lead { get; init; }

    /// <summary>Heading over what should be mended before anything is cut.</summary>
    public required string MendFirst { get; init; }

    // Finished size.

    /// <summary>Heading.</summary>
    public required string FinishedSize { get; init; }

    /// <summary>Row: turns on the wrist.</summary>
    public required string SizeTurns { get; init; }

    /// <summary>Row: beads.</summary>
    public required string SizeBeads { get; init; }

    /// <summary>Row: round the inside, off the wrist.</summary>
    public required string SizeInside { get; init; }

    /// <summary>Row: where the ends come to lie.</summary>
    public required string SizeEnds { get; init; }

    /// <summary>The ends overlap: {mm}.</summary>
    public required string EndsOverlap { get; init; }

    /// <summary>The ends stay apart: {mm}.</summary>
    public required string EndsApart { get; init; }

    /// <summary>The ends meet.</summary>
    public required string EndsMeet { get; init; }

    /// <summary>Row: weight.</summary>
    public required string SizeWeight { get; init; }

    /// <summary>{grams}.</summary>
    public required string Grams { get; init; }

    /// <summary>Row: wrists that it suits.</summary>
    public required string SizeSuits { get; init; }

    /// <summary>Wrists that it suits.</summary>
    public required SuitsWords Suits { get; init; }

    /// <summary>Heading of what another wrist changes.</summary>
    public required string OtherSizes { get; init; }

    /// <summary>Under the curve, what its line of the wrist is: {wristMm}.</summary>
    public required string CurveNote { get; init; }

    /// <summary>Under the curve where sizes stand over it: that the curve is of the same string.</summary>
    public required string SameStringNote { get; init; }

    /// <summary>The note on other wrists.</summary>
    public required string OtherSizesNote { get; init; }

    // Materials.

    /// <summary>Heading.</summary>
    public required string Materials { get; init; }

    /// <summary>Column: key letter.</summary>
    public required string Key { get; init; }

    /// <summary>Column: the bead at true size.</summary>
    public required string TrueSize { get; init; }

    /// <summary>Column: the bead.</summary>
    public required string Bead { get; init; }

    /// <summary>Column: along the hole and across.</summary>
    public required string Size { get; init; }

    /// <summary>Column: how many go in the piece.</summary>
    public required string Use { get; init; }

    /// <summary>Column: what to buy.</summary>
    public required string Buy { get; init; }

    /// <summary>Column: what that costs.</summary>
    public required string Cost { get; init; }

    /// <summary>As long as it is wide: {alongMm}.</summary>
    public required string OneSize { get; init; }

    /// <summary>{alongMm}, {acrossMm}.</summary>
    public required string TwoSizes { get; init; }

    /// <summary>The usual units of sale, by the unit that a bead names: {packs}, {packs:form|forms}.</summary>
    public required IReadOnlyDictionary<string, string> UsualPacks { get; init; }

    /// <summary>A unit of her own: {packs}, {unit}.</summary>
    public required string OwnPacks { get; init; }

    /// <summary>Units of several beads: {packed}, {beads}.</summary>
    public required string PacksOf { get; init; }

    /// <summary>The wire: {wireMm}, optionally {gauge}.</summary>
    public required string Wire { get; init; }

    /// <summary>Its coil at rest: {insideMm}.</summary>
    public required string WireSize { get; init; }

    /// <summary>How much of it is needed: {loops}.</summary>
    public required string WireUse { get; init; }

    /// <summary>A cap among the materials.</summary>
    public required string CapItem { get; init; }

    /// <summary>How deep its hole is: {mm}.</summary>
    public required string CapSize { get; init; }

    /// <summary>A dangle among the materials, {dangle} where it has a name.</summary>
    public required string DangleItem { get; init; }

    /// <summary>How far it hangs down: {mm}.</summary>
    public required string DangleSize { get; init; }

    /// <summary>Under the materials: {cost}, and {unpriced} kinds without a price where there are some.</summary>
    public required string CostInAll { get; init; }

    /// <summary>Under the materials: sizes run along the hole, then across; packs are whole ones.</summary>
    public required string MaterialsNote { get; init; }

    // Tools.

    /// <summary>Heading.</summary>
    public required string Tools { get; init; }

    /// <summary>Shears.</summary>
    public required string ToolShears { get; init; }

    /// <summary>Pliers for end loops.</summary>
    public required string ToolPliers { get; init; }

    /// <summary>Glue for end caps.</summary>
    public required string ToolGlue { get; init; }

    /// <summary>File.</summary>
    public required string ToolFile { get; init; }

    /// <summary>Eye protection.</summary>
    public required string ToolGoggles { get; init; }

    /// <summary>Ruler.</summary>
    public required string ToolRuler { get; init; }

    // Steps.

    /// <summary>Heading.</summary>
    public required string Steps { get; init; }

    /// <summary>Heading of what comes before stringing.</summary>
    public required string ToBegin { get; init; }

    /// <summary>{loops}, {cutMm}.</summary>
    public required string CutWire { get; init; }

    /// <summary>What the cut is made of: {beadedMm}, {endsMm}, {otherMm}.</summary>
    public required string CutMadeOf { get; init; }

    /// <summary>First loop: {insideMm}, {usesMm}.</summary>
    public required string TurnFirstLoop { get; init; }

    /// <summary>First cap: {depthMm}.</summary>
    public required string GlueFirstCap { get; init; }

    /// <summary>First loop with a dangle: {insideMm}, {usesMm}, and {dangle} where it has a name.</summary>
    public required string HangFirstDangle { get; init; }

    /// <summary>Heading of the steps of a turn: {turn}, {overlap} where they string what overlaps its beginning too.</summary>
    public required string Turn { get; init; }

    /// <summary>Heading of steps that reach over several turns: {turn}, {last}, {overlap} likewise.</summary>
    public required string Turns { get; init; }

    /// <summary>Loose beads: {beads}.</summary>
    public required string String { get; init; }

    /// <summary>A group: {group}, {beads}.</summary>
    public required string StringGroup { get; init; }

    /// <summary>A group several times on end: {group}, {times}, {beads}.</summary>
    public required string StringGroupTimes { get; init; }

    /// <summary>A run: {count}, {key}.</summary>
    public required string Run { get; init; }

    /// <summary>A repeat inside a step: {times}, {beads}.</summary>
    public required string Repeat { get; init; }

    /// <summary>Beads with the same between each two of them: {each}, {between}, both runs.</summary>
    public required string Between { get; init; }

    /// <summary>Puts runs together.</summary>
    public required string RunJoin { get; init; }

    /// <summary>Puts runs together that stand between.</summary>
    public required string BetweenJoin { get; init; }

    /// <summary>At the end of a turn's steps: {beads}.</summary>
    public required string SoFar { get; init; }

    /// <summary>The same at the end of all steps: {beads}.</summary>
    public required string InAll { get; init; }

    /// <summary>Heading of what comes after stringing.</summary>
    public required string ToFinish { get; init; }

    /// <summary>Last loop: {trimMm}, {insideMm}.</summary>
    public required string TurnLastLoop { get; init; }

    /// <summary>Last cap: {trimMm}, {depthMm}.</summary>
    public required string GlueLastCap { get; init; }

    /// <summary>Last loop with a dangle: {trimMm}, {insideMm}, and {dangle} where it has a name.</summary>
    public required string HangLastDangle { get; init; }

    /// <summary>File and try on.</summary>
    public required string TryOn { get; init; }

    // Turn rows and strips.

    /// <summary>Heading.</summary>
    public required string TurnRows { get; init; }

    /// <summary>Under the heading.</summary>
    public required string TurnRowsNote { get; init; }

    /// <summary>What a further part of them shows, where one page does not hold them all: {first}, {last} of the rows.</summary>
    public required string RowsAlt { get; init; }

    /// <summary>Heading.</summary>
    public required string Strips { get; init; }

    /// <summary>Under the heading.</summary>
    public required string StripsNote { get; init; }

    /// <summary>Over the check ruler: {mm}.</summary>
    public required string CheckRuler { get; init; }

    /// <summary>Over a strip: {turn}, {overlap} where what overlaps its beginning stands on it too, {beads}, {wireMm}.</summary>
    public required string StripCaption { get; init; }

    /// <summary>What a strip shows: {turn}, {beads}.</summary>
    public required string StripAlt { get; init; }
}
