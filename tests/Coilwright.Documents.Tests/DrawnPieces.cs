using System.Collections.Immutable;
using Coilwright.Core.Alignment;
using Coilwright.Core.Beads;
using Coilwright.Core.Lies;
using Coilwright.Core.Pieces;
using Coilwright.Core.Readings;
using Coilwright.Core.Stringing;
using Coilwright.Core.Tests;
using Coilwright.Storage;

namespace Coilwright.Documents.Tests;

/// <summary>Pieces worth looking at, made in code, of nobody's design.</summary>
public static class DrawnPieces
{
    private static readonly ReckoningData Data = DataFiles.LoadDefault().Data!;

    /// <summary>The examples that stand in the repository.</summary>
    public static IEnumerable<(string Name, Piece Piece)> Examples() =>
        Directory.EnumerateFiles(Path.Combine(AppContext.BaseDirectory, "examples"), "*.piece.json").Order(StringComparer.Ordinal)
            .Select(f => (Path.GetFileName(f).Replace(".piece.json", "", StringComparison.Ordinal), PieceFile.ReadFrom(f, Data).Piece!));

    public static Reckoned Reckon(Piece piece, double? wristMm = null) => Reckoning.Of(piece, Data, new ReckonRequest { WristMm = wristMm });

    private static readonly Lazy<Dictionary<string, Reckoned>> AllReckoned = new(() => All().ToDictionary(p => p.Name, p => Reckon(p.Piece)));

    /// <summary>The names of <see cref="All"/>.</summary>
    public static TheoryData<string> Names => [.. All().Select(p => p.Name)];

    /// <summary>The readings of one of <see cref="All"/>, reckoned once for all tests.</summary>
    public static Reckoned Reckoned(string name) => AllReckoned.Value[name];

    /// <summary>Four turns, unmirrored: clusters of nuggets and discs between curved tubes, and a focal on the top.</summary>
    public static Piece Focal()
    {
        ImmutableArray<Bead> beads =
        [
            Named("amazonite nugget", SamplePieces.Bead("nugget", "nugget", 9.5, 9, 7.5, colour: "#5f9c93")),
            Named("bone disc", SamplePieces.Bead("disc", "heishi", 2.2, 7, role: Role.Accent, colour: "#eadfc8")),
            Named("brass curved tube", SamplePieces.Bead("tube", "curved-tube", 24, 3, role: Role.Connector, colour: "#b8934a", with: d => d with { Matched = true, CurveRadiusMm = 30 })),
            Named("red jasper round", SamplePieces.Bead("round", "round", 6, colour: "#9c4a35")),
            Named("brass daisy", SamplePieces.Bead("daisy", "rondelle", 1.6, 4.5, role: Role.Spacer, colour: "#c6a65c")),
            Named("river agate focal", SamplePieces.Bead("agate", "focal", 30, 22, 8, role: Role.Focal, colour: "#3f5566", with: d => d with { HoleOffsetMm = 2.2, Seat = new Seat(16, 1.6) })),
        ];
        const int nugget = 0, disc = 1, tube = 2, round = 3, daisy = 4, focal = 5;
        int[] cluster = [nugget, disc, nugget, daisy, nugget], discs = [disc, disc, round, disc, disc], pair = [round, daisy, round];
        var order = new OrderMaker();
        order.Add(daisy).Group("cluster", cluster).Add(daisy, tube, daisy).Group("discs", discs).Add(daisy, tube, daisy).Group("pair", pair).Add(daisy)
            .Group("cluster", cluster).Add(daisy, tube, daisy).Group("discs", discs).Add(daisy).Group("pair", pair).Add(daisy, tube, daisy).Group("cluster", cluster)
            .Add(daisy, tube, daisy, round, daisy, disc, daisy).Group("focal", [focal]).Add(daisy, disc, daisy, round, daisy, tube, daisy).Group("discs", discs).Add(daisy)
            .Group("cluster", cluster).Add(daisy, tube, daisy).Group("pair", pair).Add(daisy).Group("discs", discs).Add(daisy, tube, daisy).Group("cluster", cluster)
            .Add(daisy, tube, daisy).Group("pair", pair).Add(daisy, tube, daisy).Group("discs", discs).Add(daisy).Group("cluster", cluster).Add(daisy, tube, daisy)
            .Group("pair", pair).Add(daisy).Group("discs", discs).Add(daisy, tube, daisy).Group("cluster", cluster).Add(daisy);
        var piece = SamplePieces.Piece(beads, order.Kinds, wristMm: 172, groups: order.Groups);
        return piece with
        {
            Title = "River bend, four turns",
            Wearer = piece.Wearer with { FocalOnTop = true },
            Wishes = new Wishes { LiningUp = LiningUpWish.Mix },
        };
    }

    /// <summary>The focal piece with every number that its picture shows given here, so that an approved picture changes only with the drawing.</summary>
    public static Reckoned FocalAsGiven()
    {
        var reckoned = Reckoned("focal");
        var order = reckoned.Piece.Order;
        // A fifth of a millimetre of air for each bead.
        var shares = order.Kinds.Select(k => reckoned.Piece.Beads[k].LengthOnWireMm + 0.2).ToImmutableArray();
        var lie = new Lie(shares, 180, 30, 0);
        var focal = order.Kinds.IndexOf(5);
        lie = lie.StartingAt(6 - 360 * lie.MiddleMm(focal) / lie.WirePerTurnMm);
        var clusters = order.Groups.Where(g => g.Name == "cluster").ToArray();
        LiningUpPair Pair(GroupRun a, GroupRun b, double offMm, double overlapMm, LiningUpWish wish) => new(a.Name, a.First, a.Count, b.First, b.Count,
            lie.Turn(a.First), lie.Turn(b.First), lie.AngleDeg(b.First), offMm, overlapMm, lie.StartsMm[b.First], lie.StartsMm[b.First] + overlapMm)
        { Wish = wish };
        return reckoned with
        {
            WristMm = 172,
            Lie = lie,
            Fit = reckoned.Fit with { TurnsWorn = lie.Turns },
            Focal = reckoned.Focal! with { Index = focal, Turn = lie.Turn(focal), AngleDeg = lie.AngleDeg(focal), OffMm = 3 },
            LiningUp = reckoned.LiningUp with
            {
                Cover = 0.14,
                Word = LiningUpWord.Mixed,
                GroupsAreRuns = false,
                Pairs = [Pair(clusters[0], clusters[2], 4.2, 22, LiningUpWish.Mix), Pair(clusters[1], clusters[3], 0.2, 26, LiningUpWish.Columns)],
            },
        };
    }

