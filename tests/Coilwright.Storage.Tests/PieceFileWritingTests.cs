using System.Collections.Immutable;
using System.Text;
using Coilwright.Core.Beads;
using Coilwright.Core.Colour;
using Coilwright.Core.Findings;
using Coilwright.Core.Measures;
using Coilwright.Core.Pieces;
using Coilwright.Core.Stringing;
using Coilwright.Core.StringingMaterials.MemoryWire;
using CsCheck;

namespace Coilwright.Storage.Tests;

/// <summary>Written and read again, a piece is the same piece.</summary>
public class PieceFileWritingTests
{
    private static readonly Gen<double> Mm = Gen.Double[0.5, 12].Select(v => Math.Round(v, 3));
    private static readonly Gen<string> Words = Gen.String[Gen.Char[' ', '~'], 0, 12];
    // Letters beyond ASCII, quotes, backslashes and signs from beyond the basic plane must survive too.
    private static readonly Gen<string> Names = Gen.OneOf(Words, Pick.From("Pérle \"grise\"", "C:\\beads", "珠", "🐚 shell", "tab\there", "a/b <&> '"));

    private static readonly Gen<BeadLength> Length = Gen.OneOf<BeadLength>(
        Mm.Select(Gen.Double[0, 0.4], (mm, t) => (BeadLength)new BeadLength.Nominal(mm, Math.Round(t, 3))),
        Mm.Select(Mm, (a, b) => (BeadLength)new BeadLength.Range(Math.Min(a, b), Math.Max(a, b))),
        Gen.Int[1, 40].Select(Mm, (n, mm) => (BeadLength)new BeadLength.Row(n, n * mm, TestData.Data.Choices.RulerErrorMm)));

    private static readonly Gen<BeadDescription> Description =
        from shape in Pick.From("round", "rondelle", "chip", "nugget", "tube", "oval", "focal", "curved-tube", "coin")
        from length in Length
        from size in Gen.Select(Gen.Double[8, 12], Gen.Double[8, 12])
        from name in Names.Null()
        from colours in Gen.Select(Gen.Byte, Gen.Byte, Gen.Byte).Array[0, 3]
        from materialKey in Pick.From("quartz", "brass", "lava", null)
        from massG in Gen.Double[0.01, 5].Nullable()
        from role in Pick.From(Enum.GetValues<Role>())
        from shows in Gen.Double[0, 1].Nullable()
        from pack in Gen.Select(Pick.From("strand", "bag"), Gen.Int[1, 100])
        from price in Gen.Decimal[0, 100].Select(p => Math.Round(p, 2)).Nullable()
        from aliases in Names.Array[0, 2]
        from has in Gen.Bool.Array[6]
        let known = materialKey is not null ? TestData.Data.Materials.GetValueOrDefault(materialKey) : null
        select new BeadDescription
        {
            Id = "bead",
            Name = name,
            Shape = shape,
            Length = length,
            WidthMm = size.Item1,
            ThicknessMm = shape is "round" or "rondelle" or "tube" or "curved-tube" ? size.Item1 : size.Item2,
            BoreMm = has[0] ? 1.1 : null,
            HoleOffsetMm = shape == "focal" ? 1.5 : null,
            EndFaceMm = shape == "rondelle" && has[1] ? 3.5 : null,
            CurveRadiusMm = shape == "curved-tube" ? 31.5 : null,
            Matched = shape == "curved-tube" && has[2],
            CurvedLength = shape == "curved-tube" && has[3] ? CurvedLength.Chord : null,
            Seat = shape == "focal" && has[4] ? new Seat(length.MeanMm / 2, 2) : null,
            Colours = [.. colours.Select(c => new Srgb(c.Item1, c.Item2, c.Item3))],
            Material = known,
            OtherMaterial = known is null && massG is not null ? materialKey : null,
            MassG = massG,
            Role = role,
            Shows = shows,
            Pack = has[5] ? new Pack(pack.Item1, pack.Item2) : null,
            Price = price,
            Aliases = [.. aliases],
        };

    private static readonly Gen<ImmutableArray<Bead>> Beads = Description.Array[1, 5].Select(all => all
        .Select((d, i) => Bead.TryMake(d with { Id = "bead-" + i }, out var bead, out _) ? bead : null).OfType<Bead>().ToImmutableArray());

