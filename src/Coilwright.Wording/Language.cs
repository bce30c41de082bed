using System.Collections.Frozen;
using System.Globalization;
using Coilwright.Core.Cures;
using Coilwright.Core.Faults;
using Coilwright.Core.Readings;

namespace Coilwright.Wording;

/// <summary>What a fault says to a person: what is wrong, the rule it breaks, and how to mend it.</summary>
/// <param name="Message">What is wrong and the rule, one or two sentences that stand alone.</param>
/// <param name="Rule">The rule alone.</param>
/// <param name="Mend">How to mend it; empty when the rule says it all.</param>
public sealed record FaultWords(string Message, string Rule, string Mend);

/// <summary>What a notice says to a person.</summary>
/// <param name="Message">What is so.</param>
/// <param name="WhatToDo">What she can do about it.</param>
/// <param name="Short">The matter in a few words, for a list of reasons.</param>
public sealed record NoticeWords(string Message, string WhatToDo, string Short);

/// <summary>One language: every sentence and word that people read, and how its numbers and plurals are written.</summary>
/// <remarks>
/// <para>To add a language: a folder beside <c>EnglishWords/</c> with the same tables and a line in <see cref="Languages"/>. The records of words do
/// not compile while a word is missing, and the tests name every code without a sentence.</para>
/// <para>Sentences write numbers with the language's own decimal sign and no thousands sign: "1.000" is a thousand to one maker and one to another.
/// What is quoted from a piece file or an option, and what is to be typed there, keeps its decimal point in every language; so does
/// everything that programs read (<see cref="PlainNumber"/>).</para>
/// </remarks>
public sealed class Language
{
    /// <summary>Code of the language (ISO 639-1), as <c>en</c>.</summary>
    public required string Code { get; init; }

    /// <summary>The language's own name for itself.</summary>
    public required string Name { get; init; }

    /// <summary>What stands between whole and fraction in a number for people: a point or a comma.</summary>
    public required char DecimalSign { get; init; }

    /// <summary>Which plural form a printed number (with a decimal point) takes: an index into the forms that a template gives, as <c>{beads:bead|beads}</c>.</summary>
    public required Func<string, int> PluralForm { get; init; }

    /// <summary>Sentences by fault code.</summary>
    public required FrozenDictionary<string, FaultSentence> Faults { get; init; }

    /// <summary>Sentences by notice code.</summary>
    public required FrozenDictionary<string, NoticeSentence> Notices { get; init; }

    /// <summary>What a cure does, by its code: a part of a sentence.</summary>
    public required FrozenDictionary<string, string> Cures { get; init; }

    /// <summary>Sentences by the code of a reading that cannot be had.</summary>
    public required FrozenDictionary<string, string> WhyNot { get; init; }

    /// <summary>Fields of a piece file in the trade's words, by the field's own name.</summary>
    public required FrozenDictionary<string, string> Fields { get; init; }

    /// <summary>Words that stand by themselves.</summary>
    public required Terms Terms { get; init; }

    /// <summary>Cautions.</summary>
    public required CautionWords Cautions { get; init; }

    /// <summary>Words of the text report.</summary>
    public required ReportWords Report { get; init; }

    /// <summary>Words of the pattern sheet.</summary>
    public required SheetWords Sheet { get; init; }

    /// <summary>Words of the written pattern.</summary>
    public required PatternWords Pattern { get; init; }

    /// <summary>Words of the corrections to a pattern.</summary>
    public required ErrataWords Errata { get; init; }

    /// <summary>Words of the pack to sell a pattern with.</summary>
    public required PublishWords Publish { get; init; }

    /// <summary>Words of better orders.</summary>
    public required IdeaWords Ideas { get; init; }

    /// <summary>Words of the sizes of a design.</summary>
    public required SizesWords Sizes { get; init; }

    /// <summary>Words of an order without a visible repeat.</summary>
    public required ScatterWords Scatter { get; init; }

    /// <summary>Words of how a piece lies.</summary>
    public required SettleWords Settle { get; init; }

    /// <summary>Words of cutting the wire.</summary>
    public required CutWords Cut { get; init; }

