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

    /// <summary>The piece has changed since.</summary>
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
