using System.Collections.Immutable;
using Coilwright.Core.Readings;

namespace Coilwright.Core.Cures;

/// <summary>Why no edit is proposed for a notice.</summary>
public enum WhyNoCure
{
    /// <summary>Only a measurement can tell; a figure put in its place would be made up.</summary>
    Measure,

    /// <summary>What to give up for it is her choice, and not one edit.</summary>
    HerChoice,

    /// <summary>Whether an edit ends it only settling the piece anew would tell, which takes seconds to minutes for each edit that is looked at: she makes one and lets it settle again.</summary>
    SettleAnew,

    /// <summary>Nothing is amiss: it is told, and stays true.</summary>
    NothingAmiss,
}

/// <summary>For each notice, which cures are looked for, or why none is. Whether one cures a certain piece only reckoning tells (<see cref="CureFinder"/>).</summary>
public static class CureTable
{
    /// <summary>The cures that may come of it, by notice code, the one asked first foremost.</summary>
    public static ImmutableSortedDictionary<string, ImmutableArray<string>> Sought { get; } = new Dictionary<string, ImmutableArray<string>>
    {
        [NoticeCodes.WireTooShort] = [CureCodes.CutAnew],
        [NoticeCodes.GapAtTheEnd] = [CureCodes.StringMore, CureCodes.StringAgain],
        [NoticeCodes.OverlapOff] = [CureCodes.TakeOffRow, CureCodes.TakeOff, CureCodes.StringMore, CureCodes.StringAgain],
        [NoticeCodes.CoilTooSmall] = [CureCodes.LargerCoil],
        [NoticeCodes.BeadWillNotPass] = [CureCodes.Ream, CureCodes.ThinnerWire],
        [NoticeCodes.BeadPassesTightly] = [CureCodes.Ream, CureCodes.ThinnerWire],
        [NoticeCodes.EndBeadSlidesOff] = [CureCodes.LargerEndLoop, CureCodes.MoveToEnd],
        [NoticeCodes.LikeOverLike] = [CureCodes.TakeOff, CureCodes.StringMore, CureCodes.TakeOffEverywhere, CureCodes.StringMoreEverywhere],
        [NoticeCodes.ColumnsMissed] = [CureCodes.TakeOffEverywhere, CureCodes.StringMoreEverywhere],
        [NoticeCodes.FocalOffTop] = [CureCodes.FocalOnTop],
        [NoticeCodes.FewerTurns] = [CureCodes.StringAgain],
        [NoticeCodes.UnderOneTurn] = [CureCodes.StringAgain],
        [NoticeCodes.HangsLoose] = [CureCodes.SmallerCoil],
        [NoticeCodes.StressNearStrength] = [CureCodes.LargerCoil, CureCodes.ThinnerWire],
    }.ToImmutableSortedDictionary(StringComparer.Ordinal);

    /// <summary>Why none is looked for, by notice code.</summary>
    public static ImmutableSortedDictionary<string, WhyNoCure> None { get; } = new Dictionary<string, WhyNoCure>
    {
        [NoticeCodes.BoreUnknown] = WhyNoCure.Measure,
        [NoticeCodes.EndFaceUnknown] = WhyNoCure.Measure,
        [NoticeCodes.HeavyForItsTurns] = WhyNoCure.HerChoice,
        [NoticeCodes.RunTooLong] = WhyNoCure.HerChoice,
        [NoticeCodes.TooClose] = WhyNoCure.HerChoice,
        [NoticeCodes.NotApart] = WhyNoCure.HerChoice,
        [NoticeCodes.NotTogether] = WhyNoCure.HerChoice,
        [NoticeCodes.OtherEnd] = WhyNoCure.HerChoice,
        [NoticeCodes.TurnsGape] = WhyNoCure.SettleAnew,
        [NoticeCodes.FocalTips] = WhyNoCure.SettleAnew,
        [NoticeCodes.OnAKnifesEdge] = WhyNoCure.SettleAnew,
        [NoticeCodes.MeasuredDiffers] = WhyNoCure.NothingAmiss,
        [NoticeCodes.ChildCautions] = WhyNoCure.NothingAmiss,
    }.ToImmutableSortedDictionary(StringComparer.Ordinal);
}