    /// <summary>Words of shopping.</summary>
    public required ShopWords Shop { get; init; }

    /// <summary>Words of kits.</summary>
    public required KitWords Kit { get; init; }

    /// <summary>Words of what a piece costs and what to ask.</summary>
    public required PriceWords Price { get; init; }

    /// <summary>Words of a listing.</summary>
    public required ListingWords Listing { get; init; }

    /// <summary>Words of the answer to "will it fit me?".</summary>
    public required FitAnswerWords FitAnswer { get; init; }

    /// <summary>Words of making several alike.</summary>
    public required BatchWords Batch { get; init; }

    /// <summary>Words of the answer to a custom order.</summary>
    public required QuoteWords Quote { get; init; }

    /// <summary>Words of a class on a piece.</summary>
    public required ClassWords Class { get; init; }

    /// <summary>Words of beads that stand in for others.</summary>
    public required SubstituteWords Substitutes { get; init; }

    /// <summary>Words of the bead tray on the command line.</summary>
    public required TrayListWords TrayList { get; init; }

    /// <summary>Words of how colours go together.</summary>
    public required PaletteWords Palette { get; init; }

    /// <summary>Words of the command line's help.</summary>
    public required HelpWords Help { get; init; }

    /// <summary>Words on the lining-up curve.</summary>
    public required WristCurveWords WristCurve { get; init; }

    /// <summary>Words of the bench in the browser.</summary>
    public required BenchWords Bench { get; init; }

    /// <summary>Captions of the turn rows.</summary>
    public required TurnRowsWords TurnRows { get; init; }

    /// <summary>Captions of the smaller pictures.</summary>
    public required PictureWords Pictures { get; init; }

    /// <summary>Says a fault.</summary>
    public FaultWords Say(Fault fault)
    {
        if (!Faults.TryGetValue(fault.Code, out var sentence)) return new FaultWords(fault.Code, "", "");
        var values = new FaultValues(fault, this);
        var rule = Sentence(sentence.Rule, values);
        return new FaultWords(Sentence(sentence.What, values) + " " + rule, rule, Sentence(sentence.Mend, values));
    }

    /// <summary>Says a notice.</summary>
    /// <param name="notice">The notice.</param>
    /// <param name="beadName">Name for people of a bead's id.</param>
    public NoticeWords Say(Notice notice, Func<string, string> beadName)
    {
        if (!Notices.TryGetValue(notice.Code, out var sentence)) return new NoticeWords(notice.Code, "", notice.Code);
        var values = new NoticeValues(notice, beadName, this);
        return new NoticeWords(Sentence(sentence.Message, values), Sentence(sentence.WhatToDo, values),
            Template.Fill(sentence.Short, values, this));
    }

    /// <summary>Says what a cure does: a part of a sentence, without its full stop.</summary>
    /// <param name="cure">The cure.</param>
    /// <param name="beadName">Name for people of a bead's id.</param>
    public string Say(Cure cure, Func<string, string> beadName) =>
        Cures.TryGetValue(cure.Code, out var does) ? Template.Fill(does, new CureValues(cure, beadName, this), this) : cure.Code;

    /// <summary>Says why a reading cannot be had.</summary>
    public string SayWhyNot(string code) => WhyNot.GetValueOrDefault(code, code);

    /// <summary>Fills a template with values by name: texts, whole numbers or doubles. How placeholders are written: <see cref="Template"/>.</summary>
    public string Fill(string template, params ReadOnlySpan<(string Name, object? Value)> values)
    {
        var named = new Dictionary<string, object?>(StringComparer.Ordinal);
        foreach (var (name, value) in values) named[name] = value;
        return Template.Fill(template, new NamedValues(named), this);
    }

    /// <summary>Fills a template that is a whole sentence, so begins with a capital. See <see cref="Fill"/>.</summary>
    public string Sentence(string template, params ReadOnlySpan<(string Name, object? Value)> values) => Template.Capital(Fill(template, values));

    /// <summary>The units that its sentences show lengths in; both unless she chose.</summary>
    public LengthUnits Units { get; private set; } = LengthUnits.Both;

