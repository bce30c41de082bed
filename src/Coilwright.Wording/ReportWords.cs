namespace Coilwright.Wording;

/// <summary>Words of the text report that a maker prints and pins up. Names in braces are filled in; see <see cref="Template"/>.</summary>
public sealed record ReportWords
{
    // The piece.

    /// <summary>{wristMm}.</summary>
    public required string ForWrist { get; init; }

    /// <summary>{beads}, {kinds}, {wireMm}, optionally {gauge}.</summary>
    public required string BeadsOnWire { get; init; }

    /// <summary>{loopMm}.</summary>
    public required string CoilAtRest { get; init; }

    // Fit.

    /// <summary>Heading.</summary>
    public required string Fit { get; init; }

    /// <summary>It fits.</summary>
    public required string Fits { get; init; }

    /// <summary>It does not: {reasons}.</summary>
    public required string FitsNot { get; init; }

    /// <summary>Puts reasons together.</summary>
    public required string ReasonsJoin { get; init; }

    /// <summary>{turns}, {from}, {to}.</summary>
    public required string TurnsWorn { get; init; }

    /// <summary>{turns}.</summary>
    public required string TurnsDesigned { get; init; }

    /// <summary>{mm}, {turns}.</summary>
    public required string EndsOverlap { get; init; }

    /// <summary>{mm}, {turns}.</summary>
    public required string EndsApart { get; init; }

    /// <summary>{turns}.</summary>
    public required string EndsMeet { get; init; }

    /// <summary>Nine in ten: {fromMm}, {toMm}.</summary>
    public required string LengthBand { get; init; }

    /// <summary>{share}.</summary>
    public required string ComesOut { get; init; }

    /// <summary>{mm}.</summary>
    public required string FreeInside { get; init; }

    /// <summary>Wrists that it suits.</summary>
    public required SuitsWords Suits { get; init; }

    /// <summary>The end loop at {end} stays hidden.</summary>
    public required string LoopHidden { get; init; }

    /// <summary>The end loop at {end} shows.</summary>
    public required string LoopShows { get; init; }

    /// <summary>The end strung first.</summary>
    public required string Start { get; init; }

    /// <summary>The end strung last.</summary>
    public required string Finish { get; init; }

    // Beads.

    /// <summary>Heading.</summary>
    public required string Beads { get; init; }

    /// <summary>Column: key letter.</summary>
    public required string Key { get; init; }

    /// <summary>Column: how many go in the piece.</summary>
    public required string Use { get; init; }

    /// <summary>Column: the bead.</summary>
    public required string Bead { get; init; }

    /// <summary>Column: length along the hole.</summary>
    public required string AlongHole { get; init; }

    /// <summary>Column: measure along the arm.</summary>
    public required string Across { get; init; }

    /// <summary>Column: all of them laid straight.</summary>
    public required string LaidStraight { get; init; }

    /// <summary>Last row: all together.</summary>
    public required string Together { get; init; }

    /// <summary>{ruledMm}, {beadedMm}.</summary>
    public required string StraightAndWorn { get; init; }

    // The order, turn by turn.

    /// <summary>Heading.</summary>
    public required string OrderByTurn { get; init; }

    /// <summary>{turn}, {beads}.</summary>
    public required string Turn { get; init; }

    /// <summary>{shown}, {beads}.</summary>
    public required string OrderCutShort { get; init; }

    // The focal.

    /// <summary>Heading.</summary>
    public required string Focal { get; init; }

    /// <summary>{bead}, {number}, {turn}, {angleDeg}.</summary>
    public required string FocalLies { get; init; }

    /// <summary>{mm}.</summary>
    public required string FocalPast { get; init; }

    /// <summary>{mm}.</summary>
    public required string FocalBefore { get; init; }

    /// <summary>It lies in the middle of the top.</summary>
    public required string FocalCentred { get; init; }

    /// <summary>{mm}, {deg}.</summary>
    public required string FocalTurnBack { get; init; }

    /// <summary>{mm}, {deg}.</summary>
    public required string FocalTurnOn { get; init; }

    /// <summary>{fromDeg}, {toDeg}.</summary>
    public required string FocalBand { get; init; }

    // Lining up.

    /// <summary>Heading.</summary>
    public required string LiningUp { get; init; }

    /// <summary>{cover}: of what lies over anything.</summary>
    public required string Cover { get; init; }

    /// <summary>Nine in ten: {from}, {to}.</summary>
    public required string CoverBand { get; init; }

    /// <summary>The groups are runs of one bead, for want of named groups.</summary>
    public required string GroupsAreRuns { get; init; }

    /// <summary>{why}.</summary>
    public required string NoCover { get; init; }

    /// <summary>Over the pairs: what they are.</summary>
    public required string PairsAre { get; init; }

    /// <summary>Column: what lies over its own kind.</summary>
    public required string PairWhat { get; init; }

    /// <summary>Column: on which turns.</summary>
    public required string PairTurns { get; init; }

    /// <summary>The turns: {turn} and {next}.</summary>
    public required string PairTurnAndNext { get; init; }

