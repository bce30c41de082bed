using System.Collections.Frozen;
using System.Collections.Immutable;
using System.Globalization;
using System.Text.RegularExpressions;
using Coilwright.Core.Measures;

namespace Coilwright.Core.Making;

/// <summary>What a language does to numbers, units and letters in running text.</summary>
public sealed record ProofLanguage
{
    /// <summary>What stands between whole and fraction: a point or a comma. A point is understood in every language.</summary>
    public required char DecimalSign { get; init; }

    /// <summary>Numbers as words, in small letters: "three". Words that also mean something else ("one") are left out.</summary>
    public required FrozenDictionary<string, int> NumberWords { get; init; }

    /// <summary>Words that are a unit of length, with what one is in mm.</summary>
    public required FrozenDictionary<string, double> LengthUnits { get; init; }

    /// <summary>Words that are a unit of mass, with what one is in g.</summary>
    public required FrozenDictionary<string, double> MassUnits { get; init; }

    /// <summary>What stands between two measures that share the unit behind the second: "9 × 11 mm", "148 to 166 mm".</summary>
    public required FrozenSet<string> BetweenMeasures { get; init; }

    /// <summary>Units that are words of another meaning too: after a whole number and before a word in small letters they are none ("5 in a row").</summary>
    public required FrozenSet<string> UnitsThatAreWords { get; init; }

    /// <summary>Words, with their letters as they are, that look like a key letter and are a word at the head of a sentence: "A" in English.</summary>
    public required FrozenSet<string> LetterWords { get; init; }

    /// <summary>Parts of words, in small letters, that promise what only a laboratory can: "nickel-free".</summary>
    public required ImmutableArray<string> Promises { get; init; }
}

/// <summary>What a text may truly say of a piece or of one of its steps.</summary>
public sealed record ProofFacts
{
    /// <summary>Counts that may stand before a key letter, for every letter of the piece: empty where this text should not name the letter.</summary>
    public required FrozenDictionary<string, ImmutableHashSet<int>> Counts { get; init; }

    /// <summary>Letters that the text must name, in the order in which they are strung.</summary>
    public required ImmutableArray<string> MustName { get; init; }

    /// <summary>The runs one after the other, where each is said once and nothing repeats: then they must be said in this order. Empty otherwise.</summary>
    public required ImmutableArray<(int Count, string Letter)> InOrder { get; init; }

    /// <summary>Whole numbers that may stand alone.</summary>
    public required ImmutableHashSet<int> Numbers { get; init; }

    /// <summary>Numbers with a fraction that may stand alone, rounded to the decimals that are said, one at least: loops, turns worn.</summary>
    public required ImmutableArray<double> Amounts { get; init; }

    /// <summary>Lengths that may be said, mm.</summary>
    public required ImmutableArray<double> LengthsMm { get; init; }

    /// <summary>Masses that may be said, g.</summary>
    public required ImmutableArray<double> MassesG { get; init; }
}

/// <summary>What does not agree between a text and the piece. Its sentence is the language's.</summary>
public enum ProofSlip
{
    /// <summary>The letter is none of the piece's.</summary>
    LetterUnknown,

    /// <summary>The letter is the piece's, but nothing of it is strung here.</summary>
    LetterElsewhere,

    /// <summary>The step strings a letter that the text does not name.</summary>
    LetterMissing,

    /// <summary>Another count of the letter is strung here.</summary>
    CountDiffers,

    /// <summary>The runs are said in another order than they are strung.</summary>
    OrderDiffers,

    /// <summary>No measure of the piece that has to do with the text is as long.</summary>
    LengthUnknown,

    /// <summary>A length and its fellow in brackets are not the same length.</summary>
    LengthsDisagree,

    /// <summary>Nothing of the piece weighs as much.</summary>
    MassUnknown,

    /// <summary>The number is none that has to do with the text.</summary>
    NumberUnknown,

    /// <summary>The text promises what only a laboratory can.</summary>
    Promise,

    /// <summary>The text was written when the step strung something else.</summary>
    WrittenForOther,

    /// <summary>The text's step is gone.</summary>
    StepGone,
}

