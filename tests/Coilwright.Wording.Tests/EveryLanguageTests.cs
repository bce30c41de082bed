using System.Collections.Immutable;
using System.Reflection;
using System.Text.RegularExpressions;
using System.Xml.Linq;
using Coilwright.Core.Alignment;
using Coilwright.Core.Beads;
using Coilwright.Core.Beads.Shapes;
using Coilwright.Core.Cures;
using Coilwright.Core.Editing;
using Coilwright.Core.Faults;
using Coilwright.Core.Fit;
using Coilwright.Core.Making;
using Coilwright.Core.Readings;

namespace Coilwright.Wording.Tests;

/// <summary>What every language must have. A new language is held to it by its line in <see cref="Languages"/>.</summary>
public partial class EveryLanguageTests
{
    public static TheoryData<string> Languages_ => [.. Languages.All.Select(l => l.Code)];

    [Theory, MemberData(nameof(Languages_))]
    public void Every_fault_code_has_its_sentences_and_no_sentence_is_without_a_code(string code)
    {
        var language = Languages.Find(code)!;
        Assert.Equal(Codes.Faults.Select(c => c.Code).Order(StringComparer.Ordinal), language.Faults.Keys.Order(StringComparer.Ordinal));
        Assert.All(language.Faults.Values, s => Assert.False(string.IsNullOrWhiteSpace(s.What) || string.IsNullOrWhiteSpace(s.Rule)));
    }

    [Theory, MemberData(nameof(Languages_))]
    public void Every_notice_code_has_its_sentences_and_no_sentence_is_without_a_code(string code)
    {
        var language = Languages.Find(code)!;
        Assert.Equal(Codes.Notices.Select(c => c.Code).Order(StringComparer.Ordinal), language.Notices.Keys.Order(StringComparer.Ordinal));
        Assert.All(language.Notices.Values,
            s => Assert.False(string.IsNullOrWhiteSpace(s.Short) || string.IsNullOrWhiteSpace(s.Message) || string.IsNullOrWhiteSpace(s.WhatToDo)));
    }

    [Theory, MemberData(nameof(Languages_))]
    public void Every_cure_code_says_what_it_does_of_what_its_code_gives(string code)
    {
        var language = Languages.Find(code)!;
        Assert.Equal(Codes.Cures.Select(c => c.Code).Order(StringComparer.Ordinal), language.Cures.Keys.Order(StringComparer.Ordinal));
        foreach (var (cure, comment) in Codes.Cures)
        {
            foreach (var name in Template.NamesIn(language.Cures[cure]).Except(["bead"]))
                Assert.True(Regex.IsMatch(comment, $@"\b{name}\b"), $"{cure} gives no {name}: {comment}");
            var given = Regex.Matches(comment[(comment.LastIndexOf(':') + 1)..], @"\w+Mm|loops|number|count|after|first|last|times").Select(m => m.Value).ToHashSet(StringComparer.Ordinal);
            AssertWhole(language.Say(new Cure(cure, new SetTitle("x"), "chip", given.ToImmutableSortedDictionary(n => n, _ => 3.0),
                ImmutableSortedDictionary<string, string>.Empty.Add("end", "start").Add("gauge", "24 AWG")), id => "agate " + id));
        }
    }

    // The core's own reasons stand in the comment of the property that carries them.
    [Theory, MemberData(nameof(Languages_))]
    public void Every_reading_that_can_be_missing_says_why(string code)
    {
        var core = Codes.MarkedIn(typeof(LiningUpReport), nameof(LiningUpReport.WhyNull));
        Assert.NotEmpty(core);
        Assert.Equal(core.Concat(Codes.Of(typeof(WhyNotCodes)).Select(c => c.Code)).Order(StringComparer.Ordinal),
            Languages.Find(code)!.WhyNot.Keys.Order(StringComparer.Ordinal));
    }

    [Theory, MemberData(nameof(Languages_))]
    public void A_fault_sentence_asks_only_for_what_its_code_gives(string code)
    {
        var language = Languages.Find(code)!;
        foreach (var (fault, comment) in Codes.Faults)
        {
            var sentence = language.Faults[fault];
            foreach (var name in Template.NamesIn(sentence.What + sentence.Rule + sentence.Mend).Except(["field", "value"]))
                Assert.True(comment.Contains($"{{{name}}}", StringComparison.Ordinal), $"{fault} gives no {{{name}}}: {comment}");
        }
    }

    [Theory, MemberData(nameof(Languages_))]
    public void A_notice_sentence_asks_only_for_what_its_code_gives(string code)
    {
        var language = Languages.Find(code)!;
        foreach (var (notice, comment) in Codes.Notices)
        {
            var sentence = language.Notices[notice];
            foreach (var name in Template.NamesIn(sentence.Short + sentence.Message + sentence.WhatToDo).Except(["bead", "positions"]))
                Assert.True(Regex.IsMatch(comment, $@"\b{name}\b"), $"{notice} gives no {name}: {comment}");
        }
    }

