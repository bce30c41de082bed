using System.Collections.Immutable;

namespace Coilwright.Core.Readings;

/// <summary>How much a notice matters.</summary>
public enum Severity
{
    /// <summary>Worth knowing.</summary>
    Info,

    /// <summary>The piece will not be as she wants it.</summary>
    Warn,

    /// <summary>The piece cannot be made or worn like this.</summary>
    Stop,
}

/// <summary>Something a maker should know of a sound piece: a code, and the values a sentence needs. The sentence is made by Coilwright.Wording.</summary>
/// <param name="Code">Stable code from <see cref="NoticeCodes"/>.</param>
/// <param name="Severity">How much it matters.</param>
/// <param name="BeadId">The bead kind it is about, or null.</param>
/// <param name="Numbers">Values by name, with their unit in the name: <c>shortMm</c>, <c>angleDeg</c>.</param>
/// <param name="Words">Names and words by name: <c>group</c>, <c>place</c>.</param>
/// <param name="Positions">The beads it means, indices in the order from 0.</param>
public sealed record Notice(string Code, Severity Severity, string? BeadId, ImmutableSortedDictionary<string, double> Numbers,
    ImmutableSortedDictionary<string, string> Words, ImmutableArray<int> Positions)
{
    /// <summary>Makes a notice from its code and values.</summary>
    public static Notice Of(string code, Severity severity, string? beadId = null, (string, double)[]? numbers = null,
        (string, string)[]? words = null, ImmutableArray<int> positions = default) => new(code, severity, beadId,
        (numbers ?? []).ToImmutableSortedDictionary(n => n.Item1, n => n.Item2, StringComparer.Ordinal),
        (words ?? []).ToImmutableSortedDictionary(w => w.Item1, w => w.Item2, StringComparer.Ordinal),
        positions.IsDefault ? [] : positions);
}

/// <summary>The codes of <see cref="Notice"/>. Each has a sentence per language in Coilwright.Wording.</summary>
public static class NoticeCodes
{
    /// <summary>The wire she cut does not hold the beads and both ends, or leaves the pliers too little to hold: cutMm, neededMm (with what they hold),
    /// shortMm.</summary>
    public const string WireTooShort = "wire-too-short";

    /// <summary>Bare wire or open wrist between the ends: gapMm, wantedMm, turns.</summary>
    public const string GapAtTheEnd = "gap-at-the-end";

    /// <summary>The ends overlap more or less than she wants: overlapMm, wantedMm, turns.</summary>
    public const string OverlapOff = "overlap-off";

    /// <summary>A bead reaches to the coil's middle or near it, so the beads cannot stand on the coil: reachMm, radiusMm, neededLoopMm.</summary>
    public const string CoilTooSmall = "coil-too-small";

    /// <summary>A bead will not go over the wire's curve: wireMm, lengthMm, and where they are known boreMm, clearanceMm, longestMm; neededBoreMm where the
    /// bead has room for such a hole.</summary>
    public const string BeadWillNotPass = "bead-will-not-pass";

    /// <summary>A bead passes, but with less room than its hole may be off by: boreMm, wireMm, lengthMm, clearanceMm, neededBoreMm, longestMm where not any
    /// length passes.</summary>
    public const string BeadPassesTightly = "bead-passes-tightly";

    /// <summary>A hole's size is not known, so whether it passes is not either: wireMm, lengthMm, neededBoreMm.</summary>
    public const string BoreUnknown = "bore-unknown";

    /// <summary>The flat at a bead's ends is not known and was taken right across: thicknessMm.</summary>
    public const string EndFaceUnknown = "end-face-unknown";

    /// <summary>The end bead's hole is wider than the end loop: boreMm, loopMm, neededInsideMm; words end.</summary>
    public const string EndBeadSlidesOff = "end-bead-slides-off";

    /// <summary>Like over like where she wants a mix, or where she said nothing: cover, turn, nextTurn, offSquareMm, overlapMm, angleDeg; words group.</summary>
    public const string LikeOverLike = "like-over-like";

    /// <summary>Columns were wanted and do not come: cover.</summary>
    public const string ColumnsMissed = "columns-missed";

    /// <summary>The focal lies off the top: offDeg, offMm, withinDeg, turn, startDeg (start angle that centres it); words side, past or before the top.</summary>
    public const string FocalOffTop = "focal-off-top";

    /// <summary>Fewer turns on this wrist than she designed: turnsWorn, turnsDesigned, wristMm.</summary>
    public const string FewerTurns = "fewer-turns";

    /// <summary>Less than one whole turn: it will not stay on: turnsWorn.</summary>
    public const string UnderOneTurn = "under-one-turn";

    /// <summary>The coil at rest leaves more room than the wrist takes: looseMm, wristMm.</summary>
    public const string HangsLoose = "hangs-loose";

    /// <summary>A measured row differs from what the beads' lengths said: measuredMm, reckonedMm, differenceMm, firstBead, lastBead.</summary>
    public const string MeasuredDiffers = "measured-differs";

    /// <summary>Heavy for its turns: perTurnG, heavyG, totalG.</summary>
    public const string HeavyForItsTurns = "heavy-for-its-turns";

    /// <summary>The wire's stress is near its strength: it may stay open: stressMPa, strengthMPa, share.</summary>
    public const string StressNearStrength = "stress-near-strength";

    /// <summary>Too many of a kind in a row: beads (how many there are), most, firstBead, lastBead, times (in how many places); words group.</summary>
    public const string RunTooLong = "run-too-long";

    /// <summary>Too many of some kinds close together: beads (how many there are), upTo, ofAny, firstBead, lastBead, times (in how many places); words
    /// groups.</summary>
    public const string TooClose = "too-close";

    /// <summary>Kinds that should be apart touch: firstBead, lastBead, times; words group, beside.</summary>
    public const string NotApart = "not-apart";

    /// <summary>A kind lacks the neighbour that it should have: firstBead, lastBead, times; words group, beside.</summary>
    public const string NotTogether = "not-together";

    /// <summary>The order begins or ends with another kind than it should: firstBead, lastBead; words group, end.</summary>
    public const string OtherEnd = "other-end";

    /// <summary>As it sits its turns gape: gapMm, overMm, angleDeg, number (of the bead, from 1).</summary>
    public const string TurnsGape = "turns-gape";

    /// <summary>As it sits the focal tips, whichever way of holding the arm tips it the most: tipsDeg, overDeg, angleDeg.</summary>
    public const string FocalTips = "focal-tips";

    /// <summary>As it sits the least push makes it lie otherwise.</summary>
    public const string OnAKnifesEdge = "on-a-knifes-edge";

    /// <summary>A child's piece: small parts, adult cuts and bends.</summary>
    public const string ChildCautions = "child-cautions";
}
