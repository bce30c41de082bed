using System.Collections.Immutable;
using Coilwright.Core.Beads;
using Coilwright.Core.Colour;
using Coilwright.Core.Findings;
using Coilwright.Core.Pieces;
using Coilwright.Core.Stringing;
using Coilwright.Core.StringingMaterials.MemoryWire;

namespace Coilwright.Core.Tests;

/// <summary>Small pieces made in code, of nobody's design, for tests of the model.</summary>
public static class SamplePieces
{
    public static ReckoningChoices Choices { get; } = new()
    {
        BearingShare = 1.0 / 6,
        WornBandWristMm = 10,
        WornBandLabelMm = 7.5,
        WornBandMeasuredMm = 5,
        LeastAveragingMm = 4,
        LinesUpFrom = 0.30,
        MixedUpTo = 0.20,
        ShowsByRole = new Dictionary<Role, double>
        {
            [Role.Main] = 1,
            [Role.Accent] = 0.8,
            [Role.Spacer] = 0.3,
            [Role.Connector] = 0.5,
            [Role.Focal] = 1,
        }.ToImmutableSortedDictionary(),
        LikenessColourWidth = 8,
        LikenessAreaWidth = 0.4,
        LikenessFloor = 0.05,
        VanishDifference = 5,
        GreyStep = 8,
        Shuffles = 400,
        LeastOverShare = 0.1,
        FocalWithinDeg = 20,
        OverlapToleranceMm = 5,
        BoreToleranceMm = 0.1,
        FewerTurnsFrom = 0.25,
        LooseFromMm = 15,
        GapesOverMm = 2,
        TipsOverDeg = 10,
        CurveFromMm = 138,
        CurveToMm = 198,
        CurveStepMm = 1,
        SpreadDraws = 400,
        JudgedDraws = 200,
        HeavyTurnG = 20,
        StressShareFrom = 0.7,
        RulerErrorMm = 0.5,
        FreeRunReach = 2,
        SizeRunReach = 4,
        SameWireMm = 0.02,
        SameLoopShare = 0.03,
        KeepOffcutLoops = 1,
        MeasuredAbsurdShare = 0.25,
    };

    public static ReckoningData Data { get; } = new()
    {
        Materials = ImmutableSortedDictionary<string, BeadMaterial>.Empty,
        Steels = ImmutableSortedDictionary<string, WireSteel>.Empty,
        Choices = Choices,
        AdultWrists = [new WeighedWrist(150, 0.3), new WeighedWrist(165, 0.4), new WeighedWrist(180, 0.3)],
    };

    public static WireSteel Stainless { get; } = new("stainless-302", 7.916, 193_053, 68_948, "0.286 lb/in3 and 28e6 psi, spring wire handbook table");

    public static Bead Bead(string id, string shape, double length, double? width = null, double? thickness = null, double? bore = 1.0,
        Role role = Role.Main, string? colour = null, Func<BeadDescription, BeadDescription>? with = null)
    {
        var description = new BeadDescription
        {
            Id = id,
            Shape = shape,
            Length = new BeadLength.Nominal(length),
            WidthMm = width,
            ThicknessMm = thickness,
            BoreMm = bore,
            Role = role,
            Colours = colour is null ? [] : [Srgb.TryParse(colour, out var c) ? c : throw new ArgumentException(colour)],
            DensityGPerCm3 = 2.5,
        };
        return Core.Beads.Bead.TryMake(with is null ? description : with(description), out var bead, out var faults)
            ? bead! : throw new ArgumentException(string.Join("; ", faults));
    }

    public static Piece Piece(ImmutableArray<Bead> beads, IEnumerable<int> kinds, double wristMm = 165, double loopMm = 188.5,
        ImmutableArray<GroupRun> groups = default) => new()
        {
            Title = "Sample",
            Beads = beads,
            Wire = new CoilWire(0.62, CoilDatum.MeasuredLoop, loopMm, Stainless),
            Ends = new WireEnds(new WireEnd(EndFinish.TurnedLoop, 3), new WireEnd(EndFinish.TurnedLoop, 3), 20, 0),
            Wearer = new Wearer(wristMm, 0),
            Order = new StringingOrder([.. kinds], groups.IsDefault ? [] : groups),
        };
}
