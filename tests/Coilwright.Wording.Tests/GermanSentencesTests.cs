using Coilwright.Core.Faults;
using Coilwright.Core.Readings;

namespace Coilwright.Wording.Tests;

/// <summary>German sentences read by a person and found good. A change here is a change of what people read.</summary>
public class GermanSentencesTests
{
    private static readonly Language German = Languages.German;

    private static string Said(Fault fault) => German.Say(fault) is var w && w.Mend.Length > 0 ? $"{w.Message} {w.Mend}" : German.Say(fault).Message;

    // What is quoted from a file keeps the file's own form: there a comma would be a slip.
    [Fact]
    public void A_value_from_a_file_keeps_its_point() => Assert.Equal(
        "Das Loch („boreMm“) ist -0.2 mm. Nötig ist mehr als 0 mm. Zahl und Dezimalpunkt prüfen, oder das Feld weglassen, wenn der Wert nicht bekannt ist.",
        Said(Fault.Of(FaultCodes.ValueAbove, "beads[2].boreMm", "-0.2", ("min", "0"), ("unit", "mm"))));

    [Fact]
    public void An_unknown_word_offers_the_nearest_one() => Assert.Equal(
        "Die Form („shape“) ist „rondele“, und das ist nicht bekannt. Möglich ist: round, rondelle. Gemeint ist vielleicht „rondelle“.",
        Said(Fault.Of(FaultCodes.WordUnknown, "beads[0].shape", "rondele", ("known", "round, rondelle"), ("nearest", "rondelle"))));

    [Fact]
    public void A_field_of_the_wrong_kind_says_both_kinds() => Assert.Equal(
        "Für die Breite („widthMm“) steht hier etwas anderes: ein Text in Anführungszeichen. Hierher gehört eine Zahl.",
        Said(Fault.Of(FaultCodes.FieldType, "beads[0].widthMm", "\"8\"", ("expected", FaultTypes.Number), ("found", FaultTypes.Text))));

    [Fact]
    public void An_order_that_cannot_be_read_says_what_should_stand_there()
    {
        Assert.Equal("Die Reihenfolge ist ab „disc“ nicht zu lesen. Hier sollte stehen: ein Komma oder das Ende der Zeile.",
            Said(Fault.Of(FaultCodes.OrderExpected, "", "disc", ("expected", OrderExpectations.CommaOrLineEnd))));
        Assert.Equal("Die Reihenfolge ist nicht zu lesen. Hier sollte stehen: das Wort „between“.",
            Said(Fault.Of(FaultCodes.OrderExpected, "", "", ("expected", OrderExpectations.Between))));
    }

    [Fact]
    public void A_comma_in_an_option_is_shown_with_what_was_meant() => Assert.Equal(
        "Das Handgelenk („--wrist“) ist „160,5“, mit Komma. In Optionen haben Zahlen einen Dezimalpunkt. So schreiben: 160.5.",
        Said(Fault.Of(UsageCodes.LengthComma, "--wrist", "160,5", ("meant", "160.5"))));

    [Fact]
    public void A_wire_cut_short_says_by_how_much_and_what_to_do()
    {
        var words = German.Say(Notice.Of(NoticeCodes.WireTooShort, Severity.Stop, numbers: [("cutMm", 700), ("neededMm", 712.3), ("shortMm", 12.3)]), id => id);
        Assert.Equal("Der abgeschnittene Draht ist 12,3 mm (1/2 Zoll) zu kurz: Er misst 700 mm (27 9/16 Zoll), und das Stück braucht 712 mm (28 1/16 Zoll).",
            words.Message);
        Assert.Equal("Neuen Draht von mindestens 713 mm (28 1/16 Zoll) abschneiden, oder so viele Perlen weglassen, dass 12,3 mm (1/2 Zoll) gespart sind.",
            words.WhatToDo);
    }

    [Theory]
    [InlineData(1.0, "An einem Handgelenk von 165 mm (6 1/2 Zoll) wird es 1 Windung statt 2.")]
    [InlineData(1.82, "An einem Handgelenk von 165 mm (6 1/2 Zoll) werden es 1,82 Windungen statt 2.")]
    public void A_verb_goes_with_its_number(double turns, string expected) => Assert.Equal(expected,
        German.Say(Notice.Of(NoticeCodes.FewerTurns, Severity.Warn, numbers: [("wristMm", 165), ("turnsWorn", turns), ("turnsDesigned", 2)]), id => id).Message);

    [Theory]
    [InlineData("past", "Mond (G) liegt 12 mm (1/2 Zoll) (22°) hinter der Mitte der Oberseite, in Fädelrichtung gesehen.")]
    [InlineData("before", "Mond (G) liegt 12 mm (1/2 Zoll) (22°) vor der Mitte der Oberseite, in Fädelrichtung gesehen.")]
    public void A_focal_off_the_top_says_on_which_side(string side, string expected) => Assert.Equal(expected,
        German.Say(Notice.Of(NoticeCodes.FocalOffTop, Severity.Warn, "moon", [("offMm", 12), ("offDeg", 22.3), ("startDeg", 170)], [("side", side)]), _ => "Mond (G)").Message);

    [Fact]
    public void A_step_reads_as_in_a_craft_pattern() => Assert.Equal("Welle, 3-mal nacheinander: jedes Mal 2 A, 1 B.",
        German.Sentence(German.Sheet.StringGroupTimes, ("group", "Welle"), ("times", 3), ("beads", "2 A, 1 B")));

    // Straight quotes stand only where a shell needs them.
    [Fact]
    public void Quotation_marks_are_German_ones() =>
        Assert.All(LanguageTexts.Of(German).Values.Where(t => !t.Contains("\"6 1/2in\"", StringComparison.Ordinal)), t =>
        {
            Assert.DoesNotContain('"', t);
            Assert.Equal(t.Count(c => c == '„'), t.Count(c => c == '“'));
            Assert.DoesNotContain('”', t);
        });
}
