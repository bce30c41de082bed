using Coilwright.Core.Lies;
using Coilwright.Core.Pieces;

namespace Coilwright.Core.Arrangement;

/// <summary>How far the beaded length of a piece may go on the wearer's wrist: by what its wishes say of the change, and of the turns.</summary>
/// <param name="ShorterMm">By how much less wire the beads may take, mm; below 0 where they must take more than now.</param>
/// <param name="LongerMm">By how much more, mm; below 0 where they must take less.</param>
internal readonly record struct LengthRoom(double ShorterMm, double LongerMm)
{
    /// <summary>The room of a piece that lies as it does.</summary>
    public static LengthRoom Of(FreeToChange free, Lie lie, ReckoningChoices choices)
    {
        // Said turns go before what is usual, not before what she said of the length.
        var within = free.LengthWithinMm ?? (free.Turns is null ? choices.OverlapToleranceMm : double.PositiveInfinity);
        return free.Turns is not { } turns ? new LengthRoom(within, within)
            : new LengthRoom(Math.Min(within, lie.BeadedMm - turns.Least * lie.WirePerTurnMm), Math.Min(within, turns.Most * lie.WirePerTurnMm - lie.BeadedMm));
    }

    /// <summary>Whether a piece that came of a change keeps it.</summary>
    /// <param name="free">What may change.</param>
    /// <param name="before">The piece as it was.</param>
    /// <param name="after">The piece as it comes out.</param>
    /// <param name="choices">Our choices.</param>
    public static bool Keeps(FreeToChange free, Lie before, Lie after, ReckoningChoices choices)
    {
        // Beads hinge a little otherwise beside other neighbours: a hundredth of a millimetre for each is no other length.
        var hair = 0.01 * after.Count;
        var room = Of(free, before, choices);
        var longer = after.BeadedMm - before.BeadedMm;
        return longer >= -room.ShorterMm - hair && longer <= room.LongerMm + hair;
    }
}
