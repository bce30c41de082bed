using System.Collections.Immutable;
using Coilwright.Core.Beads;
using Coilwright.Core.StringingMaterials.MemoryWire;

namespace Coilwright.Core.Pieces;

/// <summary>The figures that are chosen or read, not derived: materials, steels, and our own choices. Read from <c>data/</c> and handed in.</summary>
public sealed record ReckoningData
{
    /// <summary>Bead materials by key.</summary>
    public required ImmutableSortedDictionary<string, BeadMaterial> Materials { get; init; }

    /// <summary>Steels by key.</summary>
    public required ImmutableSortedDictionary<string, WireSteel> Steels { get; init; }

    /// <summary>Our own choices.</summary>
    public required ReckoningChoices Choices { get; init; }

    /// <summary>Adults' wrists, each with its share of them.</summary>
    public required ImmutableArray<WeighedWrist> AdultWrists { get; init; }
}

/// <summary>Constants that are our own choice, not nature's. Each lives in <c>data/choices.json</c> with its unit and the reason.</summary>
public sealed record ReckoningChoices
{
    /// <summary>Share of the beaded length whose beads bear on the wrist: their least reach is the bearing reach.</summary>
    public required double BearingShare { get; init; }

    /// <summary>Half width of the band of the worn circumference where the wrist decides it, mm.</summary>
    public required double WornBandWristMm { get; init; }

    /// <summary>Half width of the band where the coil decides it and its size is a label's, mm.</summary>
    public required double WornBandLabelMm { get; init; }

    /// <summary>Half width of the band where the coil decides it and a loop was measured, mm.</summary>
    public required double WornBandMeasuredMm { get; init; }

    /// <summary>Least half width over which lining up is averaged, mm of wire per turn.</summary>
    public required double LeastAveragingMm { get; init; }

    /// <summary>Cover at which a piece is said to line up.</summary>
    public required double LinesUpFrom { get; init; }

    /// <summary>Cover at or below which a piece is said to be mixed.</summary>
    public required double MixedUpTo { get; init; }

    /// <summary>How much each role shows, 0 to 1.</summary>
    public required ImmutableSortedDictionary<Role, double> ShowsByRole { get; init; }

    /// <summary>Colour difference (CIEDE2000) at which likeness falls to 1/e.</summary>
    public required double LikenessColourWidth { get; init; }

    /// <summary>Difference of log area at which likeness falls to 1/e.</summary>
    public required double LikenessAreaWidth { get; init; }

    /// <summary>Likeness below which two kinds count as unlike.</summary>
    public required double LikenessFloor { get; init; }

    /// <summary>Colour difference (CIEDE2000) below which a kind of bead vanishes beside another.</summary>
    public required double VanishDifference { get; init; }

    /// <summary>Difference of L* below which two greys of a print are one.</summary>
    public required double GreyStep { get; init; }

    /// <summary>Shuffles of the same beads behind the rank.</summary>
    public required int Shuffles { get; init; }

    /// <summary>Least length that must lie over something for lining up to be judged, as a share of a turn, or of the groups judged where they are
    /// shorter.</summary>
    public required double LeastOverShare { get; init; }

    /// <summary>How far off the top a focal may lie unless the piece says, degrees.</summary>
    public required double FocalWithinDeg { get; init; }

    /// <summary>How much the ends may differ from the wanted overlap, mm.</summary>
    public required double OverlapToleranceMm { get; init; }

    /// <summary>How much a hole may be smaller than stated, mm.</summary>
    public required double BoreToleranceMm { get; init; }

    /// <summary>How many turns fewer than designed are worth a notice.</summary>
    public required double FewerTurnsFrom { get; init; }

    /// <summary>Room between coil and wrist from which a piece is said to hang loose, mm of circumference.</summary>
    public required double LooseFromMm { get; init; }

    /// <summary>Room between a bead and the turn beside it, as a piece sits, beyond which its turns are said to gape, mm.</summary>
    public required double GapesOverMm { get; init; }

    /// <summary>How far a focal may tip, as a piece sits, before that is worth a notice, degrees.</summary>
    public required double TipsOverDeg { get; init; }

    /// <summary>First wrist of the lining-up curve, mm.</summary>
    public required double CurveFromMm { get; init; }

    /// <summary>Last wrist of the lining-up curve, mm.</summary>
    public required double CurveToMm { get; init; }

    /// <summary>Step of the lining-up curve, mm.</summary>
    public required double CurveStepMm { get; init; }

    /// <summary>Draws behind the spread.</summary>
    public required int SpreadDraws { get; init; }

    /// <summary>Draws of an order on each wrist where it is judged by what nineteen of twenty do not exceed.</summary>
    public required int JudgedDraws { get; init; }

    /// <summary>Mass per worn turn from which a piece is said to be heavy for its turns, g.</summary>
    public required double HeavyTurnG { get; init; }

    /// <summary>Share of the wire's least tensile strength from which its stress is worth a notice.</summary>
    public required double StressShareFrom { get; init; }

    /// <summary>Reading error of a ruler over a row, standard deviation, mm.</summary>
    public required double RulerErrorMm { get; init; }

    /// <summary>How many beads a run of spacers or connectors may take or give in a better order, unless the piece says.</summary>
    public required int FreeRunReach { get; init; }

    /// <summary>How many beads such a run may take or give at most in another size, before whole groups go on or off, unless the piece says.</summary>
    public required int SizeRunReach { get; init; }

    /// <summary>Wires that differ in thickness by no more than this are the same wire, mm.</summary>
    public required double SameWireMm { get; init; }

    /// <summary>Coils whose loops differ by no more than this share are the same coil.</summary>
    public required double SameLoopShare { get; init; }

    /// <summary>The shortest offcut that is kept unless the maker says, in loops of its coil.</summary>
    public required double KeepOffcutLoops { get; init; }

    /// <summary>How far a measured row may differ from the beads' lengths before it is taken for a slip of the pen, as a share.</summary>
    public required double MeasuredAbsurdShare { get; init; }
}
