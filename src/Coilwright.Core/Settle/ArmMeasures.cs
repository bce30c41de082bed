using System.Collections.Immutable;
using Coilwright.Core.Pieces;

namespace Coilwright.Core.Settle;

/// <summary>What of an arm's measures does not go with the others.</summary>
public enum ArmMeasure
{
    /// <summary>The wrist's thickness: it does not go with its width.</summary>
    Thickness,

    /// <summary>The girth further up the arm: it does not go with the wrist's.</summary>
    GirthUp,
}

/// <summary>A measure that does not go with the others, and what would.</summary>
/// <param name="Measure">Which.</param>
/// <param name="LeastMm">The least that would do, mm.</param>
/// <param name="MostMm">The most that would do, mm.</param>
public readonly record struct ArmTrouble(ArmMeasure Measure, double LeastMm, double MostMm);

/// <summary>How an arm is held and what a maker measures of it with calipers and a tape, beside the girth of the wrist.</summary>
/// <remarks>Of width and thickness only counts how they stand to each other: how far it is round the wrist is told apart, and a squeezed wrist is no smooth oval. What is not measured is taken as usual:
/// <see cref="SettleRequest.UsualAspect"/>, and as large all along. Two that were told alike are equal.</remarks>
public sealed record ArmMeasures
{
    /// <summary>How far up the arm from the wrist the second girth is taken, mm: three fingers, where a bracelet of several turns ends. Our choice.</summary>
    public const double UpMm = 50;

    /// <summary>Least of the wrist's width or thickness that can be told, mm: a doll's.</summary>
    public const double LeastAcrossMm = 5;

    /// <summary>Most of them, mm: the widest that is <see cref="Wearer.MostWristMm"/> round.</summary>
    public const double MostAcrossMm = 200;

    /// <summary>Nothing measured, the arm level and the top of the wrist up.</summary>
    public static ArmMeasures Usual { get; } = new();

    /// <summary>How the arm is held.</summary>
    public ArmPose Pose { get; init; } = ArmPose.TopUp;

    /// <summary>From side to side, mm; null where it was not measured.</summary>
    public double? WidthMm { get; init; }

    /// <summary>From top to underside, mm; null where it was not measured.</summary>
    public double? ThicknessMm { get; init; }

    /// <summary>Round the arm <see cref="UpMm"/> up from the wrist, mm; null where it was not measured.</summary>
    public double? GirthUpMm { get; init; }

    /// <summary>What does not go together on a wrist, each measure once; none where all is well.</summary>
    /// <param name="wristMm">The wrist, mm.</param>
    public ImmutableArray<ArmTrouble> TroubleOn(double wristMm)
    {
        var troubles = ImmutableArray.CreateBuilder<ArmTrouble>();
        if (Aspect is { } aspect && !(aspect >= SettleRequest.LeastAspect && aspect <= 1)) troubles.Add(new(ArmMeasure.Thickness, SettleRequest.LeastAspect * WidthMm!.Value, WidthMm.Value));
        if (GirthUpMm is { } up && !(Math.Abs(TaperOn(wristMm, up)) <= SettleRequest.MostTaper))
            troubles.Add(new(ArmMeasure.GirthUp, wristMm - SettleRequest.MostTaper * UpMm, wristMm + SettleRequest.MostTaper * UpMm));
        return troubles.ToImmutable();
    }

    /// <summary>What to settle with on a wrist; null where something does not go together.</summary>
    /// <param name="wristMm">The wrist, mm.</param>
    public SettleRequest? On(double wristMm) => TroubleOn(wristMm).IsEmpty
        ? new SettleRequest(wristMm) { Pose = Pose, Aspect = Aspect ?? SettleRequest.UsualAspect, Taper = GirthUpMm is { } up ? TaperOn(wristMm, up) : 0 }
        : null;

    // One of the two alone says nothing.
    private double? Aspect => ThicknessMm / WidthMm;

    private static double TaperOn(double wristMm, double upMm) => (upMm - wristMm) / UpMm;
}
