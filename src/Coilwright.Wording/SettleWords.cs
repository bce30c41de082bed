using System.Collections.Frozen;
using Coilwright.Core.Settle;

namespace Coilwright.Wording;

/// <summary>Words of how a piece lies when it is worn.</summary>
public sealed record SettleWords
{
    /// <summary>Heading of it.</summary>
    public required string Heading { get; init; }

    /// <summary>What it is for.</summary>
    public required string Lead { get; init; }

    /// <summary>Works it out.</summary>
    public required string Make { get; init; }

    /// <summary>Works it out anew after a change.</summary>
    public required string MakeAgain { get; init; }

    /// <summary>It is being worked out.</summary>
    public required string Working { get; init; }

    /// <summary>Stops it.</summary>
    public required string Stop { get; init; }

    /// <summary>It was stopped.</summary>
    public required string Stopped { get; init; }

    /// <summary>The piece, the wrist or the arm is another since.</summary>
    public required string Older { get; init; }

    /// <summary>As worn: {wristMm}, {turns}, {perTurnMm}, {insideMm}.</summary>
    public required string Worn { get; init; }

    /// <summary>At rest: {turns}, {insideMm}.</summary>
    public required string Relaxed { get; init; }

    /// <summary>How much of it touches the wrist: {share}.</summary>
    public required string Bears { get; init; }

    /// <summary>The turns lie close: {gapMm}.</summary>
    public required string Close { get; init; }

    /// <summary>No turn lies beside another.</summary>
    public required string NoGaps { get; init; }

    /// <summary>The turns gape: {gapMm}, over {overMm}, {angleDeg}, {number} and {bead} of the bead, counted from 1.</summary>
    public required string Gapes { get; init; }

    /// <summary>The focal sits flat: {angleDeg}, {tipsDeg} at most.</summary>
    public required string Flat { get; init; }

    /// <summary>The focal tips: {angleDeg}, {tipsDeg} at most, over {overDeg}, {arm} for how the arm is held then.</summary>
    public required string Tips { get; init; }

    /// <summary>What keeps a tipping focal once it is set straight: {slopeDeg}, the slope on which what touches it has to lie still.</summary>
    public required string Kept { get; init; }

    /// <summary>Set straight nothing presses on the focal that could keep it so.</summary>
    public required string NotKept { get; init; }

    /// <summary>Opened so far that it may keep the bend: {share} of the strength.</summary>
    public required string TooTight { get; init; }

    /// <summary>So much room that it slides about: {roomMm}.</summary>
    public required string TooLoose { get; init; }

    /// <summary>The least push would make it lie otherwise.</summary>
    public required string Jumps { get; init; }

    /// <summary>Beyond the wire's strength.</summary>
    public required string BeyondYield { get; init; }

    /// <summary>Beads hold the coil open.</summary>
    public required string CannotClose { get; init; }

    /// <summary>No rest was found: {why}.</summary>
    public required string DidNotSettle { get; init; }

    /// <summary>Why no rest was found.</summary>
    public required FrozenDictionary<SettleReason, string> Reasons { get; init; }

    /// <summary>Against the quick reckoning, a longer turn: {quickTurns}, {quickPerTurnMm}, {differenceMm}.</summary>
    public required string Longer { get; init; }

    /// <summary>Against the quick reckoning, a shorter turn: {quickTurns}, {quickPerTurnMm}, {differenceMm}.</summary>
    public required string Shorter { get; init; }

    /// <summary>Beads that weigh nothing here: {beads}.</summary>
    public required string WithoutWeight { get; init; }

    /// <summary>What is left out.</summary>
    public required string LeftOut { get; init; }

    /// <summary>What all beads press on the wrist with: {forceN}, and the hardest, {mostN}, {number}, {bead}.</summary>
    public required string Presses { get; init; }

    /// <summary>What holds it in its place: {slidingN}, {turningNmm}.</summary>
    public required string Held { get; init; }

    /// <summary>Stress: {stressMPa}, {share} of the least strength where that is known.</summary>
    public required string Stress { get; init; }

    /// <summary>How it was found: {steps}, {radiusMm} of the helix that it started from.</summary>
    public required string Path { get; init; }

    /// <summary>The list of pushes.</summary>
    public required string Pushes { get; init; }

    /// <summary>What pushes.</summary>
    public required FrozenDictionary<PushKind, string> Kinds { get; init; }

    /// <summary>A bead in a list: {number}, counted from 1, and {bead}.</summary>
    public required string Bead { get; init; }

    /// <summary>Heading of the column of what pushes.</summary>
    public required string Between { get; init; }

    /// <summary>Heading of the column of beads.</summary>
    public required string Beads { get; init; }

    /// <summary>Heading of the column of forces.</summary>
    public required string Force { get; init; }

    /// <summary>Pushes that are not shown: {count}.</summary>
    public required string MorePushes { get; init; }

    /// <summary>The focal with the arm held each way.</summary>
    public required string Stands { get; init; }

    /// <summary>The arm was held otherwise than level with the top of the wrist up: {arm}.</summary>
    public required string Posed { get; init; }

    /// <summary>The wrist was taken as otherwise than usual: {share} as thick as wide, and where it is not as large all along {moreMm} or {lessMm} round it, {upMm} up the arm.</summary>
    public required string Formed { get; init; }

    /// <summary>The arm, which can be told otherwise: heading.</summary>
    public required string TheArm { get; init; }

    /// <summary>What it is taken as: {arm} for how it is held, {share} as thick as wide, {moreMm} or {lessMm} round it, {upMm} up the arm, or {same} where it is as large all along.</summary>
    public required string ArmTaken { get; init; }

    /// <summary>How it is held.</summary>
    public required string ArmHeld { get; init; }

    /// <summary>The wrist from side to side.</summary>
    public required string WristWidth { get; init; }

    /// <summary>The wrist from top to underside.</summary>
    public required string WristThickness { get; init; }

    /// <summary>Round the arm further up: {upMm}.</summary>
    public required string GirthUp { get; init; }

    /// <summary>How to measure it, and what is taken for what is not measured: {share} as thick as wide.</summary>
    public required string ArmHint { get; init; }

    /// <summary>The thickness does not go with the width: {leastMm}, {mostMm}.</summary>
    public required string ThicknessTrouble { get; init; }

    /// <summary>The girth further up does not go with the wrist's: {leastMm}, {mostMm}.</summary>
    public required string GirthUpTrouble { get; init; }

    /// <summary>It is not worked out while something about the arm does not go together.</summary>
    public required string ArmTroubled { get; init; }

    /// <summary>Ways of holding the arm.</summary>
    public required FrozenDictionary<ArmPose, string> Arms { get; init; }

    /// <summary>Heading of the column of ways of holding the arm.</summary>
    public required string Arm { get; init; }

    /// <summary>Heading of the column of where the focal is.</summary>
    public required string At { get; init; }

    /// <summary>Heading of the column of how far it tips.</summary>
    public required string Tipped { get; init; }

    /// <summary>Where no rest was found.</summary>
    public required string NoRest { get; init; }

    /// <summary>An angle, {deg}.</summary>
    public required string Angle { get; init; }

    /// <summary>Reckoned with what settling found: {circumferenceMm}, {quickMm}.</summary>
    public required string Reckoned { get; init; }

    /// <summary>Reckoned quickly after all, since no rest was found: {why}.</summary>
    public required string ReckonedQuickly { get; init; }
}
