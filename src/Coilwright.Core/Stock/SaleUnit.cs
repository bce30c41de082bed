using System.Collections.Immutable;
using Coilwright.Core.Faults;

namespace Coilwright.Core.Stock;

/// <summary>What beads and wire are sold by.</summary>
public enum SaleUnit
{
    /// <summary>One.</summary>
    Each,

    /// <summary>Twelve.</summary>
    Dozen,

    /// <summary>Twelve dozen, 144. Not a great gross.</summary>
    Gross,

    /// <summary>A mass of 1,200, as pressed beads are sold (common practice, no source). Not a weight.</summary>
    Mass,

    /// <summary>A strand: so many beads, or so long.</summary>
    Strand,

    /// <summary>Several strands tied together: so many beads, so many strands of a length, or so heavy.</summary>
    Hank,

    /// <summary>A bag, tube or box: so many, so long or so heavy.</summary>
    Pack,

    /// <summary>A gram.</summary>
    Gram,

    /// <summary>An avoirdupois ounce.</summary>
    Ounce,
}

/// <summary>What a supplier's word for a unit of sale may mean.</summary>
public abstract record SaleUnitReading
{
    private SaleUnitReading() { }

    /// <summary>One unit and no other.</summary>
    /// <param name="Unit">The unit.</param>
    public sealed record Known(SaleUnit Unit) : SaleUnitReading;

    /// <summary>Several: which one is for a person to say, never guessed.</summary>
    /// <param name="Either">The units, and none of them likelier.</param>
    /// <param name="Why">The question, as a sentence can be made of it.</param>
    public sealed record Ambiguous(ImmutableArray<SaleUnit> Either, Fault Why) : SaleUnitReading;

    /// <summary>None that is known here.</summary>
    /// <param name="Why">Why, with the words that are known.</param>
    public sealed record Unknown(Fault Why) : SaleUnitReading;
}

/// <summary>The words for units of sale, in English and German, and what is in those that always hold the same.</summary>
public static class SaleUnits
{
    // Words and short forms: common practice, no source.
    private static readonly ImmutableArray<(SaleUnit Unit, string[] Words)> Words =
    [
        (SaleUnit.Each, ["each", "ea", "pc", "pcs", "piece", "pieces", "stk", "stück"]),
        (SaleUnit.Dozen, ["dozen", "doz", "dz", "dtzd", "dutzend"]),
        (SaleUnit.Gross, ["gross", "gro", "gros"]),
        (SaleUnit.Mass, ["mass"]),
        (SaleUnit.Strand, ["strand", "strands", "str", "strang", "stränge"]),
        (SaleUnit.Hank, ["hank", "hanks", "hk", "bund"]),
        (SaleUnit.Pack, ["pack", "packs", "pk", "pkg", "bag", "tube", "box", "packung", "tüte", "röhrchen"]),
        (SaleUnit.Gram, ["gram", "grams", "gramm"]),
        (SaleUnit.Ounce, ["ounce", "ounces", "oz", "unze", "unzen"]),
    ];

    private static readonly ImmutableArray<(string[] Words, ImmutableArray<SaleUnit> Either)> Unclear =
    [
        (["gr", "grs"], [SaleUnit.Gram, SaleUnit.Gross]),
        // The sign of the gram is small; a list that shouts may mean either.
        (["g"], [SaleUnit.Gram, SaleUnit.Gross]),
        (["st", "s"], [SaleUnit.Strand, SaleUnit.Each]),
        (["m", "ms"], [SaleUnit.Mass, SaleUnit.Pack]),
        (["h"], [SaleUnit.Hank, SaleUnit.Pack]),
        (["p"], [SaleUnit.Each, SaleUnit.Pack]),
        (["d"], [SaleUnit.Dozen, SaleUnit.Each]),
        (["masse"], [SaleUnit.Mass, SaleUnit.Gram]),
    ];

    /// <summary>The word by which files and lists here write a unit.</summary>
    public static string Word(SaleUnit unit) => Words[(int)unit].Words[0];

    /// <summary>How many are in one, where that is always the same; null elsewhere.</summary>
    public static int? CountIn(SaleUnit unit) => unit switch { SaleUnit.Each => 1, SaleUnit.Dozen => 12, SaleUnit.Gross => 144, SaleUnit.Mass => 1200, _ => null };

    /// <summary>Grams in one, where it is a weight; null elsewhere.</summary>
    public static double? GramsIn(SaleUnit unit) => unit switch { SaleUnit.Gram => 1, SaleUnit.Ounce => Measures.Ounce.Grams, _ => null };

    /// <summary>Reads a supplier's word. <c>g</c> is the gram's sign; <c>GR</c>, <c>Gr.</c> and <c>G</c> may be gram or gross.</summary>
    public static SaleUnitReading Read(string text)
    {
        var said = text.Trim().TrimEnd('.');
        if (said == "g") return new SaleUnitReading.Known(SaleUnit.Gram);
        foreach (var (unit, words) in Words)
            if (words.Contains(said, StringComparer.OrdinalIgnoreCase)) return new SaleUnitReading.Known(unit);
        foreach (var (words, either) in Unclear)
            if (words.Contains(said, StringComparer.OrdinalIgnoreCase))
                return new SaleUnitReading.Ambiguous(either, Fault.Of(FaultCodes.SaleUnitUnclear, "saleUnit", said, ("one", Word(either[0])), ("other", Word(either[1]))));
        return new SaleUnitReading.Unknown(Fault.Of(FaultCodes.WordUnknown, "saleUnit", said.Length <= 60 ? said : said[..60] + "...", ("known", string.Join(", ", Words.Select(w => w.Words[0]))),
            ("nearest", NearestName.Of(said.ToLowerInvariant(), Words.SelectMany(w => w.Words)) ?? "")));
    }
}