/// <summary>One place where a text does not agree with the piece.</summary>
/// <param name="Slip">What is the matter.</param>
/// <param name="At">Where it stands in the text, in characters from 0; the text's end where something is missing.</param>
/// <param name="Length">How many characters it covers.</param>
/// <param name="Said">What is said there; what is missing where something is.</param>
/// <param name="Known">What the piece has instead; empty where there is nothing to tell.</param>
public sealed record ProofMark(ProofSlip Slip, int At, int Length, string Said, string Known);

/// <summary>Reads a text against the piece: numbers, key letters, units and promises.</summary>
/// <remarks>
/// <para>Not a reader of meaning: "string the tube first" may be wrong and passes. It finds what most complaints about patterns are of: a wrong count, a letter that is not there,
/// a measure left over from an earlier version.</para>
/// <para>A length agrees with one of the piece's when it is that length rounded to the digits that are said: to half of the last decimal, or half a sixteenth of an inch
/// where inches are said as a fraction or whole (half a finer part where that is said). Two lengths with different units, the second in brackets, must agree within twice both
/// roundings: either may have been rounded up. A number as a word is read only before a key letter or a unit: "the two ends" counts nothing.</para>
/// </remarks>
public static partial class ProofReading
{
    // Longest time for one expression on a text as long as is accepted: they do not backtrack over more than a word, so this is never met.
    private const int MatchMs = 2000;

    private const double HairMm = 1e-6;

    // A ruler's inches; 1/2 on it is 8/16, not half an inch more or less.
    private const int Sixteenths = 16;

    /// <summary>Reads a text.</summary>
    /// <returns>What does not agree, in the order of the text; empty when nothing was found.</returns>
    public static ImmutableArray<ProofMark> Read(string text, ProofFacts facts, ProofLanguage language)
    {
        var marks = new List<ProofMark>();
        var numbers = NumbersIn(text, language);
        var named = new List<(int Count, string Letter, Capture At)>();
        foreach (Match match in Capitals().Matches(text))
        {
            var before = numbers.FindIndex(n => n.Unit is null && n.End <= match.Index && text[n.End..match.Index].AsSpan().Trim(" \u00a0×x").IsEmpty);
            var known = facts.Counts.ContainsKey(match.Value);
            if (before < 0 && (!known || IsWord(text, match, language))) continue;
            if (before >= 0 && !known && language.LengthUnits.ContainsKey(match.Value)) continue;
            var number = before < 0 ? null : numbers[before];
            if (number is not null) numbers.RemoveAt(before);
            Letter(match, number);
        }
        if (facts.InOrder.Length > 1 && named.Count == facts.InOrder.Length && named.All(n => n.Count > 0))
            for (var i = 0; i < named.Count; i++)
                if (named[i].Letter != facts.InOrder[i].Letter || named[i].Count != facts.InOrder[i].Count)
                {
                    // A wrong count was already told; here the letters stand in another order.
                    if (named.Select(n => (n.Count, n.Letter)).Order().SequenceEqual(facts.InOrder.Order()))
                        Add(ProofSlip.OrderDiffers, named[i].At.Index, named[i].At.Length, Run(named[i].Count, named[i].Letter), Run(facts.InOrder[i].Count, facts.InOrder[i].Letter));
                    break;
                }
        foreach (var letter in facts.MustName.Where(letter => named.All(n => n.Letter != letter)))
            Add(ProofSlip.LetterMissing, text.Length, 0, letter, "");
        Measures();
        foreach (var promise in language.Promises)
            for (var at = text.IndexOf(promise, StringComparison.OrdinalIgnoreCase); at >= 0; at = text.IndexOf(promise, at + 1, StringComparison.OrdinalIgnoreCase))
                Add(ProofSlip.Promise, at, promise.Length, text.Substring(at, promise.Length), "");
        return [.. marks.OrderBy(m => m.At).ThenBy(m => m.Slip)];

        void Letter(Match match, Number? number)
        {
            var letter = match.Value;
            var (at, length) = number is null ? (match.Index, match.Length) : (number.At, match.Index + match.Length - number.At);
            if (!facts.Counts.TryGetValue(letter, out var counts))
            {
                Add(ProofSlip.LetterUnknown, at, length, text.Substring(at, length), string.Join(", ", facts.Counts.Keys.OrderBy(k => k.Length).ThenBy(k => k, StringComparer.Ordinal)));
                return;
            }
            named.Add((number is null ? 0 : (int)Math.Min(number.Value, int.MaxValue), letter, match));
            if (counts.IsEmpty) Add(ProofSlip.LetterElsewhere, at, length, text.Substring(at, length), string.Join(", ", facts.MustName));
            else if (number is not null && !(number.IsWhole && counts.Contains((int)number.Value)))
                Add(ProofSlip.CountDiffers, at, length, text.Substring(at, length), string.Join(", ", counts.Order().Select(c => Run(c, letter))));
        }

        void Measures()
        {
            for (var n = 0; n < numbers.Count; n++)
            {
                var number = numbers[n];
                if (number.Unit is null)
                {
                    if (!(number.IsWhole && facts.Numbers.Contains((int)number.Value))
                        && !(number.Rounding < 0.5 && facts.Amounts.Any(a => Math.Abs(a - number.Value) <= number.Rounding + HairMm))
                        && !number.IsWord)
                        Add(ProofSlip.NumberUnknown, number.At, number.End - number.At, number.Text(text), "");
                    continue;
                }
                if (language.MassUnits.TryGetValue(number.Unit, out var grams))
                {
                    if (!facts.MassesG.Any(g => Math.Abs(g - number.Value * grams) <= number.Rounding * grams + HairMm))
                        Add(ProofSlip.MassUnknown, number.At, number.UnitEnd - number.At, number.Text(text), "");
                    continue;
                }
                var mm = number.Value * language.LengthUnits[number.Unit];
                var rounding = RoundingMm(number, language);
                var agrees = facts.LengthsMm.Any(known => Math.Abs(known - mm) <= rounding + HairMm);
                if (!agrees) Add(ProofSlip.LengthUnknown, number.At, number.UnitEnd - number.At, number.Text(text), "");
                // Its fellow in brackets in another unit: 12.5 mm (1/2 in).
                if (n + 1 < numbers.Count && numbers[n + 1] is { Unit: { } other } fellow && language.LengthUnits.TryGetValue(other, out var otherMm)
                    && otherMm != language.LengthUnits[number.Unit] && text[number.UnitEnd..fellow.At].AsSpan().Trim() is "(")
                {
                    // Either may have been rounded up, as a length to cut is.
                    if (Math.Abs(fellow.Value * otherMm - mm) > 2 * (rounding + RoundingMm(fellow, language)) + HairMm)
                        Add(ProofSlip.LengthsDisagree, number.At, fellow.UnitEnd - number.At, text[number.At..fellow.UnitEnd], "");
                    n++;
                }
            }
        }

        void Add(ProofSlip slip, int at, int length, string said, string known) => marks.Add(new ProofMark(slip, at, length, said, known));
    }

