using System.Collections.Immutable;
using Coilwright.Core.Beads;
using Coilwright.Core.Pieces;
using Coilwright.Core.Stringing.Notation;
using Coilwright.Core.Tests.Arrangement;
using CsCheck;

namespace Coilwright.Core.Tests.Grading;

/// <summary>Designs to be graded: clusters with a focal or without, written as notation.</summary>
internal static class GradedPieces
{
    public const int Moon = 4;

    public static ImmutableArray<Bead> Kinds { get; } = [.. ClusterPieces.Kinds, SamplePieces.Bead("moon", "round", 12, 12, 6, role: Role.Focal, colour: "#39545c")];

    /// <summary>A piece from its notation over <see cref="Kinds"/>.</summary>
    public static Piece Written(string text, double wristMm = 165, LiningUpWish wish = LiningUpWish.Any, FreeToChange? free = null, bool focalOnTop = false)
    {
        var tree = OrderTree.Of(text);
        var read = OrderNotation.Read(tree, [.. Kinds.Select(k => k.Id)]);
        Assert.NotNull(read.Order);
        var piece = SamplePieces.Piece(Kinds, read.Order.Kinds, wristMm, groups: read.Order.Groups);
        return piece with
        {
            Written = tree,
            Order = read.Order,
            Wearer = piece.Wearer with { FocalOnTop = focalOnTop },
            Wishes = new Wishes { LiningUp = wish, Free = free ?? FreeToChange.Usual },
        };
    }

    /// <summary>Clusters a and b with dots or bars between them, and a focal among them or none.</summary>
    public static Gen<Piece> Any { get; } =
        from clusters in Gen.Select(Gen.Bool, Gen.Int[1, 3], Gen.Bool).Array[8, 24]
        from focal in Gen.Bool
        from wish in Gen.Int[0, 2]
        from wrist in Gen.Double[150, 190]
        select Written(Text(clusters, focal), Math.Round(wrist), (LiningUpWish)wish);

    /// <summary>The same from both ends, round a focal.</summary>
    public static Gen<Piece> Mirrored { get; } =
        from clusters in Gen.Select(Gen.Bool, Gen.Int[1, 3], Gen.Bool).Array[4, 10]
        from wish in Gen.Int[0, 2]
        from wrist in Gen.Double[150, 190]
        select Written("a = 3 ball\nb = 4 chip\nmirror (" + Row(clusters) + ") around moon", Math.Round(wrist), (LiningUpWish)wish);

    private static string Text((bool IsA, int Beside, bool Bars)[] clusters, bool focal)
    {
        var half = clusters.Length / 2;
        return "# as it came\na = 3 ball   # three\nb = 4 chip\n" + Row(clusters[..half]) + (focal ? ",\nmoon, dot" : "") + ",\n" + Row(clusters[half..]);
    }

    private static string Row((bool IsA, int Beside, bool Bars)[] clusters) =>
        string.Join(", ", clusters.Select(c => (c.IsA ? "a" : "b") + ", " + c.Beside + (c.Bars ? " bar" : " dot")));
}
