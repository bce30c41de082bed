using System.Collections.Immutable;
using Coilwright.Core.Beads;
using Coilwright.Core.Pieces;
using Coilwright.Core.Stringing;
using CsCheck;

namespace Coilwright.Core.Tests.Arrangement;

/// <summary>Pieces of named clusters with runs of spacers between them.</summary>
internal static class ClusterPieces
{
    // All of one width and thickness: moving spacers then changes neither the pitch nor what bears on the wrist.
    public static ImmutableArray<Bead> Kinds { get; } =
    [
        SamplePieces.Bead("ball", "round", 6, 6, 6, colour: "#6fa3a8"),
        SamplePieces.Bead("chip", "tube", 4, 6, colour: "#7d5a7d"),
        SamplePieces.Bead("dot", "round", 6, 6, 6, role: Role.Spacer, colour: "#c0c4c8"),
        SamplePieces.Bead("bar", "tube", 9, 6, role: Role.Connector, colour: "#b08d57"),
    ];

    public const int Ball = 0, Chip = 1, Dot = 2, Bar = 3;

    /// <summary>Clusters by letter with so many spacers after each: "a2 b1 a3" and so on; a is three balls, b four chips. A letter with a bar after the
    /// count has bars for spacers.</summary>
    public static Piece Piece(string pattern, double wristMm = 165, LiningUpWish wish = LiningUpWish.Mix, FreeToChange? free = null, params WeighedWrist[] wrists)
    {
        var kinds = new List<int>();
        var groups = ImmutableArray.CreateBuilder<GroupRun>();
        foreach (var part in pattern.Split(' '))
        {
            var (bead, count) = part[0] == 'a' ? (Ball, 3) : (Chip, 4);
            groups.Add(new GroupRun(part[..1], kinds.Count, count));
            kinds.AddRange(Enumerable.Repeat(bead, count));
            var between = part.EndsWith('|') ? Bar : Dot;
            kinds.AddRange(Enumerable.Repeat(between, int.Parse(part[1..].TrimEnd('|'), System.Globalization.CultureInfo.InvariantCulture)));
        }
        return SamplePieces.Piece(Kinds, kinds, wristMm, groups: groups.ToImmutable()) with
        {
            Wishes = new Wishes { LiningUp = wish, Free = free ?? FreeToChange.Usual, Wrists = [.. wrists] },
        };
    }

    public static Gen<Piece> Any { get; } =
        from clusters in Gen.Select(Gen.Bool, Gen.Int[1, 3], Gen.Bool).Array[8, 24]
        from wish in Gen.Bool
        from wrist in Gen.Double[150, 190]
        select Piece(string.Join(' ', clusters.Select(c => (c.Item1 ? "a" : "b") + c.Item2 + (c.Item3 ? "|" : ""))), wrist,
            wish ? LiningUpWish.Mix : LiningUpWish.Columns);
}
