using Coilwright.Core.Stringing.Notation;

namespace Coilwright.Core.Tests.Stringing;

/// <summary>Editing an order's text through its tree.</summary>
public class OrderTreeTests
{
    private const string Text = "# a present\ncluster = 2 chip,  disc   # loose\ncluster,3 tube , mirror ( round ) around stone\n";

    private static OrderNode At(OrderTree tree, string text) => tree.Nodes().Last(n => tree.TextOf(n.Span) == text);

    [Fact]
    public void Replacing_a_count_touches_nothing_else()
    {
        var tree = OrderTree.Of(Text);
        var count = Assert.IsType<OrderCount>(At(tree, "3"));
        var edited = tree.Replace(count.Span, "12");
        Assert.Equal(Text.Replace("3 tube", "12 tube", StringComparison.Ordinal), edited.ToText());
        Assert.Equal(Text, tree.ToText());
        Assert.Equal(tree.Nodes().Select(n => n.Id), edited.Nodes().Select(n => n.Id));
        Assert.Equal(12, edited.Nodes().OfType<OrderCount>().Single(n => n.Id == count.Id).Value);
    }

    [Fact]
    public void Inserting_an_item_leaves_the_ids_of_all_others_and_of_what_stands_round_it()
    {
        var tree = OrderTree.Of(Text);
        var disc = At(tree, "disc");
        var edited = tree.Replace(new TextSpan(disc.Span.End, 0), ", 2 bar");
        var ids = tree.Nodes().Select(n => n.Id).ToHashSet();
        Assert.Subset(edited.Nodes().Select(n => n.Id).ToHashSet(), ids);
        Assert.Equal("2 bar", edited.TextOf(edited.Nodes().First(n => !ids.Contains(n.Id)).Span));
        Assert.Equal(tree.Entries.Select(e => e.Id), edited.Entries.Select(e => e.Id));
    }

    [Fact]
    public void New_text_never_gets_the_id_of_text_that_is_gone()
    {
        var tree = OrderTree.Of("round, disc, chip");
        var gone = tree.Entries[1];
        var shorter = tree.Replace(new TextSpan(5, 6), "");
        Assert.Equal("round, chip", shorter.ToText());
        Assert.DoesNotContain(gone.Id, shorter.Nodes().Select(n => n.Id));
        var longer = shorter.Replace(new TextSpan(5, 0), ", bar");
        Assert.DoesNotContain(longer.Entries[1].Id, tree.Nodes().Concat(shorter.Nodes()).Select(n => n.Id));
        Assert.Equal([tree.Entries[0].Id, tree.Entries[2].Id], [longer.Entries[0].Id, longer.Entries[2].Id]);
    }

    [Fact]
    public void Typing_on_at_the_end_of_a_name_keeps_its_id()
    {
        var tree = OrderTree.Of("roun, disc");
        var edited = tree.Replace(new TextSpan(4, 0), "d");
        Assert.Equal(tree.Nodes().Select(n => n.Id), edited.Nodes().Select(n => n.Id));
    }

    [Fact]
    public void A_text_with_faults_has_a_tree_that_can_be_mended()
    {
        var tree = OrderTree.Of("2 (round, disc");
        Assert.False(tree.IsWhole);
        Assert.Equal("2 (round, disc", tree.ToText());
        var mended = tree.Replace(new TextSpan(14, 0), ")");
        Assert.True(mended.IsWhole);
        Assert.Equal(tree.Entries[0].Id, mended.Entries[0].Id);
    }

    [Fact]
    public void A_span_outside_the_text_is_refused()
    {
        var tree = OrderTree.Of("round");
        Assert.Throws<ArgumentOutOfRangeException>(() => tree.Replace(new TextSpan(6, 0), ""));
        Assert.Throws<ArgumentOutOfRangeException>(() => tree.Replace(new TextSpan(3, 3), ""));
        Assert.Throws<ArgumentOutOfRangeException>(() => tree.Replace(new TextSpan(-1, 1), ""));
        Assert.Throws<ArgumentOutOfRangeException>(() => tree.Replace(new TextSpan(1, -1), ""));
    }
}
