using System.Collections.Immutable;
using Coilwright.Core.Pieces;

namespace Coilwright.Core.Settle;

/// <summary>What a maker should mind of how a piece lies.</summary>
public enum SettleSign
{
    /// <summary>The turns stand apart somewhere.</summary>
    Gapes,

    /// <summary>The focal tips.</summary>
    Tips,

    /// <summary>The wire is opened so far that it may keep some of the bend.</summary>
    TooTight,

    /// <summary>The coil leaves so much room that it slides about.</summary>
    TooLoose,

    /// <summary>The least push would make it lie otherwise.</summary>
    Jumps,
}

/// <summary>Judges how a piece lies.</summary>
public static class SettleSigns
{
    /// <summary>The signs, in the order of <see cref="SettleSign"/>; none where no rest was found.</summary>
    /// <param name="settled">How it lies.</param>
    /// <param name="choices">Our choices: over what gap and tip, from what stress and from how much room there is something to mind.</param>
    public static ImmutableArray<SettleSign> Of(Settled settled, ReckoningChoices choices)
    {
        if (settled.Worn is null) return [];
        var signs = ImmutableArray.CreateBuilder<SettleSign>();
        if (settled.Widest?.GapMm > choices.GapesOverMm) signs.Add(SettleSign.Gapes);
        if (MostTipped(settled) is { } most && Math.Abs(most.TipsDeg) > choices.TipsOverDeg) signs.Add(SettleSign.Tips);
        if (settled.StressMPa >= choices.StressShareFrom * settled.StrengthMPa) signs.Add(SettleSign.TooTight);
        if (settled.Relaxed!.Value.InsideMm - settled.Request.WristMm >= choices.LooseFromMm) signs.Add(SettleSign.TooLoose);
        if (settled.OnEdge) signs.Add(SettleSign.Jumps);
        return signs.ToImmutable();
    }

    /// <summary>The way of holding the arm in which the focal tips most; null without a focal.</summary>
    public static FocalStand? MostTipped(Settled settled) => MostTipped(settled.FocalStands);

    /// <summary>The one of several ways in which the focal tips most; null where it rests in none.</summary>
    internal static FocalStand? MostTipped(ImmutableArray<FocalStand> stands)
    {
        FocalStand? most = null;
        foreach (var stand in stands)
            if (stand.Rests && (most is not { } m || Math.Abs(stand.TipsDeg) > Math.Abs(m.TipsDeg))) most = stand;
        return most;
    }
}
