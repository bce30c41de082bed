using System.Collections.Immutable;
using System.Globalization;
using Coilwright.Core.Colour;

namespace Coilwright.Core.Tray;

/// <summary>A tray laid out for finding: every kind by its words, its shape, its colours, its drawer.</summary>
/// <remarks>
/// <para>Immutable; many may ask at once. Kinds stand in the order of their names, figures by their size ("Round 4" before "Round 10"), then of their keys.</para>
/// <para>What a question costs is bounded, whatever it asks and however many kinds answer to it: each word of it takes at most a thirty-second of the kinds in
/// single steps or one step for every 64 kinds. Why: docs/theory/tray-search.md.</para>
/// </remarks>
public sealed class TrayIndex
{
    // From so large a share of the kinds on, a beginning of words has its set laid out beforehand.
    private const int Share = 32;

    private readonly ImmutableArray<TrayKind> _kinds;
    private readonly string[] _words;
    private readonly int[][] _placesOfWord;
    private readonly Dictionary<string, KindSet> _beginnings = new(StringComparer.Ordinal);
    private readonly Dictionary<string, KindPlaces> _shapes, _families, _materials, _coatings, _drawers;
    private readonly double[] _lengths;
    private readonly int[] _byLength;
    private readonly KindSet[] _shorter;

    /// <summary>Lays out a tray.</summary>
    /// <param name="kinds">Its kinds, each key once.</param>
    /// <param name="words">What shapes and colour families are called.</param>
    /// <param name="families">The colour families.</param>
    public TrayIndex(IEnumerable<TrayKind> kinds, TrayWords words, ColourFamilies families)
    {
        var names = NameOrder;
        _kinds = [.. kinds.OrderBy(k => k.Bead.Name, names).ThenBy(k => k.Key, StringComparer.Ordinal)];
        var familyOf = new Dictionary<Srgb, string>();
        string[][] colours = [.. _kinds.Select(k => k.Bead.Colours.Select(FamilyOf).Distinct(StringComparer.Ordinal).ToArray())];
        _families = SetsOf(at => colours[at]);
        _shapes = SetsOf(at => [_kinds[at].Bead.Shape.Name]);
        _materials = SetsOf(at => One(TrayFacets.MaterialOf(_kinds[at])));
        _coatings = SetsOf(at => One(_kinds[at].Bead.Description.Coating));
        _drawers = SetsOf(at => One(_kinds[at].Drawer));
        Facets = new TrayFacets(Counted(_shapes), [.. families.All.Where(f => _families.ContainsKey(f.Key)).Select(f => (f.Key, _families[f.Key].Count))], Counted(_materials), Counted(_coatings), Counted(_drawers));

        var places = new SortedDictionary<string, List<int>>(StringComparer.Ordinal);
        for (var at = 0; at < _kinds.Length; at++)
            foreach (var word in WordsOf(_kinds[at], colours[at], words))
            {
                if (!places.TryGetValue(word, out var list)) places[word] = list = [];
                if (list.Count == 0 || list[^1] != at) list.Add(at);
            }
        _words = [.. places.Keys];
        _placesOfWord = [.. places.Values.Select(l => l.ToArray())];
        LayOutBeginnings();

        _byLength = [.. Enumerable.Range(0, _kinds.Length).OrderBy(at => _kinds[at].Bead.LengthMm)];
        _lengths = [.. _byLength.Select(at => _kinds[at].Bead.LengthMm)];
        _shorter = LayOutLengths();

        string FamilyOf(Srgb colour)
        {
            if (!familyOf.TryGetValue(colour, out var key)) familyOf[colour] = key = families.Of(colour);
            return key;
        }
    }

    /// <summary>How names are ordered: figures by their size, upper and lower case alike, in no language's own way.</summary>
    public static StringComparer NameOrder { get; } = StringComparer.Create(CultureInfo.InvariantCulture, CompareOptions.NumericOrdering | CompareOptions.IgnoreCase);

    /// <summary>Every kind, in order.</summary>
    public ImmutableArray<TrayKind> Kinds => _kinds;

    /// <summary>What there is to choose among.</summary>
    public TrayFacets Facets { get; }

    /// <summary>Looks for kinds.</summary>
    /// <param name="question">What is looked for.</param>
    /// <param name="most">How many of them to give at most.</param>
    /// <param name="from">How many to leave out before them.</param>
    public TrayFound Find(TrayQuestion question, int most, int from = 0)
    {
        KindSet? found = null;
        foreach (var word in Folded.Words(question.Text))
            // "4 x 6" is looked for as 4, 6 and 4x6.
            if (word != "x" && !Meet(ref found, Beginning(word))) return Nothing;
        if (!Meet(ref found, _shapes, question.Shape) || !Meet(ref found, _families, question.Family) || !Meet(ref found, _materials, question.Material)
            || !Meet(ref found, _coatings, question.Coating) || !Meet(ref found, _drawers, question.Drawer))
            return Nothing;
        if (question.LeastMm is not null || question.MostMm is not null)
        {
            // A hair, so that what a label calls 4 mm is 4 mm however it was written.
            const double hairMm = 1e-9;
            if (!Meet(ref found, Between(question.LeastMm - hairMm ?? 0, question.MostMm + hairMm ?? double.PositiveInfinity))) return Nothing;
        }
        if (found is null) return new TrayFound(_kinds.Length, [.. _kinds.Skip(from).Take(most)]);
        return new TrayFound(found.Count, [.. found.First(most, from).Select(at => _kinds[at])]);
    }

    private static TrayFound Nothing { get; } = new(0, []);

