using System.Collections.Frozen;

namespace Coilwright.Wording;

/// <summary>Words of a listing to copy. Names in braces are filled in; see <see cref="Template"/>.</summary>
public sealed record ListingWords
{
    /// <summary>What <c>listing</c> does.</summary>
    public required string Verb { get; init; }

    /// <summary><c>--wrist</c>.</summary>
    public required string WristOption { get; init; }

    /// <summary><c>--out</c>.</summary>
    public required string OutOption { get; init; }

    /// <summary>A file was written: {file}.</summary>
    public required string Written { get; init; }

    /// <summary>Heading of a listing.</summary>
    public required string Heading { get; init; }

    /// <summary>Heading over the title line.</summary>
    public required string TitleHeading { get; init; }

    /// <summary>Heading over the short form: at most {most} signs.</summary>
    public required string SummaryHeading { get; init; }

    /// <summary>Heading over the whole text.</summary>
    public required string TextHeading { get; init; }

    /// <summary>The title line: {title}, {turns} turns, materials {materials}.</summary>
    public required string TitleLine { get; init; }

    /// <summary>What it is: {beads} beads, {turns} turns.</summary>
    public required string WhatItIs { get; init; }

    /// <summary>What it is, short: {beads} beads, {turns} turns.</summary>
    public required string ShortWhat { get; init; }

    /// <summary>The wrists, short: {fromMm} to {toMm}.</summary>
    public required string ShortSuits { get; init; }

    /// <summary>Heading of the size.</summary>
    public required string SizeHeading { get; init; }

    /// <summary>From end to end along the wire: {mm}.</summary>
    public required string Length { get; init; }

    /// <summary>Width on the arm: {mm}.</summary>
    public required string Width { get; init; }

    /// <summary>Thickest bead: {mm}.</summary>
    public required string Thickness { get; init; }

    /// <summary>Inside, off the wrist: {mm} round, {acrossMm} across.</summary>
    public required string Inside { get; init; }

    /// <summary>Weight: {mass}.</summary>
    public required string Weight { get; init; }

    /// <summary>A mass in {grams} and {ounces}.</summary>
    public required string Mass { get; init; }

    /// <summary>The weight is not known.</summary>
    public required string WeightUnknown { get; init; }

    /// <summary>Heading of the wrists that it suits.</summary>
    public required string SuitsHeading { get; init; }

    /// <summary>How to measure, and how far it is known: within {bandMm}.</summary>
    public required string SuitsNote { get; init; }

    /// <summary>Heading of the materials.</summary>
    public required string MaterialsHeading { get; init; }

    /// <summary>A kind of bead: {count} of {name}, of {material}, {lengthMm} along the hole, {widthMm} across.</summary>
    public required string Kind { get; init; }

    /// <summary>The wire: {steel}, {mm} thick.</summary>
    public required string WireSteel { get; init; }

    /// <summary>The wire, of a steel that is not known, {mm} thick.</summary>
    public required string WireUnknown { get; init; }

    /// <summary>Both ends are turned.</summary>
    public required string EndsLoops { get; init; }

    /// <summary>Both ends are glued into caps.</summary>
    public required string EndsCaps { get; init; }

    /// <summary>One of each.</summary>
    public required string EndsMixed { get; init; }

    /// <summary>Both ends are turned, and a dangle hangs in both.</summary>
    public required string EndsDangles { get; init; }

    /// <summary>Both ends are turned, and a dangle hangs in one.</summary>
    public required string EndsDangle { get; init; }

    /// <summary>One end has a dangle, the other a cap.</summary>
    public required string EndsDangleAndCap { get; init; }

    /// <summary>Heading of metals.</summary>
    public required string MetalsHeading { get; init; }

    /// <summary>Metal beads: {names}.</summary>
    public required string MetalBeads { get; init; }

    /// <summary>No bead is of metal.</summary>
    public required string NoMetalBeads { get; init; }

    /// <summary>Of some beads the material is not known.</summary>
    public required string UnknownBeads { get; init; }

    /// <summary>To a buyer: metal on the skin, and what is not claimed.</summary>
    public required string MetalsNote { get; init; }

    /// <summary>Heading of how it is worn.</summary>
    public required string WearHeading { get; init; }

    /// <summary>How it is put on.</summary>
    public required string Wear { get; init; }

    /// <summary>Heading of the care.</summary>
    public required string CareHeading { get; init; }

    /// <summary>Care of any piece.</summary>
    public required string Care { get; init; }

    /// <summary>Care of a coating.</summary>
    public required string CareCoated { get; init; }

    /// <summary>Care of what soaks or scratches: {names}.</summary>
    public required string CarePorous { get; init; }

    /// <summary>Care of metal that tarnishes.</summary>
    public required string CareMetal { get; init; }

    /// <summary>Heading of the cautions.</summary>
    public required string CautionsHeading { get; init; }

    /// <summary>To a buyer: the ends.</summary>
    public required string SharpEnds { get; init; }

    /// <summary>To the maker: {count} kinds of {kinds} would go into the cylinder, {insideMm} wide.</summary>
    public required string SmallParts { get; init; }

    /// <summary>Heading of limits on metals, for the maker.</summary>
    public required string LimitsHeading { get; init; }

    /// <summary>What the limits are and are not.</summary>
    public required string LimitsNote { get; init; }

    /// <summary>A limit: {what}, {value} {unit}, by {source}.</summary>
    public required string Limit { get; init; }

    /// <summary>The report says stop.</summary>
    public required string SaysStop { get; init; }

    /// <summary>Bead materials by their key in the data.</summary>
    public required FrozenDictionary<string, string> Materials { get; init; }

    /// <summary>Steels of memory wire by their key in the data.</summary>
    public required FrozenDictionary<string, string> Steels { get; init; }

    /// <summary>What a limit on a metal is about, by its key in the data.</summary>
    public required FrozenDictionary<string, string> Limits { get; init; }
}