    /// <summary>The same language with its sentences in other units.</summary>
    public Language In(LengthUnits units)
    {
        if (units == Units) return this;
        var other = (Language)MemberwiseClone();
        other.Units = units;
        return other;
    }

    /// <summary>A length in <see cref="Units"/>: in both, millimetres and then inches to the nearest sixteenth: <c>178 mm (7 in)</c>.</summary>
    /// <remarks>Whole millimetres from 100 mm on, tenths below. A length under half a sixteenth has no inches beside its millimetres.</remarks>
    public string Length(double mm) => Length(mm, Units);

    /// <summary>A length in the units that are wanted, rounded as <see cref="Length(double)"/> does.</summary>
    public string Length(double mm, LengthUnits units) => LengthWriter.In(mm, this, units);

    /// <summary>A length where there is room for one unit only: inches where those alone are wanted, else millimetres.</summary>
    public string ShortLength(double mm) => Length(mm, Units == LengthUnits.Inches ? LengthUnits.Inches : LengthUnits.Mm);

    /// <summary>A length that may only be rounded up, as wire to cut: up to the next whole millimetre and the next sixteenth.</summary>
    public string LengthUp(double mm) => LengthWriter.UpIn(mm, this, Units);

    /// <summary>A place round the wrist in words; see <see cref="Places"/>.</summary>
    /// <param name="angleDeg">Angle, degrees in (-180, 180], 0 the top, positive the way the beads run.</param>
    public string Place(double angleDeg) => Terms.Places.Of(angleDeg);

    /// <summary>A number for people with up to so many decimals, the language's decimal sign and no thousands sign.</summary>
    public string Number(double value, int decimals) => PlainNumber(value, decimals).Replace('.', DecimalSign);

    /// <summary>An amount of money with two decimals, without its currency.</summary>
    public string Amount(decimal amount) => amount.ToString("0.00", CultureInfo.InvariantCulture).Replace('.', DecimalSign);

    /// <summary>A number as programs, files and options have it: with a decimal point, whatever the language.</summary>
    public static string PlainNumber(double value, int decimals)
    {
        var rounded = Math.Round(value, decimals, MidpointRounding.AwayFromZero);
        return (rounded == 0 ? 0 : rounded).ToString("0." + new string('#', decimals), CultureInfo.InvariantCulture);
    }

    private string Sentence(string template, IValues values) => Template.Capital(Template.Fill(template, values, this));

    /// <summary>The form of a word that goes with a number as it is printed.</summary>
    internal string Plural(string printed, string[] forms) => forms[Math.Min(PluralForm(printed.Replace(DecimalSign, '.')), forms.Length - 1)];

    /// <summary>The rule of English, German and others: one form for a bare 1, another for all else, 1.0 included.</summary>
    /// <remarks>CLDR plural rules, "one: i = 1 and v = 0".</remarks>
    public static int OneAndOther(string printed) => printed is "1" or "-1" ? 0 : 1;

    /// <summary>A field's name as a sentence shows it: the trade's words and the name in the file.</summary>
    internal string FieldInWords(string field)
    {
        if (field.Length == 0) return Terms.ThisFile;
        var last = field[(field.LastIndexOf('.') + 1)..];
        var bare = last.IndexOf('[', StringComparison.Ordinal) is var at and >= 0 ? last[..at] : last;
        return Fields.TryGetValue(bare, out var words) ? Fill(Terms.FieldInWords, ("words", words), ("field", bare)) : Fill(Terms.FieldByName, ("field", last));
    }
}

/// <summary>A fault's sentences as templates.</summary>
/// <param name="What">What is wrong.</param>
/// <param name="Rule">The rule.</param>
/// <param name="Mend">How to mend it.</param>
public sealed record FaultSentence(string What, string Rule, string Mend);

/// <summary>A notice's sentences as templates.</summary>
/// <param name="Short">The matter in a few words.</param>
/// <param name="Message">What is so.</param>
/// <param name="WhatToDo">What she can do about it.</param>
public sealed record NoticeSentence(string Short, string Message, string WhatToDo);