    /// <summary>Leaves of what was found what is in a set too; the first set is copied. False when the set is none.</summary>
    private static bool Meet(ref KindSet? found, KindSet? set)
    {
        if (set is null) return false;
        if (found is null) found = set.Copy();
        else found.And(set);
        return true;
    }

    private bool Meet(ref KindSet? found, Dictionary<string, KindPlaces> sets, string? key) => string.IsNullOrEmpty(key) || Meet(ref found, sets.GetValueOrDefault(key)?.In(_kinds.Length));

    /// <summary>The kinds of which a word begins so; null when there is none.</summary>
    private KindSet? Beginning(string beginning)
    {
        if (_beginnings.TryGetValue(beginning, out var laidOut)) return laidOut;
        KindSet? set = null;
        for (var at = FirstWord(beginning); at < _words.Length && _words[at].StartsWith(beginning, StringComparison.Ordinal); at++)
            (set ??= new KindSet(_kinds.Length)).Add(_placesOfWord[at]);
        return set;
    }

    private int FirstWord(string beginning)
    {
        var at = Array.BinarySearch(_words, beginning, StringComparer.Ordinal);
        return at < 0 ? ~at : at;
    }

    /// <summary>The sets of those beginnings that many words of kinds have.</summary>
    private void LayOutBeginnings()
    {
        // How many single steps each beginning would take; words stand in order, so those with the same beginning stand together.
        var steps = new Dictionary<string, int>(StringComparer.Ordinal);
        for (var at = 0; at < _words.Length; at++)
            for (var length = 1; length <= _words[at].Length; length++)
                steps[_words[at][..length]] = steps.GetValueOrDefault(_words[at][..length]) + _placesOfWord[at].Length;
        foreach (var beginning in steps.Where(s => s.Value * Share > _kinds.Length).Select(s => s.Key)) _beginnings[beginning] = Beginning(beginning)!;
    }

    private KindSet[] LayOutLengths()
    {
        var shorter = new List<KindSet>();
        var so = new KindSet(_kinds.Length);
        for (var rank = 0; rank < _byLength.Length; rank++)
        {
            if (rank % Block == 0) shorter.Add(so.Copy());
            so.Add(_byLength[rank]);
        }
        shorter.Add(so);
        return [.. shorter];
    }

    private int Block => Math.Max(1, _kinds.Length / Share);

    /// <summary>Kinds of a length from one to another, both included.</summary>
    private KindSet Between(double leastMm, double mostMm)
    {
        var set = ShorterThan(Rank(mostMm, above: true));
        set.Without(ShorterThan(Rank(leastMm, above: false)));
        return set;
    }

    /// <summary>The first so many by length: whole blocks as they are laid out, and what is left one by one.</summary>
    private KindSet ShorterThan(int rank)
    {
        if (_byLength.Length == 0) return new KindSet(0);
        var set = _shorter[Math.Min(rank / Block, _shorter.Length - 1)].Copy();
        for (var at = Math.Min(rank / Block, _shorter.Length - 1) * Block; at < rank; at++) set.Add(_byLength[at]);
        return set;
    }

    private int Rank(double mm, bool above)
    {
        var (low, high) = (0, _lengths.Length);
        while (low < high)
        {
            var middle = (low + high) / 2;
            if (_lengths[middle] < mm || above && _lengths[middle] == mm) low = middle + 1;
            else high = middle;
        }
        return low;
    }

    private Dictionary<string, KindPlaces> SetsOf(Func<int, string[]> keys)
    {
        var places = new Dictionary<string, List<int>>(StringComparer.Ordinal);
        for (var at = 0; at < _kinds.Length; at++)
            foreach (var key in keys(at))
            {
                if (!places.TryGetValue(key, out var list)) places[key] = list = [];
                list.Add(at);
            }
        return places.ToDictionary(p => p.Key, p => new KindPlaces([.. p.Value], _kinds.Length), StringComparer.Ordinal);
    }

    /// <summary>Where kinds of a sort stand: a set where they are many, one by one where they are few, so that a tray of as many sorts as kinds takes no more room than its kinds do.</summary>
    private sealed class KindPlaces
    {
        private readonly int[] _places;
        private readonly KindSet? _set;

        public KindPlaces(int[] places, int kinds)
        {
            _places = places;
            if (places.Length * Share > kinds) _set = In(kinds);
        }

        public int Count => _places.Length;

        public KindSet In(int kinds)
        {
            if (_set is not null) return _set;
            var set = new KindSet(kinds);
            set.Add(_places);
            return set;
        }
    }

    private static string[] One(string? text) => string.IsNullOrEmpty(text) ? [] : [text];

    private static ImmutableArray<(string Key, int Kinds)> Counted(Dictionary<string, KindPlaces> sets) => [.. sets.OrderBy(s => s.Key, NameOrder).Select(s => (s.Key, s.Value.Count))];

    private static IEnumerable<string> WordsOf(TrayKind kind, string[] families, TrayWords words)
    {
        var d = kind.Bead.Description;
        string?[] said =
        [
            kind.Key, d.Name, d.Shape, kind.Bead.Shape.Name, TrayFacets.MaterialOf(kind), d.Coating, d.Lot, kind.Drawer,
            string.Create(CultureInfo.InvariantCulture, $"{kind.Bead.LengthMm:0.##} x {kind.Bead.WidthMm:0.##}"),
            string.Create(CultureInfo.InvariantCulture, $"{kind.Bead.WidthMm:0.##} x {kind.Bead.LengthMm:0.##}"),
            .. d.Aliases, .. words.OfShape(kind.Bead.Shape.Name), .. families.SelectMany(f => words.OfFamily(f)),
        ];
        return said.OfType<string>().SelectMany(Folded.Words);
    }
}
