using Coilwright.Core.Beads;
using Coilwright.Core.Findings;
using Coilwright.Core.Pieces;

namespace Coilwright.Storage.Binding;

/// <summary>Every field of a piece file, object by object, and every closed list of words in it.</summary>
internal static class PieceFields
{
    public static readonly FieldSet Piece = new("format", "title", "beads", "stringingMaterial", "ends", "wearer", "measured", "order", "wishes", "pattern");

    public static readonly FieldSet Bead = new("id", "name", "shape", "lengthMm", "lengthRangeMm", "row", "toleranceMm", "widthMm", "thicknessMm", "boreMm",
        "holeOffsetMm", "endFaceMm", "wallMm", "curveRadiusMm", "matched", "lengthIs", "seat", "colours", "coating", "material", "densityGPerCm3",
        "massG", "role", "shows", "pack", "price", "lot", "aliases");

    public static readonly FieldSet BeadRow = new("count", "totalMm");
    public static readonly FieldSet Seat = new("lengthMm", "clearMm");
    public static readonly FieldSet Pack = new("unit", "beads");

    public static readonly FieldSet StringingMaterial = new("kind", "wireMm", "gauge", "steel", "loopMm", "insideMm", "centreMm", "cutMm", "cutLoops");

    public static readonly FieldSet Ends = new("start", "finish", "gripMm", "spareMm", "overlapMm");
    public static readonly FieldSet End = new("finish", "insideMm", "depthMm", "measuredMm", "dangle", "dangleMm");

    public static readonly FieldSet Wearer = new("wristMm", "easeMm", "bearingReachMm", "startAngleDeg", "child");

    public static readonly FieldSet MeasuredRow = new("what", "firstBead", "lastBead", "totalMm");
    public static readonly FieldSet MeasuredLoop = new("what", "loops", "totalMm");
    public static readonly FieldSet MeasuredEndLoop = new("what", "end", "pliers", "wireMm");

    public static readonly FieldSet Order = new("text", "list");
    public static readonly FieldSet OrderGroup = new("group", "of");

    public static readonly FieldSet Wishes = new("liningUp", "places", "groups", "longestRun", "inAnyRow", "apart", "together", "startsWith", "endsWith", "turns",
        "focalWithinDeg", "free", "judgedBy", "wrists");
    public static readonly FieldSet LongestRun = new("name", "most");
    public static readonly FieldSet InAnyRow = new("names", "upTo", "ofAny");
    public static readonly FieldSet Neighbours = new("name", "beside");
    public static readonly FieldSet Free = new("runs", "lengthWithinMm", "onHand", "mirroredHalves", "groupOrder", "standIns", "coils", "startAngle", "turns");
    public static readonly FieldSet StandIn = new("bead", "with", "everywhere");
    public static readonly FieldSet Coil = new("loopMm", "insideMm", "centreMm");
    public static readonly FieldSet StartRange = new("fromDeg", "toDeg", "stepDeg");
    public static readonly FieldSet TurnsRange = new("least", "most");
    public static readonly FieldSet FreeRun = new("bead", "least", "most");
    public static readonly FieldSet OnHand = new("bead", "beads");
    public static readonly FieldSet Wrist = new("wristMm", "weight");
    public static readonly FieldSet PlaceWish = new("fromDeg", "toDeg", "liningUp");

    public static readonly FieldSet Pattern = new("introduction", "level", "minutes", "techniques", "care", "usage", "by", "words", "testers");
    public static readonly FieldSet StepWords = new("step", "strings", "after", "before", "text");
    public static readonly FieldSet TesterNote = new("step", "strings", "after", "before", "note", "by", "version", "settled");

    public static readonly WordSet<PatternLevel> Levels = new(("beginner", PatternLevel.Beginner), ("intermediate", PatternLevel.Intermediate), ("advanced", PatternLevel.Advanced));

    public static readonly WordSet<Role> Roles = new(("main", Role.Main), ("accent", Role.Accent), ("spacer", Role.Spacer),
        ("connector", Role.Connector), ("focal", Role.Focal));

    public static readonly WordSet<CurvedLength> LengthIs = new(("arc", CurvedLength.Arc), ("chord", CurvedLength.Chord));

    public static readonly WordSet<EndFinish> Finishes = new(("turnedLoop", EndFinish.TurnedLoop), ("gluedCap", EndFinish.GluedCap), ("dangle", EndFinish.Dangle));

    public static readonly WordSet<LiningUpWish> LiningUp = new(("any", LiningUpWish.Any), ("mix", LiningUpWish.Mix), ("columns", LiningUpWish.Columns));

    public static readonly WordSet<JudgedBy> JudgedBys = new(("mean", JudgedBy.Mean), ("nineteenInTwenty", JudgedBy.NineteenInTwenty));

    public static readonly WordSet<MaterialKind> MaterialKinds = new(("memoryWire", MaterialKind.MemoryWire));

    public static readonly WordSet<MeasuredWhat> MeasuredWhats = new(("row", MeasuredWhat.Row), ("loop", MeasuredWhat.Loop), ("endLoop", MeasuredWhat.EndLoop));

    public static readonly WordSet<WhichEnd> WhichEnds = new(("start", WhichEnd.Start), ("finish", WhichEnd.Finish), ("both", WhichEnd.Both));

    /// <summary>The word that turns the whole piece so that its focal lies on the top of the wrist, in place of an angle.</summary>
    public const string FocalOnTop = "focalOnTop";
}

/// <summary>What a piece is strung on, as the file names it.</summary>
internal enum MaterialKind
{
    /// <summary>Pre-coiled memory wire.</summary>
    MemoryWire,
}

/// <summary>What a measured entry measured.</summary>
internal enum MeasuredWhat
{
    /// <summary>A stretch of beads on the wire.</summary>
    Row,

    /// <summary>Loops of the coil at rest.</summary>
    Loop,

    /// <summary>A practice end loop.</summary>
    EndLoop,
}

/// <summary>Which end of the wire.</summary>
internal enum WhichEnd
{
    /// <summary>The end strung first.</summary>
    Start,

    /// <summary>The end strung last.</summary>
    Finish,

    /// <summary>Both.</summary>
    Both,
}
