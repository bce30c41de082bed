using System.Collections.Frozen;
using Coilwright.Core.Settle;

namespace Coilwright.Wording.GermanWords;

/// <summary>German of <see cref="SettleWords"/>.</summary>
internal static class GermanSettle
{
    internal static SettleWords Make() => new()
    {
        Heading = "Wie es sitzt",
        Lead = "Wie das Stück wirklich am Handgelenk liegt: Der Draht ist eine Feder, Perlen berühren sich, und alles hat Gewicht.",
        Make = "Ansehen, wie es sitzt",
        MakeAgain = "Ansehen, wie es jetzt sitzt",
        Working = "Die Spirale wird auf das Handgelenk herabgelassen. Ein langes Stück braucht eine Weile.",
        Stop = "Anhalten",
        Stopped = "Angehalten.",
        Older = "Das Stück, das Handgelenk oder der Arm ist ein anderer, seit dies ermittelt wurde.",
        Worn = "Um ein Handgelenk von {wristMm:mm} geht es {turns}-mal herum, mit {perTurnMm:length} Draht je Windung, und misst innen rundherum {insideMm:length}.",
        Relaxed = "Abgelegt geht es {turns}-mal herum und lässt innen {insideMm:length} frei.",
        Bears = "{share:percent} seiner Perlen berühren das Handgelenk.",
        Close = "Die Windungen liegen dicht: höchstens {gapMm:mm} zwischen einer Perle und der Windung daneben.",
        NoGaps = "Keine Windung liegt neben einer anderen.",
        Gapes = "Die Windungen klaffen um mehr als {overMm:mm}: bis zu {gapMm:mm} dazwischen, {angleDeg:place}, bei Perle {number} ({bead}).",
        Flat = "Der Blickfang liegt {angleDeg:place} und sitzt gut: Er kippt um höchstens {tipsDeg:deg}, wie auch der Arm gehalten wird.",
        Tips = "Der Blickfang liegt {angleDeg:place} und kippt um mehr als {overDeg:deg}: um bis zu {tipsDeg:deg}, {arm}. Höhere Nachbarn oder ein Loch näher an seiner Mitte geben ihm Halt.",
        TooTight = "Es ist weit aufgebogen: Der Draht kommt auf {share:percent} dessen, was er aushält, und behält vielleicht etwas davon. Eine größere Spirale schont ihn.",
        TooLoose = "Es sitzt locker: In Ruhe lässt es {roomMm:length} mehr frei, als das Handgelenk misst, und rutscht umher. Eine kleinere Spirale oder dickere Perlen halten besser.",
        Jumps = "Es steht auf der Kippe: Der kleinste Stoß, und es liegt anders.",
        BeyondYield = "Dieses Handgelenk ist zu groß für den Draht: Er würde über seine Festigkeit gebogen und nicht zurückfedern. Hier steht, wie es läge, wenn er hielte.",
        CannotClose = "Die Perlen sind zu dick für diese Spirale: Sie treffen sich in der Mitte, ehe sie geschlossen ist. Eine größere Spirale oder dünnere Perlen nehmen.",
        DidNotSettle = "Wie es sitzt, ließ sich nicht ermitteln: {why}",
        Reasons = new Dictionary<SettleReason, string>
        {
            [SettleReason.SteelUnknown] = "Der Stahl des Drahts ist nicht bekannt und damit nicht, wie steif er ist. Im Stück angeben.",
            [SettleReason.TooFewBeads] = "Dafür braucht es drei Perlen oder mehr.",
            [SettleReason.BeadsTooLong] = "Die Perlen sind so lang, dass der Draht zwischen ihnen scharf knicken würde.",
            [SettleReason.BeadsInOnePlace] = "Zwei Perlen stehen an derselben Stelle des Drahts.",
            [SettleReason.BeadsTooThick] = "Perlen stehen quer durch die Spirale am selben Ort.",
            [SettleReason.FallsOff] = "Es geht zu wenig herum oder hängt zu locker und fiele ab.",
            [SettleReason.OutOfSteps] = "Nach so vielen Schritten, wie gegangen werden, war es noch nicht in Ruhe.",
            [SettleReason.NoProgress] = "Es kam nicht ganz zur Ruhe: Etwas zieht noch.",
        }.ToFrozenDictionary(),
        Longer = "Schnell gerechnet hat es {quickTurns} {quickTurns:Windung|Windungen} zu {quickPerTurnMm:length}; so wie es sitzt, braucht eine Windung {differenceMm:length} mehr.",
        Shorter = "Schnell gerechnet hat es {quickTurns} {quickTurns:Windung|Windungen} zu {quickPerTurnMm:length}; so wie es sitzt, braucht eine Windung {differenceMm:length} weniger.",
        WithoutWeight = "Diese wiegen hier nichts, weil ihre Masse nicht bekannt ist: {beads}.",
        LeftOut = "Nicht enthalten: nachgiebige Haut, Reibung, Spiel der Perlen auf dem Draht, bleibende Biegung. Das Handgelenk gilt als hartes Oval.",
        Presses = "Alle Perlen zusammen drücken mit {forceN} N auf das Handgelenk, die stärkste (Perle {number}, {bead}) mit {mostN} N.",
        Held = "Um zu bleiben, wo es ist, braucht es {slidingN} N gegen das Rutschen am Arm entlang und {turningNmm} N mm gegen das Drehen um ihn.",
        Stress = "Der Draht trägt bis zu {stressMPa} MPa mehr als in Ruhe{?share:, {share:percent} der geringsten Festigkeit solchen Drahts}.",
        Path = "Gefunden in {steps} {steps:Schritt|Schritten}, ausgehend von einer Spirale mit {radiusMm:mm} Radius, die nichts berührte; weniger als ein Millionstel Newton bleibt übrig, und nichts überlappt. Auch andere Formen können in Ruhe sein.",
        Pushes = "Was worauf drückt",
        Kinds = new Dictionary<PushKind, string>
        {
            [PushKind.Row] = "Nachbarn in der Reihe",
            [PushKind.Turns] = "Windung auf Windung",
            [PushKind.Wrist] = "auf das Handgelenk",
        }.ToFrozenDictionary(),
        Bead = "{number} {bead}",
        Between = "Druck",
        Beads = "Perlen",
        Force = "Kraft",
        MorePushes = "Und {count} {count:schwächerer|schwächere}.",
        Stands = "Der Blickfang, wie auch der Arm gehalten wird",
        Posed = "Ermittelt für: {arm}.",
        Formed = "Das Handgelenk gilt als {share:percent} so dick wie breit{?moreMm: und {upMm:mm} den Arm hinauf um {moreMm:mm} weiter}{?lessMm: und {upMm:mm} den Arm hinauf um {lessMm:mm} enger}.",
        TheArm = "Der Arm",
        ArmTaken = "{arm}; das Handgelenk {share:percent} so dick wie breit{?same:, überall gleich weit}{?moreMm:, {upMm:mm} den Arm hinauf um {moreMm:mm} weiter}{?lessMm:, {upMm:mm} den Arm hinauf um {lessMm:mm} enger}.",
        ArmHeld = "Wie er gehalten wird",
        WristWidth = "Breite des Handgelenks",
        WristThickness = "Dicke des Handgelenks",
        GirthUp = "Umfang {upMm:mm} den Arm hinauf",
        ArmHint = "Breite von Seite zu Seite und Dicke von der Oberseite zur Unterseite, zwischen zwei Büchern oder mit dem Messschieber: Es zählt nur, wie sie zueinander stehen. Solange nicht beide angegeben sind, gilt das Handgelenk als {share:percent} so dick wie breit; ohne Umfang weiter oben als überall gleich weit.",
        ThicknessTrouble = "Bei dieser Breite von {leastMm:length} bis {mostMm:length}.",
        GirthUpTrouble = "Bei diesem Handgelenk von {leastMm:length} bis {mostMm:length}.",
        ArmTroubled = "Zuerst berichtigen, was unter Der Arm markiert ist.",
        Arms = new Dictionary<ArmPose, string>
        {
            [ArmPose.TopUp] = "Arm waagerecht, Oberseite oben",
            [ArmPose.UndersideUp] = "Arm waagerecht, Unterseite oben",
            [ArmPose.OnItsSide] = "Arm waagerecht, eine Vierteldrehung in Laufrichtung der Perlen",
            [ArmPose.OnTheOtherSide] = "Arm waagerecht, eine Vierteldrehung gegen die Laufrichtung",
            [ArmPose.Hanging] = "Arm aufrecht, das Ende der Reihe unten",
            [ArmPose.HeldUp] = "Arm aufrecht, das Ende der Reihe oben",
        }.ToFrozenDictionary(),
        Arm = "Haltung",
        At = "Blickfang",
        Tipped = "Kippt",
        NoRest = "nicht gefunden",
        Angle = "{deg}°",
        Reckoned = "Gerechnet, wie es sitzt: {circumferenceMm:length} um den Draht, wo die schnelle Rechnung {quickMm:length} hat.",
        ReckonedQuickly = "Doch schnell gerechnet, denn wie es sitzt, ließ sich nicht ermitteln: {why}",
    };
}
