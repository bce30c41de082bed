using System.Collections.Immutable;
using System.Globalization;
using Coilwright.Core.Grading;
using Coilwright.Core.Making;
using Coilwright.Core.Pieces;
using Coilwright.Core.StringingMaterials.MemoryWire;

namespace Coilwright.Wording;

/// <summary>The sizes of a design, in a maker's words.</summary>
/// <param name="sizes">The sizes.</param>
/// <param name="language">The language.</param>
/// <param name="beadName">Name for people of a bead's id; null: its name and key letter.</param>
public sealed class SizesSentences(Sizes sizes, Language language, Func<string, string>? beadName = null)
{
    // Lengths are shown in tenths of a millimetre.
    private const double LeastShownMm = 0.05;

    private readonly SizesWords _words = language.Sizes;
    private readonly Func<string, string> _name = beadName ?? new BeadNames(sizes.Base).Of;
    private readonly GapPlaces _places = new(sizes.Base, language, beadName);

    /// <summary>What every size keeps.</summary>
    public IEnumerable<string> Keeps()
    {
        var turns = language.Number(sizes.Turns, 1);
        yield return sizes.OverlapMm is { } overlap ? language.Sentence(_words.KeepsOverlap, ("turns", turns), ("overlapMm", overlap))
            : language.Sentence(_words.KeepsTurns, ("turns", turns));
        if (sizes.IsMirrored) yield return _words.KeepsMirrored;
        if (sizes.All.Count(s => !s.ComesOut) is var not and > 0) yield return language.Sentence(_words.SomeDoNot, ("sizes", not));
    }

    /// <summary>A size by its wrist.</summary>
    public string Name(Size size) => language.Sentence(_words.Name, ("wristMm", size.WristMm));

    /// <summary>A size as a piece of its own: with its wrist in the title, unless that would be longer than a title may be.</summary>
    public Piece OfItsOwn(Size size)
    {
        var title = language.Fill(_words.Title, ("title", size.Piece.Title), ("wristMm", size.WristMm));
        return PieceRules.OfTitle(title).IsEmpty ? size.Piece with { Title = title } : size.Piece;
    }

    /// <summary>What changes from the base size, in one sentence.</summary>
    public string Change(Size size)
    {
        if (size.IsUnchanged) return size.IsBase ? _words.IsBase : _words.Unchanged;
        return Template.Capital(string.Join(_words.Then, Groups(size).Concat(Runs(size)))) + ".";
    }

    /// <summary>What else there is to know of a size: that it does not come out, that another coil is wanted, that the wish fails.</summary>
    public IEnumerable<string> Notes(Size size)
    {
        if (!size.ComesOut) yield return language.Sentence(size.OffMm < 0 ? _words.TooShort : _words.TooLong, ("mm", size.OffMm), ("toleranceMm", sizes.ToleranceMm));
        if (size.Coil.Answer == CoilAnswer.Other) yield return language.Sentence(_words.OtherCoil, ("insideMm", InsideMm(size)));
        if (size.Coil.Answer == CoilAnswer.SmallerWanted) yield return language.Sentence(_words.SmallerCoil, ("loopMm", size.Coil.AskedLoopMm));
        if (size.Coil.Answer == CoilAnswer.LargerWanted) yield return language.Sentence(_words.LargerCoil, ("loopMm", size.Coil.AskedLoopMm));
        if (size.FailsWish) yield return _words.WishFails;
    }

    /// <summary>How far the length is off, for a column.</summary>
    public string Off(Size size) => Math.Abs(size.OffMm) < LeastShownMm ? _words.AsWanted
        : language.Fill(size.OffMm < 0 ? _words.Short : _words.Long, ("mm", Math.Abs(size.OffMm)));

    /// <summary>The coil, for a column.</summary>
    public string Coil(Size size) => language.Fill(_words.CoilSize, ("insideMm", InsideMm(size)));