    [Theory, MemberData(nameof(Languages_))]
    public void A_report_word_asks_only_for_what_its_comment_gives(string code)
    {
        var language = Languages.Find(code)!;
        var xml = XDocument.Load(Path.ChangeExtension(typeof(Language).Assembly.Location, ".xml"));
        var comments = xml.Descendants("member").ToDictionary(m => m.Attribute("name")!.Value, m => m.Element("summary")?.Value ?? "");
        foreach (var (owner, property, text) in StandingTexts(language))
            foreach (var name in Template.NamesIn(text))
                Assert.True(comments[$"P:{owner.FullName}.{property}"].Contains($"{{{name}}}", StringComparison.Ordinal),
                    $"{owner.Name}.{property} is not given {{{name}}}");
    }

    [Theory, MemberData(nameof(Languages_))]
    public void A_language_has_a_text_at_every_place_where_English_has_one_and_nowhere_else(string code) =>
        Assert.Equal(LanguageTexts.Of(Languages.English).Keys.Order(StringComparer.Ordinal), LanguageTexts.Of(Languages.Find(code)!).Keys.Order(StringComparer.Ordinal));

    // Whoever reads another language must not be told less.
    [Theory, MemberData(nameof(Languages_))]
    public void A_text_gives_the_same_values_as_the_English_one(string code)
    {
        var english = LanguageTexts.Of(Languages.English);
        Assert.All(LanguageTexts.Of(Languages.Find(code)!), t => Assert.Equal(Template.NamesIn(english[t.Key]), Template.NamesIn(t.Value)));
    }

    // What is the same in another language and in English: signs of units, and words that are.
    private static readonly Dictionary<string, string[]> SameAsEnglish = new(StringComparer.Ordinal)
    {
        ["de"] = ["mm", "g", "{grams} g", "{grams}\u00a0g ({ounces}\u00a0oz)", "Ø\u00a0{insideMm:mm}", "A4", "Alt", "Aluminium", "Amethyst", "Esc", "Bronze", "Heishi", "Material", "Name", "Nugget", "Rondelle", "beige", "orange"],
    };

    public static TheoryData<string> Others => [.. Languages.All.Where(l => l.Code != "en").Select(l => l.Code)];

    [Theory, MemberData(nameof(Others))]
    public void No_text_is_left_in_English_save_what_is_the_same_in_both(string code)
    {
        var english = LanguageTexts.Of(Languages.English);
        var same = LanguageTexts.Of(Languages.Find(code)!).Where(t => string.Equals(t.Value, english[t.Key], StringComparison.OrdinalIgnoreCase)).Select(t => t.Value).Distinct().Where(HasWords);
        Assert.Equal(string.Join('\n', SameAsEnglish[code].Order(StringComparer.Ordinal)), string.Join('\n', same.Order(StringComparer.Ordinal)));
    }

    [Theory, MemberData(nameof(Languages_))]
    public void Every_choice_by_number_has_a_form_for_each_plural_of_the_language(string code)
    {
        var language = Languages.Find(code)!;
        var forms = Enumerable.Range(0, 200).Select(n => language.PluralForm($"{n}")).Max() + 1;
        var found = 0;
        foreach (var text in AllTexts(language))
            foreach (Match choice in Choice().Matches(text))
            {
                found++;
                Assert.Equal(forms, choice.Groups[1].Value.Split('|').Length);
            }
        Assert.True(found > 5, "The test found no choices to check.");
    }

    [Theory, MemberData(nameof(Languages_))]
    public void Words_stand_for_every_value_that_the_core_can_give(string code)
    {
        var terms = Languages.Find(code)!.Terms;
        Assert.Equal(Enum.GetValues<Severity>(), terms.Severities.Keys.Order());
        Assert.Equal(Enum.GetValues<BenchTool>(), Languages.Find(code)!.Class.Tools.Keys.Order());
        Assert.Equal(Enum.GetValues<StepAction>(), Languages.Find(code)!.Class.Actions.Keys.Order());
        Assert.Equal(Enum.GetValues<LiningUpWord>(), terms.LiningUp.Keys.Order());
        Assert.Equal(Enum.GetValues<LiningUpWord>(), Languages.Find(code)!.Bench.Readings.LiningUpWords.Keys.Order());
        Assert.Equal(Enum.GetValues<Passes>(), terms.Passing.Keys.Order());
        Assert.Equal(Enum.GetValues<WornBy>(), terms.WornBy.Keys.Order());
        Assert.Equal(Enum.GetValues<Role>(), terms.Roles.Keys.Order());
        Assert.Equal(BeadShapes.All.Select(s => s.Name).Order(StringComparer.Ordinal), terms.Shapes.Keys.Order(StringComparer.Ordinal));
        Assert.Equal(Codes.Of(typeof(FaultTypes)).Select(c => c.Code).Order(StringComparer.Ordinal),
            terms.FaultTypes.Keys.Order(StringComparer.Ordinal));
        Assert.Equal(Codes.Of(typeof(OrderExpectations)).Select(c => c.Code).Order(StringComparer.Ordinal),
            terms.OrderExpectations.Keys.Order(StringComparer.Ordinal));
        Assert.Equal(Codes.Of(typeof(FaultDetails)).Select(c => c.Code).Order(StringComparer.Ordinal),
            terms.FaultDetails.Keys.Order(StringComparer.Ordinal));
    }