    private static readonly Gen<CoilWire> Wire =
        from thick in Gen.OneOf(Gen.Double[0.3, 1].Select(v => (Mm: v, Name: (string?)null)), Pick.From("22 AWG", "24 SWG").Select(Gauge))
        from size in Gen.OneOf(Gen.Double[20, 90].Select(v => (CoilDatum.Inside, v)), Gen.Double[20, 90].Select(v => (CoilDatum.CentreLine, v)),
            Gen.Double[60, 300].Select(v => (CoilDatum.MeasuredLoop, v)))
        from cut in Gen.Double[10, 2000].Nullable()
        from steel in Pick.From("stainless-302", "music-wire", null)
        select new CoilWire(thick.Mm, size.Item1, size.Item2, steel is null ? null : TestData.Data.Steels[steel]) { CutMm = cut, GaugeName = thick.Name };

    private static readonly Gen<WireEnd> End =
        from finish in Pick.From(Enum.GetValues<EndFinish>())
        from size in Gen.Double[0.5, 10]
        from measured in Gen.Double[1, 30].Nullable()
        select new WireEnd(finish, size) { MeasuredMm = measured };

    private static readonly Gen<Wearer> Wearers =
        from wrist in Gen.Double[100, 220]
        from ease in Gen.OneOf(Gen.Const(0.0), Gen.Double[-5, 20])
        from reach in Gen.Double[0, 8].Nullable()
        from angle in Gen.Double[-180, 180]
        from flags in Gen.Select(Gen.Bool, Gen.Bool)
        select new Wearer(wrist, ease)
        {
            BearingReachMm = reach,
            FocalOnTop = flags.Item1,
            // With the focal on top the angle is not used and not written.
            StartAngleDeg = flags.Item1 ? 180 : angle,
            IsChild = flags.Item2,
        };

    private static readonly Gen<Piece> Pieces =
        from beads in Beads.Where(b => b.Length > 0)
        from kinds in Gen.Int[0, beads.Length - 1].Array[1, 30]
        from groups in Gen.Select(Gen.Int[0, 29], Gen.Int[1, 10], Gen.Int[0, 3]).Array[0, 6]
        from title in Names.Where(n => n.Trim().Length > 0)
        from wire in Wire
        from ends in Gen.Select(End, End, Gen.Double[0, 30], Gen.Double[0, 50], Gen.Double[-20, 50].Nullable())
        from wearer in Wearers
        from wish in Pick.From(Enum.GetValues<LiningUpWish>())
        from places in Gen.Select(Gen.Double[-180, 180], Gen.Double[-180, 180], Pick.From(Enum.GetValues<LiningUpWish>())).Array[0, 2]
        from turns in Gen.Double[0.5, 8].Nullable()
        from within in Gen.Double[0, 90].Nullable()
        from measuredTo in Gen.Int[1, kinds.Length].Nullable()
        let order = new StringingOrder([.. kinds], Nested(groups, kinds.Length))
        select new Piece
        {
            Title = title,
            Beads = beads,
            Wire = wire,
            Ends = new WireEnds(ends.Item1, ends.Item2, ends.Item3, ends.Item4) { OverlapMm = ends.Item5 },
            Wearer = wearer,
            Order = order,
            MeasuredRows = measuredTo is { } last ? [new MeasuredRow(1, last, kinds.Take(last).Sum(k => beads[k].LengthOnWireMm) * 1.05)] : [],
            Wishes = new Wishes
            {
                LiningUp = wish,
                Places = [.. places.Select(p => new PlaceWish(p.Item1, p.Item2, p.Item3))],
                Groups = order.Groups.Select(g => g.Name).Distinct().ToImmutableSortedDictionary(n => n, _ => wish, StringComparer.Ordinal),
                Turns = turns,
                FocalWithinDeg = within,
            },
        };

    [Fact]
    public void Any_piece_written_and_read_again_is_the_same_piece() => Pieces.Sample(piece =>
    {
        var bytes = PieceFile.Write(piece);
        var read = PieceFile.Read(bytes, null, TestData.Data);
        Assert.Empty(read.Faults);
        AssertSame(piece, read.Piece!);
        Assert.Equal(Encoding.UTF8.GetString(bytes), Encoding.UTF8.GetString(PieceFile.Write(read.Piece!)));
    }, iter: 300);