    /// <summary>Where the focal lies, for a column; empty without one.</summary>
    public string Focal(Size size) => size.Reckoned.Focal is { } focal ? language.Place(focal.AngleDeg) : "";

    /// <summary>What lies against the wish, for a column; empty without one.</summary>
    public string Against(Size size) => size.Against is { } share ? language.Fill(_words.Share, ("share", share)) : "";

    /// <summary>Wire to cut, in loops, for a column.</summary>
    public string Loops(Size size) => language.Fill(_words.Loops, ("loops", size.Reckoned.Wire.LoopsToCut));

    /// <summary>Where the gaps are that change in any size.</summary>
    public IEnumerable<string> Gaps() => sizes.All.SelectMany(s => s.Runs).Select(r => r.Gap).Distinct().Order()
        .Select(gap => language.Sentence(_words.Gap, ("gap", gap), ("where", _places.Of(sizes.Gaps[gap - 1].First, sizes.Gaps[gap - 1].Count))));

    /// <summary>Beads that a line of the materials names.</summary>
    public string Bead(SizesLine line) => _name(line.Bead.Id);

    /// <summary>Packs to buy for one of each size; empty where the bead says nothing of packs.</summary>
    public string Packs(SizesLine line) => line.ForOneOfEach.Packs is { } packs ? PackWords.Of(packs, line.Bead.Description.Pack!, language) : "";

    private static double InsideMm(Size size) => size.Coil.Wire.By(CoilDatum.Inside).SizeMm;

    private IEnumerable<string> Runs(Size size) => size.Runs.GroupBy(r => (r.BeadId, r.More)).Select(same =>
    {
        var gaps = same.Select(r => r.Gap.ToString(CultureInfo.InvariantCulture)).ToArray();
        return language.Fill(same.Key.More > 0 ? _words.RunsMore : _words.RunsFewer, ("by", Math.Abs(same.Key.More)), ("bead", _name(same.Key.BeadId)),
            ("one", gaps.Length == 1 ? gaps[0] : null), ("many", gaps.Length > 1 ? List(gaps) : null));
    });

    // The same at both ends is said once; what is more at one end than at the other is said for that end.
    private IEnumerable<string> Groups(Size size)
    {
        foreach (var same in size.Groups.GroupBy(g => (What: What(g, 1), g.IsMore)))
        {
            var (start, finish) = (same.Count(g => g.AtStart), same.Count(g => !g.AtStart));
            var (more, both) = (same.Key.IsMore, Math.Min(start, finish));
            if (both > 0) yield return Said(more ? _words.MoreAtEachEnd : _words.FewerAtEachEnd, both);
            if (start > both) yield return Said(more ? _words.MoreAtStart : _words.FewerAtStart, start - both);
            if (finish > both) yield return Said(more ? _words.MoreAtFinish : _words.FewerAtFinish, finish - both);

            string Said(string template, int count) => language.Fill(template, ("count", count), ("what", What(same.First(), count)));
        }
    }

    // From the outside in, so that both ends say the same of the same.
    private string What(GroupChange group, int count)
    {
        var (own, beside) = group.AtStart ? (group.Beads, group.Beside) : ([.. group.Beads.Reverse()], [.. group.Beside.Reverse()]);
        return group.Group is { } name ? language.Fill(_words.Group, ("group", name), ("beside", beside.IsEmpty ? null : Beads(beside)))
            : language.Fill(_words.Times, ("count", count), ("beads", Beads(own.AddRange(beside))));
    }

    private string Beads(ImmutableArray<RunPart> runs) =>
        List([.. runs.Select(r => language.Fill(_words.Run, ("count", r.Count), ("bead", _name(sizes.Base.Piece.Beads[r.Kind].Id))))]);

    private string List(string[] items) => items.Length < 2 ? string.Concat(items) : string.Join(", ", items[..^1]) + _words.And + items[^1];
}
