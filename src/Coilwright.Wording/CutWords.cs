namespace Coilwright.Wording;

/// <summary>Words of cutting the wire of several pieces. Names in braces are filled in; see <see cref="Template"/>.</summary>
public sealed record CutWords
{
    /// <summary>What <c>cut</c> does.</summary>
    public required string Verb { get; init; }

    /// <summary>The pieces.</summary>
    public required string Pieces { get; init; }

    /// <summary><c>--count</c>.</summary>
    public required string Count { get; init; }

    /// <summary><c>--stock</c>.</summary>
    public required string Stock { get; init; }

    /// <summary><c>--loops</c>.</summary>
    public required string Loops { get; init; }

    /// <summary><c>--packs</c>.</summary>
    public required string Packs { get; init; }

    /// <summary><c>--keep</c>.</summary>
    public required string Keep { get; init; }

    /// <summary><c>--loss</c>.</summary>
    public required string Loss { get; init; }

    /// <summary><c>--out</c>.</summary>
    public required string Out { get; init; }

    /// <summary>A file of wire at hand in the examples.</summary>
    public required string ExampleWire { get; init; }

    /// <summary>Another file of wire in the examples: what is there afterwards.</summary>
    public required string ExampleAfterwards { get; init; }

    /// <summary>Title of the plan.</summary>
    public required string Title { get; init; }

    /// <summary>Name of a pack of {loops} loops.</summary>
    public required string PackOfLoops { get; init; }

    /// <summary>Heading of what is to be cut.</summary>
    public required string WhatHeading { get; init; }

    /// <summary>Heading of the column of pieces.</summary>
    public required string PieceColumn { get; init; }

    /// <summary>Heading of the column of how many.</summary>
    public required string CountColumn { get; init; }

    /// <summary>Heading of the column of the length of one.</summary>
    public required string LengthColumn { get; init; }

    /// <summary>The report of {name} says stop.</summary>
    public required string SaysStop { get; init; }

    /// <summary>Heading of the cuts.</summary>
    public required string CutHeading { get; init; }

    /// <summary>How to count.</summary>
    public required string HowToCount { get; init; }

    /// <summary>Coils cut alike: {times} of {name}, {loops} loops or {mm} long.</summary>
    public required string Coil { get; init; }

    /// <summary>Offcuts cut alike: {times} of {name}, {mm} long.</summary>
    public required string OffcutCoil { get; init; }

    /// <summary>One cut: {letter} and {name} of the piece, {mark} to count.</summary>
    public required string Cut { get; init; }

    /// <summary>A length counted off: {loops}, {rest} after them, each where there is any, {both} where there are both.</summary>
    public required string Mark { get; init; }

    /// <summary>What is left and kept: {mark}, {mm}.</summary>
    public required string LeftKept { get; init; }

    /// <summary>What is left and too short: {mark}.</summary>
    public required string LeftShort { get; init; }

    /// <summary>Nothing is left.</summary>
    public required string LeftNone { get; init; }

    /// <summary>Heading of what was not cut.</summary>
    public required string NotCutHeading { get; init; }

    /// <summary>There is no wire of its kind: {count} of {name}, {mm} each, on wire of {wireMm} with a loop of {loopMm} of {steel}.</summary>
    public required string NoSuchWire { get; init; }

    /// <summary>Longer than any coil: {count} of {name}, {mm} each.</summary>
    public required string LongerThanAny { get; init; }

    /// <summary>Too little wire: {count} of {name}, {mm} each.</summary>
    public required string TooLittle { get; init; }

    /// <summary>How much is missing: {mm}.</summary>
    public required string Missing { get; init; }

    /// <summary>No plan leaves less missing.</summary>
    public required string MissingProven { get; init; }

    /// <summary>Perhaps a plan leaves less missing, but not less than {mm}.</summary>
    public required string MissingAtLeast { get; init; }

    /// <summary>So many more would do: {count} of {name}.</summary>
    public required string More { get; init; }

    /// <summary>Heading of the sum.</summary>
    public required string SumHeading { get; init; }

    /// <summary>What is begun: {coils} new ones and {offcuts} offcuts.</summary>
    public required string Begun { get; init; }

    /// <summary>What new wire costs: {cost}.</summary>
    public required string Cost { get; init; }

    /// <summary>No plan costs less.</summary>
    public required string CostProven { get; init; }

    /// <summary>Perhaps a plan costs less, but not less than {least}.</summary>
    public required string CostAtLeast { get; init; }

    /// <summary>No plan begins fewer new coils.</summary>
    public required string CoilsProven { get; init; }

    /// <summary>Perhaps a plan begins fewer, but not fewer than {least}.</summary>
    public required string CoilsAtLeast { get; init; }

    /// <summary>What is kept, {kept}, and what is waste, {waste}, both in mm.</summary>
    public required string KeptAndWaste { get; init; }

    /// <summary>The search was stopped.</summary>
    public required string Stopped { get; init; }

    /// <summary>Heading of the offcuts to keep.</summary>
    public required string KeepHeading { get; init; }

    /// <summary>Offcuts alike to keep: {times} of {mm}, as {mark}, from {name}.</summary>
    public required string KeepLine { get; init; }

    /// <summary>Heading of the cautions.</summary>
    public required string CautionsHeading { get; init; }

    /// <summary>The wire that is there afterwards was written: {file}.</summary>
    public required string Written { get; init; }

    /// <summary>No wire is there afterwards, so {file} was not written.</summary>
    public required string NotWritten { get; init; }
}