    private static string Run(int count, string letter) => count.ToString(CultureInfo.InvariantCulture) + " " + letter;

    private static double RoundingMm(Number number, ProofLanguage language)
    {
        var unitMm = language.LengthUnits[number.Unit!];
        // A whole number of inches is read off a ruler of sixteenths, not rounded to the inch.
        return unitMm * (unitMm == InchFraction.MmPerInch && number.Rounding == 0.5 ? 0.5 / Sixteenths : number.Rounding);
    }

    // "A tuft of", "I like": a capital and then a small word, where nothing counts it.
    private static bool IsWord(string text, Match match, ProofLanguage language) =>
        language.LetterWords.Contains(match.Value) && BeforeSmallWord(text, match.Index + match.Length);

    private static bool BeforeSmallWord(string text, int at) => at + 1 < text.Length && text[at] is ' ' or '\u00a0' && char.IsLower(text[at + 1]);

    // A number in a text. Rounding is half of its last place, in its own unit.
    private sealed record Number(int At, int End, double Value, double Rounding, string? Unit, int UnitEnd, bool IsWord)
    {
        public bool IsWhole => Value == Math.Floor(Value) && Value <= int.MaxValue;

        public string Text(string text) => text[At..(Unit is null ? End : UnitEnd)];
    }

    private static List<Number> NumbersIn(string text, ProofLanguage language)
    {
        var found = new List<Number>();
        foreach (Match match in Numerals().Matches(text))
        {
            var (value, rounding) = ValueOf(match, language);
            if (value is { } read) Found(match.Index, match.Index + match.Length, read, rounding, false);
        }
        foreach (Match match in Words().Matches(text))
            if (language.NumberWords.TryGetValue(match.Value.ToLowerInvariant(), out var value)) Found(match.Index, match.Index + match.Length, value, 0.5, true);
        found.Sort((a, b) => a.At.CompareTo(b.At));
        // "9.5 × 11 mm": the unit goes with both.
        for (var n = found.Count - 2; n >= 0; n--)
            if (found[n].Unit is null && found[n + 1].Unit is { } unit && language.BetweenMeasures.Contains(text[found[n].End..found[n + 1].At].Trim(' ', '\u00a0')))
                found[n] = found[n] with { Unit = unit, UnitEnd = found[n].End };
        return found;

        void Found(int at, int end, double value, double rounding, bool isWord)
        {
            var unit = Unit().Match(text, end);
            var word = unit.Success ? unit.Groups["unit"].Value : "";
            // "1 G" is a bead and "1 g" a gram: only long words are also units with a capital.
            if (word.Length > 2 && !language.LengthUnits.ContainsKey(word) && !language.MassUnits.ContainsKey(word)) word = word.ToLowerInvariant();
            var isUnit = (language.LengthUnits.ContainsKey(word) || language.MassUnits.ContainsKey(word))
                && !(language.UnitsThatAreWords.Contains(word) && rounding == 0.5 && BeforeSmallWord(text, unit.Index + unit.Length));
            found.Add(new Number(at, end, value, rounding, isUnit ? word : null, isUnit ? unit.Index + unit.Length : end, isWord));
        }
    }