    /// <summary>Column: where round the wrist.</summary>
    public required string PairWhere { get; init; }

    /// <summary>Column: how far off square.</summary>
    public required string PairOff { get; init; }

    /// <summary>Not off square at all.</summary>
    public required string PairSquare { get; init; }

    /// <summary>Column: along how much.</summary>
    public required string PairAlong { get; init; }

    /// <summary>{more}.</summary>
    public required string PairsMore { get; init; }

    /// <summary>No group lies over its own kind.</summary>
    public required string NoPairs { get; init; }

    /// <summary>{mm}.</summary>
    public required string Hidden { get; init; }

    /// <summary>{beads}, {mm}.</summary>
    public required string Repeat { get; init; }

    /// <summary>The repeat lines up.</summary>
    public required string RepeatLinesUp { get; init; }

    /// <summary>The repeat lands short of where it began: {mm}.</summary>
    public required string RepeatFallsBack { get; init; }

    /// <summary>The repeat lands further on than where it began: {mm}.</summary>
    public required string RepeatRunsAhead { get; init; }

    /// <summary>It lines up on these wrists although she wants a mix: {fromMm}, {toMm}.</summary>
    public required string MixFails { get; init; }

    /// <summary>The columns that she wants do not come on these wrists: {fromMm}, {toMm}.</summary>
    public required string ColumnsFail { get; init; }

    /// <summary>Neither the mix nor the columns come on these wrists: {fromMm}, {toMm}.</summary>
    public required string BothFail { get; init; }

    /// <summary>It is as she wishes on all wrists that were looked at: {fromMm}, {toMm}.</summary>
    public required string WishMet { get; init; }

    // Wire.

    /// <summary>Heading.</summary>
    public required string Wire { get; init; }

    /// <summary>Row: cut.</summary>
    public required string Cut { get; init; }

    /// <summary>{loops}.</summary>
    public required string Loops { get; init; }

    /// <summary>Row: of it under the beads.</summary>
    public required string UnderBeads { get; init; }

    /// <summary>Row: of it in both ends.</summary>
    public required string InEnds { get; init; }

    /// <summary>Nothing is reckoned for the pliers, as the piece names nothing.</summary>
    public required string NothingForPliers { get; init; }

    /// <summary>Row: of it for the pliers.</summary>
    public required string ForPliers { get; init; }

    /// <summary>Row: of it to spare.</summary>
    public required string Spare { get; init; }

    /// <summary>{startMm}, {finishMm}.</summary>
    public required string Trim { get; init; }

    /// <summary>{mm} left over.</summary>
    public required string LeftOver { get; init; }

    /// <summary>{mm} short.</summary>
    public required string CutShort { get; init; }

    // Holes, weight, notices, cautions.

    /// <summary>Heading.</summary>
    public required string Holes { get; init; }

    /// <summary>Heading.</summary>
    public required string Weight { get; init; }

    /// <summary>{total}, {perTurn}, {beads}, {wire} in g.</summary>
    public required string WeighsInAll { get; init; }

    /// <summary>{grams}.</summary>
    public required string ForThePost { get; init; }

    /// <summary>{why}.</summary>
    public required string WeightUnknown { get; init; }

    /// <summary>Heading.</summary>
    public required string Notices { get; init; }

    /// <summary>Nothing to mind.</summary>
    public required string NoNotices { get; init; }

    /// <summary>Begins what she can do.</summary>
    public required string WhatToDo { get; init; }

    /// <summary>Heading.</summary>
    public required string Cautions { get; init; }

    // Details: the only place where the engine's words stand.

    /// <summary>Heading.</summary>
    public required string Details { get; init; }

    /// <summary>{mm}, {bandMm}, {by}.</summary>
    public required string WornCircumference { get; init; }

    /// <summary>{mm}, {pitchMm}, {reachMm}.</summary>
    public required string WirePerTurn { get; init; }

    /// <summary>{cover}, {exact}, {averagingMm}.</summary>
    public required string CoverDetail { get; init; }

    /// <summary>{share}, {chance}, {relative}.</summary>
    public required string ShareDetail { get; init; }

    /// <summary>{rank}, {lower} of 100, {seed}.</summary>
    public required string RankDetail { get; init; }

    /// <summary>{strict}.</summary>
    public required string StrictDetail { get; init; }

    /// <summary>{draws}, {sdMm}.</summary>
    public required string SpreadDetail { get; init; }

    /// <summary>{moment}, {stress}, optionally {strength}.</summary>
    public required string StrengthDetail { get; init; }

    /// <summary>{names}, {why}.</summary>
    public required string NotHad { get; init; }

    /// <summary>Heading of the table over wrists.</summary>
    public required string OtherWrists { get; init; }

    /// <summary>Column: wrist.</summary>
    public required string Wrist { get; init; }

    /// <summary>Column: turns.</summary>
    public required string Turns { get; init; }

    /// <summary>Column: over its own kind.</summary>
    public required string OverOwnKind { get; init; }

    /// <summary>Mark: fails the wish.</summary>
    public required string FailsWish { get; init; }
}
