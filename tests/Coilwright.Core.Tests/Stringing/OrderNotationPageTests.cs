using System.Text.RegularExpressions;
using Coilwright.Core.Beads;
using Coilwright.Core.Stringing.Notation;

namespace Coilwright.Core.Tests.Stringing;

/// <summary>Holds docs/order-notation.md to what the notation does.</summary>
public partial class OrderNotationPageTests
{
    private static readonly string Page = File.ReadAllText(Path.Combine(AppContext.BaseDirectory, "docs", "order-notation.md")).ReplaceLineEndings("\n");

    public static TheoryData<string, string> Examples()
    {
        var data = new TheoryData<string, string>();
        foreach (Match match in ExampleForm().Matches(Page)) data.Add(match.Groups["order"].Value, match.Groups["strings"].Value);
        return data;
    }

    [Theory]
    [MemberData(nameof(Examples))]
    public void Example_on_the_page_strings_what_the_page_says(string order, string strings) => Assert.Equal(strings, OrderTexts.Strung(order));

    [Fact]
    public void Every_fenced_order_on_the_page_has_its_strings_below_it()
    {
        Assert.Equal(Regex.Count(Page, "^```order$", RegexOptions.Multiline), Examples().Count);
        Assert.Equal(Regex.Count(Page, "^```strings$", RegexOptions.Multiline), Examples().Count);
        Assert.True(Examples().Count >= 13); // one at least for each construct; a page cut short must not pass
    }

    [Fact]
    public void Page_lists_every_word_that_the_notation_keeps()
    {
        var listed = WordsKept().Match(Page).Groups["words"].Value;
        Assert.Equal(OrderWords.Reserved.Order(StringComparer.Ordinal), Regex.Matches(listed, "`([a-z]+)`").Select(m => m.Groups[1].Value));
    }

    [Fact]
    public void Page_states_the_limits_that_hold()
    {
        Assert.Equal(
            [OrderLimits.Beads, OrderLimits.Count, OrderLimits.GroupStringings, OrderLimits.Depth, OrderLimits.TextLength, OrderLimits.FaultsTold],
            LimitRow().Matches(Page).Select(m => int.Parse(m.Groups[1].Value.Replace(",", "", StringComparison.Ordinal), null)));
    }

    [GeneratedRegex("^```order\n(?<order>.*?)\n```\n```strings\n(?<strings>.*?)\n```$", RegexOptions.Multiline | RegexOptions.Singleline)]
    private static partial Regex ExampleForm();

    [GeneratedRegex("^(?<words>`.*) cannot be names\\.$", RegexOptions.Multiline)]
    private static partial Regex WordsKept();

    [GeneratedRegex("^\\| [^|]+ \\| ([0-9,]+) \\|$", RegexOptions.Multiline)]
    private static partial Regex LimitRow();
}
