using System.Collections.Frozen;
using Coilwright.Core.Readings;

namespace Coilwright.Wording.EnglishWords;

/// <summary>English sentences of notices: in a few words, in full, and what to do.</summary>
internal static class EnglishNotices
{
    internal static FrozenDictionary<string, NoticeSentence> Make() => new Dictionary<string, NoticeSentence>(StringComparer.Ordinal)
    {
        [NoticeCodes.WireTooShort] = new("the wire is too short",
            "The wire you cut is {shortMm:size} too short: you cut {cutMm:length}, and the piece needs {neededMm:length}.",
            "Cut a new length of at least {neededMm:cut}, or leave off beads until {shortMm:size} is saved."),
        [NoticeCodes.GapAtTheEnd] = new("the ends do not meet",
            "Round {turns} {turns:turn|turns} a gap of {gapMm:size} stays open between the ends.",
            "Add beads for {gapMm:size} of wire where the pattern allows it, or let the wish for whole turns go."),
        [NoticeCodes.OverlapOff] = new("the ends overlap otherwise than you want",
            "Round {turns} {turns:turn|turns} the ends overlap by {overlapMm:length}, and you want {wantedMm:length}.",
            "Add or take off beads near the ends, or leave it if you like it so."),
        [NoticeCodes.BeadWillNotPass] = new("{bead} will not go on the wire",
            "{bead} will not go on {wireMm:fine} wire bent to this coil: its hole is {boreMm:fine}, and a bead {lengthMm:mm} long needs {neededBoreMm:fine}.",
            "Ream the holes, choose thinner wire, or use a shorter bead or one with a larger hole."),
        [NoticeCodes.BeadPassesTightly] = new("{bead} goes on tightly",
            "{bead} goes on with only {clearanceMm:fine} between hole and wire: its hole is {boreMm:fine}, the wire {wireMm:fine}. Some may stick.",
            "Try a few on the wire before you start, and ream those that stick."),
        [NoticeCodes.BoreUnknown] = new("the hole of {bead} is not known",
            "The hole of {bead} is not known. It needs at least {neededBoreMm:fine} to go on {wireMm:fine} wire.",
            "Try one on the wire, or measure the hole and write it in the piece file."),
        [NoticeCodes.EndFaceUnknown] = new("the flat ends of {bead} are not known",
            "The size of the flat at each end of {bead} is not known, so it was taken right across ({thicknessMm:mm}).",
            "Measure the flat of one bead and write it as \"endFaceMm\": with a smaller flat the beads take less wire."),
        [NoticeCodes.EndBeadSlidesOff] = new("the end bead slides over the end loop",
            "{bead} at the {end} slides off: its hole is {boreMm:fine}, and the end loop only {loopMm:fine} across.",
            "Turn a loop of {neededInsideMm:fine} inside or more, or put a bead with a smaller hole last."),
        [NoticeCodes.LikeOverLike] = new("like lies over like",
            "{group} lies over {group} on turns {turn} and {nextTurn}, {angleDeg:place}: {offSquareMm:size} off square, along {overlapMm:size}.",
            "If you want it mixed there, add or take away a small bead between the two and look again."),
        [NoticeCodes.ColumnsMissed] = new("the columns do not come",
            "You want columns, and only {cover:percent} of the groups lie over their own kind.",
            "Bring one repeat closer to a whole part of a turn: add or take away small beads."),
        [NoticeCodes.FocalOffTop] = new("the focal lies off the top",
            "{bead} lies {offMm:size} ({offDeg:deg}) {side} the middle of the top, the way the beads run.",
            "Slide the piece round the wrist by {offMm:size}: its starting end then lies {startDeg:place}. To keep the ends where they are, string {offMm:size} of the beads on the other side of it."),
        [NoticeCodes.FewerTurns] = new("fewer turns than you designed",
            "On a wrist of {wristMm:length} it makes {turnsWorn} {turnsWorn:turn|turns} in place of {turnsDesigned}.",
            "Add beads for the missing turns, or let it be a smaller stack on this wrist."),
        [NoticeCodes.UnderOneTurn] = new("it does not go once round",
            "The beads make only {turnsWorn} {turnsWorn:turn|turns}: it will not stay on.",
            "Add beads; memory wire wants at least one whole turn, better two."),
        [NoticeCodes.HangsLoose] = new("it hangs loose",
            "At rest the coil is {looseMm:size} larger round than a wrist of {wristMm:length} and the beads ask for. It will slide and turn.",
            "Choose a smaller coil, or thicker beads."),
        [NoticeCodes.MeasuredDiffers] = new("the measured row differs",
            "Beads {firstBead} to {lastBead} measure {measuredMm:length}, and their own lengths say {reckonedMm:length}: {differenceMm:size} apart. Your measurement counts.",
            "If that surprises you, measure again. Otherwise there is nothing to do."),
        [NoticeCodes.ChildCautions] = new("made for a child",
            "This is for a child. Every loose bead is a small part: not for children under three.",
            "An adult cuts and bends the wire and turns the ends in. Check them often."),
    }.ToFrozenDictionary(StringComparer.Ordinal);
}