    /// <summary>Five turns of a plain running repeat.</summary>
    public static Piece Repeat(int times = 16)
    {
        ImmutableArray<Bead> beads =
        [
            Named("matte onyx", SamplePieces.Bead("onyx", "round", 8, colour: "#2f2d2c")),
            Named("faceted garnet glass", SamplePieces.Bead("garnet", "faceted-rondelle", 5, 8, colour: "#7c2230", with: d => d with { EndFaceMm = 4 })),
            Named("silver bicone", SamplePieces.Bead("bicone", "bicone", 4, role: Role.Spacer, colour: "#b9bcc0")),
            Named("striped oval", With(SamplePieces.Bead("oval", "oval", 12, 6), d => d with { Colours = [new(0xd9, 0xb2, 0x7c), new(0x6b, 0x3f, 0x26), new(0xd9, 0xb2, 0x7c)] })),
        ];
        var piece = SamplePieces.Piece(beads, Enumerable.Range(0, times).SelectMany(_ => new[] { 0, 2, 1, 1, 2, 0, 2, 3, 2 }), wristMm: 165);
        return piece with { Title = "Night market" };
    }

    /// <summary>A child's single turn.</summary>
    public static Piece Child()
    {
        ImmutableArray<Bead> beads =
        [
            Named("wooden ball, sky blue", SamplePieces.Bead("sky", "round", 10, colour: "#7fb4d6", bore: 2)),
            Named("wooden ball, sunflower", SamplePieces.Bead("sun", "round", 10, colour: "#f0c24b", bore: 2)),
            Named("letter cube", SamplePieces.Bead("cube", "cube", 7, colour: "#f4efe6", bore: 2)),
        ];
        var piece = SamplePieces.Piece(beads, [0, 1, 0, 1, 0, 2, 2, 2, 2, 0, 1, 0, 1, 0], wristMm: 130, loopMm: 141);
        return piece with { Title = "Ada, one turn", Wearer = piece.Wearer with { IsChild = true } };
    }

    /// <summary>Columns that are wished for: three kinds of seed bead in blocks that nearly fill a turn.</summary>
    public static Piece Seeds(int turns = 8)
    {
        ImmutableArray<Bead> beads =
        [
            Named("seed 11/0, ivory", SamplePieces.Bead("ivory", "seed-bead", 1.5, 2.2, colour: "#efe6d0", bore: 0.8)),
            Named("seed 11/0, teal", SamplePieces.Bead("teal", "seed-bead", 1.5, 2.2, colour: "#1f6f74", bore: 0.8)),
            Named("seed 8/0, rust", SamplePieces.Bead("rust", "seed-bead", 2.1, 3.1, colour: "#a3492c", bore: 1.1)),
        ];
        var order = new OrderMaker();
        for (var i = 0; i < turns * 4; i++)
            order.Group("wave", [.. Enumerable.Repeat(0, 6), 2, 1, 1, 1, 2, .. Enumerable.Repeat(0, 6)]).Add([.. Enumerable.Repeat(1, 8)]).Add(2, 0, 2, 0, 2);
        return SamplePieces.Piece(beads, order.Kinds, wristMm: 168, groups: order.Groups) with
        {
            Title = "Tideline",
            Wishes = new Wishes { LiningUp = LiningUpWish.Columns },
        };
    }

    /// <summary>One bead on a wire.</summary>
    public static Piece Single() => SamplePieces.Piece([Named("a single pearl", SamplePieces.Bead("pearl", "round", 12, colour: "#f3ede4"))], [0]) with { Title = "One" };

    public static IEnumerable<(string Name, Piece Piece)> All()
    {
        foreach (var example in Examples()) yield return example;
        yield return ("focal", Focal());
        yield return ("repeat", Repeat());
        yield return ("child", Child());
        yield return ("seeds", Seeds());
        yield return ("single", Single());
    }

    internal static Bead Named(string name, Bead bead) => With(bead, d => d with { Name = name });

    internal static Bead With(Bead bead, Func<BeadDescription, BeadDescription> with) =>
        Bead.TryMake(with(bead.Description), out var made, out var faults) ? made! : throw new ArgumentException(string.Join("; ", faults));

    internal sealed class OrderMaker
    {
        private readonly List<int> _kinds = [];
        private readonly ImmutableArray<GroupRun>.Builder _groups = ImmutableArray.CreateBuilder<GroupRun>();

        public IEnumerable<int> Kinds => _kinds;

        public ImmutableArray<GroupRun> Groups => _groups.ToImmutable();

        public OrderMaker Add(params int[] kinds)
        {
            _kinds.AddRange(kinds);
            return this;
        }

        public OrderMaker Group(string name, int[] kinds)
        {
            _groups.Add(new GroupRun(name, _kinds.Count, kinds.Length));
            return Add(kinds);
        }
    }
}
