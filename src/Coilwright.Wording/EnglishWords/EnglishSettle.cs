using System.Collections.Frozen;
using Coilwright.Core.Settle;

namespace Coilwright.Wording.EnglishWords;

/// <summary>English of <see cref="SettleWords"/>.</summary>
internal static class EnglishSettle
{
    internal static SettleWords Make() => new()
    {
        Heading = "How it sits",
        Lead = "How the piece really lies on the wrist: the wire is a spring, beads touch, and everything weighs.",
        Make = "See how it sits",
        MakeAgain = "See how it sits now",
        Working = "The coil is let down onto the wrist. A long piece takes a while.",
        Stop = "Stop",
        Stopped = "Stopped.",
        Older = "The piece, the wrist or the arm is another since this was worked out.",
        Worn = "On a wrist of {wristMm:mm} it goes {turns} {turns:time|times} round, with {perTurnMm:length} of wire to a turn, and is {insideMm:length} round inside.",
        Relaxed = "Off the wrist it goes {turns} {turns:time|times} round and leaves {insideMm:length} inside.",
        Bears = "{share:percent} of its beads touch the wrist.",
        Close = "Its turns lie close: at most {gapMm:mm} between a bead and the turn beside it.",
        NoGaps = "No turn lies beside another.",
        Gapes = "The turns gape by more than {overMm:mm}: up to {gapMm:mm} between them, {angleDeg:place}, at bead {number} ({bead}).",
        Flat = "The focal lies {angleDeg:place} and sits well: it tips by {tipsDeg:deg} at most, however the arm is held.",
        Tips = "The focal lies {angleDeg:place} and tips by more than {overDeg:deg}: by up to {tipsDeg:deg}, with {arm}. Taller neighbours, or a hole nearer to its middle, steady it.",
        TooTight = "It is opened wide: the wire comes to {share:percent} of what it stands, and may keep some of the bend. A larger coil is kinder.",
        TooLoose = "It is loose: at rest it leaves {roomMm:length} more than the wrist, and will slide about. A smaller coil, or thicker beads, hold better.",
        Jumps = "It sits on a knife's edge: the least push makes it lie otherwise.",
        BeyondYield = "This wrist is too large for the wire: it would be bent beyond its strength and not spring back. What stands here is how it would lie if it held.",
        CannotClose = "The beads are too thick for this coil: they meet in its middle before it has closed. Take a larger coil or thinner beads.",
        DidNotSettle = "How it sits could not be worked out: {why}",
        Reasons = new Dictionary<SettleReason, string>
        {
            [SettleReason.SteelUnknown] = "the wire's steel is not known, so neither is how stiff it is. Name it in the piece.",
            [SettleReason.TooFewBeads] = "it takes three beads or more.",
            [SettleReason.BeadsTooLong] = "its beads are so long that the wire would bend sharply between them.",
            [SettleReason.BeadsInOnePlace] = "two beads stand at the same place of the wire.",
            [SettleReason.BeadsTooThick] = "beads stand in one another's place across the coil.",
            [SettleReason.FallsOff] = "it goes too little of the way round, or hangs too loosely, and would fall off.",
            [SettleReason.OutOfSteps] = "it had not come to rest after as many steps as are taken.",
            [SettleReason.NoProgress] = "it did not quite come to rest: something still pulls.",
        }.ToFrozenDictionary(),
        Longer = "Reckoned quickly it has {quickTurns} {quickTurns:turn|turns} of {quickPerTurnMm:length}; as it sits a turn takes {differenceMm:length} more.",
        Shorter = "Reckoned quickly it has {quickTurns} {quickTurns:turn|turns} of {quickPerTurnMm:length}; as it sits a turn takes {differenceMm:length} less.",
        WithoutWeight = "These weigh nothing here, since their mass is not known: {beads}.",
        LeftOut = "Left out: skin that gives way, rubbing, play of beads on the wire, bends that stay. The wrist is taken as a hard oval.",
        Presses = "All beads together press on the wrist with {forceN} N, the hardest of them (bead {number}, {bead}) with {mostN} N.",
        Held = "To stay where it is it needs {slidingN} N against sliding along the arm and {turningNmm} N mm against turning round it.",
        Stress = "The wire bears up to {stressMPa} MPa more than at rest{?share:, {share:percent} of the least strength of such wire}.",
        Path = "Found in {steps} {steps:step|steps}, starting as a coil {radiusMm:mm} in radius that touched nothing; less than a millionth of a newton is left over and nothing overlaps. Other shapes may be at rest too.",
        Pushes = "What pushes on what",
        Kinds = new Dictionary<PushKind, string>
        {
            [PushKind.Row] = "neighbours in the row",
            [PushKind.Turns] = "turn on turn",
            [PushKind.Wrist] = "on the wrist",
        }.ToFrozenDictionary(),
        Bead = "{number} {bead}",
        Between = "Push",
        Beads = "Beads",
        Force = "Force",
        MorePushes = "And {count} weaker {count:one|ones}.",
        Stands = "The focal, however the arm is held",
        Posed = "Worked out with {arm}.",
        Formed = "The wrist is taken {share:percent} as thick as wide{?moreMm: and {moreMm:mm} more round it {upMm:mm} up the arm}{?lessMm: and {lessMm:mm} less round it {upMm:mm} up the arm}.",
        TheArm = "The arm",
        ArmTaken = "{arm}; the wrist {share:percent} as thick as wide{?same:, as large all along}{?moreMm:, {moreMm:mm} more round it {upMm:mm} up the arm}{?lessMm:, {lessMm:mm} less round it {upMm:mm} up the arm}.",
        ArmHeld = "How it is held",
        WristWidth = "Width of the wrist",
        WristThickness = "Thickness of the wrist",
        GirthUp = "Girth {upMm:mm} up the arm",
        ArmHint = "Width from side to side and thickness from top to underside, between two books or with calipers: only how they stand to each other counts. Unless both are told the wrist is taken {share:percent} as thick as wide; without a girth further up, as large all along.",
        ThicknessTrouble = "For this width, from {leastMm:length} to {mostMm:length}.",
        GirthUpTrouble = "On this wrist, from {leastMm:length} to {mostMm:length}.",
        ArmTroubled = "First put right what is marked under The arm.",
        Arms = new Dictionary<ArmPose, string>
        {
            [ArmPose.TopUp] = "the arm level, top of the wrist up",
            [ArmPose.UndersideUp] = "the arm level, underside up",
            [ArmPose.OnItsSide] = "the arm level, turned a quarter the way the beads run",
            [ArmPose.OnTheOtherSide] = "the arm level, turned a quarter the other way",
            [ArmPose.Hanging] = "the arm upright, the finishing end down",
            [ArmPose.HeldUp] = "the arm upright, the finishing end up",
        }.ToFrozenDictionary(),
        Arm = "Arm",
        At = "Focal",
        Tipped = "Tips",
        NoRest = "not found",
        Angle = "{deg}°",
        Reckoned = "Reckoned as it sits: {circumferenceMm:length} round the wire, where the quick reckoning has {quickMm:length}.",
        ReckonedQuickly = "Reckoned quickly after all, for how it sits could not be worked out: {why}",
    };
}