    private static (double? Value, double Rounding) ValueOf(Match match, ProofLanguage language)
    {
        var whole = match.Groups["whole"].Value;
        double value = 0, rounding = 0.5;
        if (whole.Length > 0)
        {
            var sign = whole.AsSpan().IndexOfAny('.', ',');
            if (sign >= 0 && whole[sign] == ',' && language.DecimalSign != ',') return (null, 0);
            if (!double.TryParse(whole.Replace(',', '.'), NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out value)) return (null, 0);
            if (sign >= 0) rounding = 0.5 * Math.Pow(10, -(whole.Length - sign - 1));
        }
        if (match.Groups["top"].Success)
        {
            var (top, bottom) = (int.Parse(match.Groups["top"].Value, CultureInfo.InvariantCulture), int.Parse(match.Groups["bottom"].Value, CultureInfo.InvariantCulture));
            if (bottom == 0) return (null, 0);
            (value, rounding) = (value + (double)top / bottom, 0.5 / Math.Max(bottom, Sixteenths));
        }
        else if (match.Groups["sign"] is { Success: true, Value: var sign } && Fractions.IndexOf(sign[0]) is var at)
            (value, rounding) = (value + Eighths[at] / 8.0, 0.5 / Sixteenths);
        return (value, rounding);
    }

    private const string Fractions = "½¼¾⅛⅜⅝⅞";
    private static readonly int[] Eighths = [4, 2, 6, 1, 3, 5, 7];

    // Not inside a word or another number: "x2y" holds none. A count may touch its letter: 5B.
    [GeneratedRegex(@"(?<![\p{L}\d.,/])(?:(?<whole>\d{1,9}(?:[.,]\d{1,6})?)(?:[ \u00a0-]?(?:(?<top>\d{1,2})/(?<bottom>\d{1,3})(?!\d)|(?<sign>[½¼¾⅛⅜⅝⅞])))?|(?<top>\d{1,2})/(?<bottom>\d{1,3})(?!\d)|(?<sign>[½¼¾⅛⅜⅝⅞]))(?![\d/])", RegexOptions.None, MatchMs)]
    private static partial Regex Numerals();

    // Key letters: one or two capitals by themselves, or after the number that counts them.
    [GeneratedRegex(@"(?<![\p{L}])\p{Lu}{1,2}(?![\p{L}\d])", RegexOptions.None, MatchMs)]
    private static partial Regex Capitals();

    [GeneratedRegex(@"\p{L}+", RegexOptions.None, MatchMs)]
    private static partial Regex Words();

    [GeneratedRegex(@"\G[ \u00a0]?(?<unit>\p{L}+|[""″])(?![\p{L}])", RegexOptions.None, MatchMs)]
    private static partial Regex Unit();
}