    [Theory, MemberData(nameof(Languages_))]
    public void Every_fault_filled_with_all_it_gives_leaves_no_brace_and_no_gap(string code)
    {
        var language = Languages.Find(code)!;
        foreach (var (fault, comment) in Codes.Faults)
        {
            var given = Given().Matches(comment).Select(m => (m.Groups[1].Value, "7")).ToArray();
            var words = language.Say(Fault.Of(fault, "beads[2].boreMm", "0.4", given));
            AssertWhole($"{words.Message} {words.Mend}");
            AssertSentence(words.Message);
        }
    }

    [Theory, MemberData(nameof(Languages_))]
    public void Every_notice_filled_with_all_it_gives_leaves_no_brace_and_no_gap(string code)
    {
        var language = Languages.Find(code)!;
        foreach (var (notice, _) in Codes.Notices)
        {
            var sentence = language.Notices[notice];
            var names = Template.NamesIn(sentence.Short + sentence.Message + sentence.WhatToDo).Except(["bead", "positions"]);
            var filled = language.Say(Notice.Of(notice, Severity.Warn, "chip", [.. names.Select(n => (n, 2.5))], positions: [3]), id => "agate " + id);
            AssertWhole($"{filled.Message} {filled.WhatToDo} {filled.Short}");
            AssertSentence(filled.Message);
            AssertSentence(filled.WhatToDo);
        }
    }

    [Theory, MemberData(nameof(Languages_))]
    public void No_sentence_for_a_maker_uses_the_engines_words(string code)
    {
        var language = Languages.Find(code)!;
        var texts = language.Faults.Values.SelectMany(s => new[] { s.What, s.Rule, s.Mend })
            .Concat(language.Notices.Values.SelectMany(s => new[] { s.Short, s.Message, s.WhatToDo }))
            .Concat(StandingTexts(language).Where(t => !Details.Contains(t.Property)).Select(t => t.Text))
            .Concat(language.Terms.LiningUp.Values).Concat(language.WhyNot.Values).Concat(language.Cures.Values);
        Assert.All(texts, t => Assert.DoesNotMatch(@"(?i)(?<![{\w])(share|rank|sigma|moment|MPa|lambda|relative|strict|Rang|Standardabweichung|Spannung)\b", t));
    }

    // Whether anything is left to read beside the places to fill.
    private static bool HasWords(string template) => Place().Replace(template, "").Any(char.IsLetter);

    // The one section of the report where the engine's words may stand.
    private static readonly string[] Details = ["CoverDetail", "ShareDetail", "RankDetail", "StrictDetail", "SpreadDetail", "StrengthDetail"];

    private static void AssertWhole(string text)
    {
        Assert.DoesNotContain('{', text);
        Assert.DoesNotContain('}', text);
        Assert.DoesNotContain(Template.Missing, text, StringComparison.Ordinal);
        Assert.DoesNotContain("  ", text, StringComparison.Ordinal);
    }

    private static void AssertSentence(string text) => Assert.Matches(@"^[\p{Lu}""„\d-].*[.?!]$", text);

    private static IEnumerable<(Type Owner, string Property, string Text)> StandingTexts(Language language)
    {
        var bench = typeof(BenchWords).GetProperties().Select(p => p.GetValue(language.Bench)!);
        foreach (var words in bench.Concat([language.Report, language.Sheet, language.Cut, language.Help, language.Cautions, language.Terms, language.TurnRows, language.WristCurve, language.Pictures]))
            foreach (var property in words.GetType().GetProperties(BindingFlags.Public | BindingFlags.Instance).Where(p => p.PropertyType == typeof(string)))
                yield return (words.GetType(), property.Name, (string)property.GetValue(words)!);
    }

    private static IEnumerable<string> AllTexts(Language language) =>
        language.Faults.Values.SelectMany(s => new[] { s.What, s.Rule, s.Mend })
            .Concat(language.Notices.Values.SelectMany(s => new[] { s.Short, s.Message, s.WhatToDo }))
            .Concat(StandingTexts(language).Select(t => t.Text)).Concat(language.Terms.Passing.Values).Concat(language.Cures.Values);

    [GeneratedRegex(@"\{\w+:([^{}]*\|[^{}]*)\}")]
    private static partial Regex Choice();

    [GeneratedRegex(@"\{\?\w+:|\{[^{}|]*\}")]
    private static partial Regex Place();

    [GeneratedRegex(@"\{(\w+)\}")]
    private static partial Regex Given();
}