    [Fact]
    public void Any_piece_written_is_accepted_by_the_schema() => Pieces.Sample(piece =>
    {
        var bytes = PieceFile.Write(piece);
        Assert.True(PieceSchema.Accepts(bytes), PieceSchema.Complaints(bytes));
    }, iter: 100);

    [Theory]
    [MemberData(nameof(ExamplesTests.Files), MemberType = typeof(ExamplesTests))]
    public void Every_example_written_and_read_again_is_the_same_piece(string file)
    {
        var piece = PieceFile.ReadFrom(Path.Combine(TestData.Examples, file), TestData.Data).Piece!;
        using var folder = new TempFolder();
        Assert.Null(PieceFile.WriteTo(folder.File(file), piece));
        AssertSame(piece, PieceFile.ReadFrom(folder.File(file), TestData.Data).Piece!);
    }

    [Fact]
    public void The_files_with_every_field_come_back_the_same()
    {
        foreach (var file in FilesWithEveryField.All)
        {
            var piece = TestData.Read(file).Piece!;
            AssertSame(piece, PieceFile.Read(PieceFile.Write(piece), null, TestData.Data).Piece!);
        }
    }

    [Fact]
    public void Letters_are_written_as_they_are()
    {
        var piece = TestData.Read(FilesWithEveryField.All[2].Replace("Only a measured loop", "Pérle 珠 <3", StringComparison.Ordinal)).Piece!;
        Assert.Contains("\"Pérle 珠 <3\"", Encoding.UTF8.GetString(PieceFile.Write(piece)), StringComparison.Ordinal);
    }

    private static (double Mm, string? Name) Gauge(string name) => WireGauge.TryParse(name, out var mm) ? (mm, name) : throw new ArgumentException(name);

    /// <summary>Groups that lie inside one another or apart, outer before inner.</summary>
    private static ImmutableArray<GroupRun> Nested((int First, int Count, int Name)[] wanted, int beads)
    {
        var kept = new List<GroupRun>();
        foreach (var (first, count, name) in wanted.Where(w => w.First < beads).OrderBy(w => w.First).ThenByDescending(w => w.Count))
        {
            var run = new GroupRun("group-" + (kept.Count + 10 * name), first, Math.Min(count, beads - first));
            if (kept.All(k => run.First >= k.End || run.End <= k.End)) kept.Add(run);
        }
        return [.. kept];
    }

    private static void AssertSame(Piece a, Piece b)
    {
        Assert.Equal((a.Title, a.Wire, a.Ends, a.Wearer, a.OrderText), (b.Title, b.Wire, b.Ends, b.Wearer, b.OrderText));
        Assert.Equal(a.Order.Kinds, b.Order.Kinds);
        Assert.Equal(a.Order.Groups, b.Order.Groups);
        Assert.Equal(a.MeasuredRows, b.MeasuredRows);
        Assert.Equal((a.Wishes.LiningUp, a.Wishes.Turns, a.Wishes.FocalWithinDeg), (b.Wishes.LiningUp, b.Wishes.Turns, b.Wishes.FocalWithinDeg));
        Assert.Equal(a.Wishes.Places, b.Wishes.Places);
        Assert.Equal(a.Wishes.Groups, b.Wishes.Groups);
        Assert.Equal(a.Beads.Length, b.Beads.Length);
        foreach (var (x, y) in a.Beads.Zip(b.Beads))
        {
            Assert.Equal(x.Description.Colours, y.Description.Colours);
            Assert.Equal(x.Description.Aliases, y.Description.Aliases);
            // Everything else is compared by value once the lists, which compare by reference, are out of the way.
            Assert.Equal(x.Description with { Colours = [], Aliases = [] }, y.Description with { Colours = [], Aliases = [] });
            Assert.Equal((x.Shape, x.LengthMm, x.WidthMm, x.ThicknessMm), (y.Shape, y.LengthMm, y.WidthMm, y.ThicknessMm));
        }
    }
}
