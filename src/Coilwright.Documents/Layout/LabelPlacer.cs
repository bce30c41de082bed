using Coilwright.Documents.Drawing;

namespace Coilwright.Documents.Layout;

/// <summary>Where a label found room.</summary>
/// <param name="Box">Its box.</param>
/// <param name="Leader">A thin line from what it names to the label, where it stands apart from it; null where it stands close by.</param>
public readonly record struct LabelPlace(Box Box, (Point From, Point To)? Leader);

/// <summary>Finds room for labels: none covers another, nor the line that leads to another, nor anything that was told to be in the way.</summary>
/// <remarks>A label goes as near as it can to what it names and otherwise steps away from it, up or down, until it is free or would be too far: then it
/// is left out and the caller counts it. Greedy: what is placed first stands nearest.</remarks>
internal sealed class LabelPlacer
{
    // Air round every label, so that two never read as one.
    private const double AirMm = 0.35;

    // A label farther than this from what it names gets a leader.
    private const double NearMm = 0.9;

    private readonly List<Box> _taken = [];

    /// <summary>What is in the way so far.</summary>
    internal IReadOnlyList<Box> Taken => _taken;

    /// <summary>Puts something in the way.</summary>
    internal void Take(Box box) => _taken.Add(box);

    /// <summary>Whether a box is free.</summary>
    internal bool IsFree(Box box)
    {
        var airy = box.Grown(AirMm);
        foreach (var taken in _taken)
            if (airy.Overlaps(taken)) return false;
        return true;
    }

    /// <summary>Finds room for a label and takes it; null when there is none.</summary>
    /// <param name="wish">What is asked for.</param>
    internal LabelPlace? Place(LabelWish wish)
    {
        var left = Math.Clamp(wish.MiddleMm - wish.WidthMm / 2, wish.LeastMm, Math.Max(wish.LeastMm, wish.MostMm - wish.WidthMm));
        if (left + wish.WidthMm > wish.MostMm + 1e-9) return null;
        var near = wish.NearMm;
        while (wish.Upwards ? near - wish.HeightMm >= wish.FarMm : near + wish.HeightMm <= wish.FarMm)
        {
            var box = Box.At(left, wish.Upwards ? near - wish.HeightMm : near, wish.WidthMm, wish.HeightMm);
            var airy = box.Grown(AirMm);
            double? next = null;
            foreach (var taken in _taken)
                if (airy.Overlaps(taken))
                    next = wish.Upwards ? Math.Min(next ?? double.MaxValue, taken.TopMm - AirMm) : Math.Max(next ?? double.MinValue, taken.BottomMm + AirMm);
            if (next is { } further)
            {
                // Always at least a hair on, so that the search ends.
                near = wish.Upwards ? Math.Min(further, near - 0.01) : Math.Max(further, near + 0.01);
                continue;
            }
            if (!wish.NeedsLeader || Math.Abs(near - wish.LeaderFromMm) <= NearMm)
            {
                Take(box);
                return new LabelPlace(box, null);
            }
            var leader = new Box(wish.MiddleMm - 0.1, Math.Min(near, wish.LeaderFromMm), wish.MiddleMm + 0.1, Math.Max(near, wish.LeaderFromMm));
            foreach (var taken in _taken)
                if (leader.Overlaps(taken)) return null;
            Take(box);
            Take(leader);
            var gap = wish.Upwards ? 0.25 : -0.25;
            return new LabelPlace(box, (new Point(wish.MiddleMm, wish.LeaderFromMm), new Point(wish.MiddleMm, near + gap)));
        }
        return null;
    }
}

/// <summary>A label that wants room.</summary>
/// <param name="MiddleMm">Where its middle should stand from left to right, and its leader.</param>
/// <param name="WidthMm">Its width.</param>
/// <param name="HeightMm">Its height.</param>
/// <param name="NearMm">Its nearest edge when it stands as near as it may: the top edge of a label below, the bottom edge of one above.</param>
/// <param name="FarMm">The farthest that its far edge may reach.</param>
/// <param name="Upwards">Whether it stands above what it names.</param>
internal readonly record struct LabelWish(double MiddleMm, double WidthMm, double HeightMm, double NearMm, double FarMm, bool Upwards)
{
    /// <summary>Leftmost edge it may have.</summary>
    internal double LeastMm { get; init; } = double.MinValue;

    /// <summary>Rightmost edge it may have.</summary>
    internal double MostMm { get; init; } = double.MaxValue;

    /// <summary>Whether it gets a leader when it stands apart from what it names; false where a line leads to it anyway.</summary>
    internal bool NeedsLeader { get; init; } = true;

    /// <summary>Where a leader starts.</summary>
    internal double LeaderFromMm { get; init; } = NearMm;
}
