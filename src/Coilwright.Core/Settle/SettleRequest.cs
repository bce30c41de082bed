using Coilwright.Core.Geometry;
using Coilwright.Core.Settle.Contacts;

namespace Coilwright.Core.Settle;

/// <summary>Which way the arm is held: which way everything weighs.</summary>
public enum ArmPose
{
    /// <summary>Forearm level, the top of the wrist upwards.</summary>
    TopUp,

    /// <summary>Forearm level, the underside upwards.</summary>
    UndersideUp,

    /// <summary>Forearm level, on the side where beads run down from the top.</summary>
    OnItsSide,

    /// <summary>Forearm level, on the other side.</summary>
    OnTheOtherSide,

    /// <summary>The arm hanging: what runs down the arm from the starting end runs downwards.</summary>
    Hanging,

    /// <summary>The arm held up.</summary>
    HeldUp,
}

/// <summary>What to settle with beside the piece.</summary>
/// <param name="WristMm">The wrist, mm.</param>
public sealed record SettleRequest(double WristMm)
{
    /// <summary>Thickness of the wrist over its width, above 0.3, up to 1.</summary>
    public double Aspect { get; init; } = UsualAspect;

    /// <summary>How much the wrist's girth grows over each millimetre up the arm, from -0.5 to 0.5; 0: it is as large everywhere.</summary>
    public double Taper { get; init; }

    /// <summary>Which way the arm is held.</summary>
    public ArmPose Pose { get; init; } = ArmPose.TopUp;

    /// <summary>The wrist as a form.</summary>
    public WristSection Wrist => new(WristMm, Aspect, Taper);

    /// <summary>Thickness over width of a wrist unless told: an adult's is about three quarters as thick as wide. Common practice, no source.</summary>
    public const double UsualAspect = 0.75;

    /// <summary>Least thickness over width.</summary>
    public const double LeastAspect = 0.3;

    /// <summary>Most that the girth grows or shrinks over each millimetre.</summary>
    public const double MostTaper = 0.5;

    /// <summary>Which way is down, one long: x to the right as one looks at the top of the wrist, y up the arm, z away from its top.</summary>
    public static Point3 Down(ArmPose pose) => pose switch
    {
        ArmPose.TopUp => new Point3(0, 0, -1),
        ArmPose.UndersideUp => new Point3(0, 0, 1),
        ArmPose.OnItsSide => new Point3(1, 0, 0),
        ArmPose.OnTheOtherSide => new Point3(-1, 0, 0),
        ArmPose.Hanging => new Point3(0, -1, 0),
        _ => new Point3(0, 1, 0),
    };
}
