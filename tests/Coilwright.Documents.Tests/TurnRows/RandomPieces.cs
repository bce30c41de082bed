using System.Collections.Immutable;
using Coilwright.Core.Beads;
using Coilwright.Core.Pieces;
using Coilwright.Core.Stringing;
using Coilwright.Core.Tests;
using Coilwright.Documents.TurnRows;
using CsCheck;

namespace Coilwright.Documents.Tests.TurnRows;

/// <summary>Pieces of every sort, sensible and not, for claims that hold for all.</summary>
public static class RandomPieces
{
    private static readonly Gen<string> Names = Gen.OneOf(Gen.Const(""), Gen.String[Gen.Char["abc defgh Wim"], 1, 12], Gen.String[Gen.Char["Wide name "], 60, 200]);

    private static readonly Gen<Bead> Beads = Gen.Select(Gen.Int[0, 7], Gen.Double[0.8, 16], Gen.Double[1.5, 18], Gen.Int[0, 0xffffff], Names,
        (shape, length, width, colour, name) =>
        {
            var colours = $"#{colour:x6}";
            var bead = shape switch
            {
                0 => SamplePieces.Bead("b", "round", length, colour: colours, bore: null),
                1 => SamplePieces.Bead("b", "faceted-rondelle", Math.Min(length, width), width, bore: null, colour: colours),
                2 => SamplePieces.Bead("b", "bicone", length, bore: null),
                3 => SamplePieces.Bead("b", "chip", length, width, width, bore: null, colour: colours),
                4 => SamplePieces.Bead("b", "tube", 2 * length, Math.Min(width, 6), bore: null, colour: colours),
                5 => SamplePieces.Bead("b", "seed-bead", Math.Min(length, 2), 2.2, bore: null, colour: colours),
                6 => SamplePieces.Bead("b", "heishi", Math.Min(length, 3), width, bore: null, colour: colours),
                _ => SamplePieces.Bead("b", "focal", 12 + length, 10 + width, 7, bore: null, role: Role.Focal, colour: colours,
                    with: d => d with { HoleOffsetMm = 1.8, Seat = new Seat(8, 1.5) }),
            };
            return name.Length == 0 ? bead : DrawnPieces.Named(name, bead);
        });

    /// <summary>Pieces of one bead to a few hundred, with and without groups, wishes and a focal on top, starting anywhere.</summary>
    public static Gen<Piece> Pieces { get; } =
        from beads in Beads.Array[1, 7]
        from kinds in Gen.Int[0, beads.Length - 1].Array[1, 260]
        from runs in Gen.Int[1, 12].Array[0, 30]
        from groupName in Names
        from wrist in Gen.Double[110, 230]
        from start in Gen.Double[-180, 180]
        from onTop in Gen.Bool
        from wish in Gen.Int[0, 2]
        select SamplePieces.Piece([.. beads.Select((b, i) => DrawnPieces.With(b, d => d with { Id = $"bead-{i}" }))], kinds, wrist, groups: Groups(runs, kinds.Length, groupName)) is var piece
            ? piece with
            {
                Title = "A piece " + groupName,
                Wearer = piece.Wearer with { StartAngleDeg = start, FocalOnTop = onTop && kinds.Any(k => beads[k].Role == Role.Focal) },
                Wishes = new Wishes { LiningUp = (LiningUpWish)wish },
            }
            : throw new InvalidOperationException();

    /// <summary>Any way of drawing.</summary>
    public static Gen<TurnRowsOptions> Options { get; } =
        from width in Gen.Double[70, 320]
        from byWidth in Gen.Bool
        from scale in Gen.Double[0.25, 2]
        from grey in Gen.Bool
        from close in Gen.Bool
        select new TurnRowsOptions { WidthMm = byWidth ? width : null, Scale = scale, Greyscale = grey, Close = close };

    private static ImmutableArray<GroupRun> Groups(int[] runs, int beads, string name)
    {
        var groups = ImmutableArray.CreateBuilder<GroupRun>();
        var at = 0;
        for (var i = 0; i < runs.Length && at + runs[i] <= beads; i++)
        {
            if (i % 3 != 2) groups.Add(new GroupRun(i % 2 == 0 && name.Length > 0 ? name : "group", at, runs[i]));
            at += runs[i];
        }
        return groups.ToImmutable();
    }
}
