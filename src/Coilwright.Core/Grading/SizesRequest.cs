using System.Collections.Immutable;
using Coilwright.Core.Pieces;

namespace Coilwright.Core.Grading;

/// <summary>What sizes are asked for.</summary>
/// <param name="WristsMm">The wrists, mm, each from <see cref="Wearer.LeastWristMm"/> to <see cref="Wearer.MostWristMm"/>, none twice, in any order.</param>
/// <param name="Effort">How much to try for each, 1 to <see cref="Arrangement.ArrangeRequest.MostEffort"/>. The same effort and seed give the same sizes on
/// any machine.</param>
/// <param name="Seed">Seed of the draws.</param>
public sealed record SizesRequest(ImmutableArray<double> WristsMm, int Effort = SizesRequest.UsualEffort, ulong Seed = 1)
{
    /// <summary>The most sizes at once: more than any table holds.</summary>
    public const int MostWrists = 40;

    /// <summary>Enough that more finds little, and a table of sizes is there in seconds.</summary>
    public const int UsualEffort = 1;

    /// <summary>Beads of a piece up to which sizes are made soon enough for one who did not ask for them, as on a sheet. Our choice: bracelets have fewer.</summary>
    public const int MostBeadsUnasked = 500;
}

/// <summary>The wrists that sizes are made for where nobody says.</summary>
public static class UsualWrists
{
    // A child's hand is not among adults' wrists: a size either side of the one that was measured.
    private const double ChildStepMm = 10;

    /// <summary>Those that the piece is to be good on, else adults' from the data, and for a child one either side of hers; always with the wearer's own.
    /// Ascending, none twice.</summary>
    public static ImmutableArray<double> Of(Piece piece, ReckoningData data)
    {
        var own = piece.Wearer.WristMm;
        IEnumerable<double> others = !piece.Wishes.Wrists.IsDefaultOrEmpty ? piece.Wishes.Wrists.Select(w => w.WristMm)
            : piece.Wearer.IsChild ? [own - ChildStepMm, own + ChildStepMm]
            : data.AdultWrists.Select(w => w.WristMm);
        return [.. others.Where(w => w is >= Wearer.LeastWristMm and <= Wearer.MostWristMm).Append(own).Distinct().Order().Take(SizesRequest.MostWrists)];
    }

    /// <summary>A few of these, for paper: the wearer's own, and others from the smallest to the largest.</summary>
    public static ImmutableArray<double> Few(Piece piece, ReckoningData data)
    {
        const int few = 4;
        var others = Of(piece, data).Remove(piece.Wearer.WristMm);
        return others.Length <= few ? Of(piece, data)
            : [.. Enumerable.Range(0, few).Select(i => others[(int)Math.Round(i * (others.Length - 1) / (few - 1.0))]).Append(piece.Wearer.WristMm).Order()];
    }
}
