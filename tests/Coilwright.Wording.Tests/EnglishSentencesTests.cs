using Coilwright.Core.Faults;
using Coilwright.Core.Readings;

namespace Coilwright.Wording.Tests;

/// <summary>Sentences read by a person and found good. A change here is a change of what people read.</summary>
public class EnglishSentencesTests
{
    private static readonly Language English = Languages.English;

    private static string Said(Fault fault) => English.Say(fault) is var w && w.Mend.Length > 0 ? $"{w.Message} {w.Mend}" : English.Say(fault).Message;

    [Fact]
    public void A_value_that_is_too_small_names_the_field_the_value_and_the_bound() => Assert.Equal(
        "The hole (\"boreMm\") is -0.2 mm. It must be more than 0 mm. Check the figure and its decimal point, or leave it out if you do not know it.",
        Said(Fault.Of(FaultCodes.ValueAbove, "beads[2].boreMm", "-0.2", ("min", "0"), ("unit", "mm"))));

    [Fact]
    public void A_value_without_a_unit_reads_as_well() => Assert.Equal(
        "The count (\"count\") is 0. It must be at least 1. Check the figure and its decimal point.",
        Said(Fault.Of(FaultCodes.ValueAtLeast, "beads[0].row.count", "0", ("min", "1"), ("unit", ""))));

    [Fact]
    public void An_unknown_word_offers_the_nearest_one() => Assert.Equal(
        "The shape (\"shape\") is \"rondele\", which is not known. It must be one of: round, rondelle. Did you mean \"rondelle\"?",
        Said(Fault.Of(FaultCodes.WordUnknown, "beads[0].shape", "rondele", ("known", "round, rondelle"), ("nearest", "rondelle"))));

    [Fact]
    public void Where_no_word_is_near_nothing_is_offered() => Assert.Equal(
        "The shape (\"shape\") is \"xyz\", which is not known. It must be one of: round, rondelle.",
        Said(Fault.Of(FaultCodes.WordUnknown, "beads[0].shape", "xyz", ("known", "round, rondelle"), ("nearest", ""))));

    [Fact]
    public void A_field_of_the_wrong_kind_says_both_kinds() => Assert.Equal(
        "Text in quotes stands for the width (\"widthMm\"). It must be a number.",
        Said(Fault.Of(FaultCodes.FieldType, "beads[0].widthMm", "\"8\"", ("expected", FaultTypes.Number), ("found", FaultTypes.Text))));

    [Fact]
    public void A_field_without_words_of_its_own_goes_by_its_name() => Assert.Equal(
        "\"colour\" is not known here. The fields here are: colours, coating. Did you mean \"colours\"?",
        Said(Fault.Of(FaultCodes.FieldUnknown, "beads[0].colour", "colour", ("known", "colours, coating"), ("nearest", "colours"))));

    [Fact]
    public void An_order_that_cannot_be_read_says_what_should_stand_there()
    {
        Assert.Equal("The order cannot be read from \"disc\" on. Here should stand a comma or the end of the line.",
            Said(Fault.Of(FaultCodes.OrderExpected, "", "disc", ("expected", OrderExpectations.CommaOrLineEnd))));
        Assert.Equal("The order cannot be read. Here should stand the word \"between\".",
            Said(Fault.Of(FaultCodes.OrderExpected, "", "", ("expected", OrderExpectations.Between))));
    }

    [Fact]
    public void A_file_that_is_not_there_says_so() => Assert.Equal(
        "The file cannot be read: there is no such file or folder. It must be a file that you may read. Check the name and the folder.",
        Said(Fault.Of(FaultCodes.FileUnreadable, "", "x.json", ("detail", FaultDetails.NotFound))));

    [Fact]
    public void A_reason_of_the_systems_own_is_passed_on() => Assert.StartsWith(
        "The file cannot be read: the lid is stuck. It must",
        Said(Fault.Of(FaultCodes.FileUnreadable, "", "x.json", ("detail", FaultDetails.Other), ("reason", "the lid is stuck"))), StringComparison.Ordinal);

    [Fact]
    public void A_comma_for_a_point_is_shown_with_what_was_meant() => Assert.Equal(
        "The wrist (\"--wrist\") is \"160,5\", with a comma. Numbers take a decimal point. Write 160.5.",
        Said(Fault.Of(UsageCodes.LengthComma, "--wrist", "160,5", ("meant", "160.5"))));

    [Fact]
    public void A_wire_cut_short_says_by_how_much_and_what_to_do()
    {
        var words = English.Say(Notice.Of(NoticeCodes.WireTooShort, Severity.Stop, numbers: [("cutMm", 700), ("neededMm", 812.3), ("shortMm", 112.3)]),
            id => id);
        Assert.Equal("The wire you cut is 112 mm (4 7/16 in) too short: you cut 700 mm (27 9/16 in), and the piece needs 812 mm (32 in).",
            words.Message);
        Assert.Equal("Cut a new length of at least 813 mm (32 in), or leave off beads until 112 mm (4 7/16 in) is saved.", words.WhatToDo);
    }

    [Fact]
    public void One_turn_is_a_turn_and_less_is_turns()
    {
        var words = English.Say(Notice.Of(NoticeCodes.UnderOneTurn, Severity.Stop, numbers: [("turnsWorn", 0.82)]), id => id);
        Assert.Equal("The beads make only 0.82 turns: it will not stay on.", words.Message);
    }

    [Fact]
    public void Many_places_are_cut_short() => Assert.Equal("beads 1, 2, 3, 4, 5, 6 and 14 more",
        Template.Fill("beads {positions}",
            new NoticeValues(Notice.Of("x", Severity.Info, positions: [.. Enumerable.Range(0, 20)]), id => id, English), English));
}
