using System.Globalization;
using System.Text.RegularExpressions;
using Coilwright.Core.Batches;
using Coilwright.Core.Editing;
using Coilwright.Core.Making;
using Coilwright.Core.Pricing;
using Coilwright.Documents.Batches;
using Coilwright.Documents.Canvases;
using Coilwright.Documents.Pages;
using Coilwright.Wording;

namespace Coilwright.Documents.Tests.Batches;

/// <summary>The papers of a batch, read back from the file by another library.</summary>
public partial class BatchDocumentsTests
{
    private static string Read(PageDocument document, Paper paper, bool grey = false)
    {
        var drawn = new PdfCanvas().Draw(document, new PageSetup { Paper = paper, Greyscale = grey });
        Assert.Empty(drawn.Faults);
        using var pdf = UglyToad.PdfPig.PdfDocument.Open(drawn.Bytes.ToArray());
        return string.Join('\n', pdf.GetPages().Select(p => string.Join(' ', p.GetWords().Select(w => w.Text))));
    }

    [Theory, InlineData("tidewrack"), InlineData("boardwalk")]
    public void A_tick_sheet_counts_up_to_every_bead_and_no_count_falls(string piece)
    {
        var reckoned = DrawnPieces.Reckoned(piece);
        int[] after = [.. StringingSteps.Of(reckoned.Piece.Order).Select(s => s.First + s.Beads)];
        Assert.Equal(reckoned.Piece.Order.Count, after[^1]);
        foreach (var paper in new[] { Paper.A4, Paper.Letter })
        {
            var text = Read(BatchDocuments.TickSheet(reckoned, Languages.English), paper, grey: true);
            var at = text.IndexOf("On the wire", StringComparison.Ordinal);
            int[] numbers = [.. Numbers().Matches(text[at..]).Select(m => int.Parse(m.Value, CultureInfo.InvariantCulture))];
            // The counts stand on the page in their order, among the numbers of the steps.
            var next = 0;
            foreach (var number in numbers) if (next < after.Length && number == after[next]) next++;
            Assert.Equal(after.Length, next);
        }
    }

    [Fact]
    public void Every_colourway_has_the_same_letters_steps_and_counts()
    {
        var reckoned = DrawnPieces.Reckoned("tidewrack");
        var recoloured = Colourway.Of(reckoned.Piece, System.Collections.Immutable.ImmutableSortedDictionary<string, System.Collections.Immutable.ImmutableArray<Core.Colour.Srgb>>.Empty
            .Add(reckoned.Counts[0].Bead.Id, [Core.Colour.Srgb.TryParse("#203040", out var blue) ? blue : default]));
        var other = reckoned with { Piece = recoloured, Counts = [.. reckoned.Counts.Select(k => k with { Bead = recoloured.Beads[k.KindIndex] })] };
        Assert.Equal(Read(BatchDocuments.TickSheet(reckoned, Languages.English), Paper.A4), Read(BatchDocuments.TickSheet(other, Languages.English), Paper.A4));
        var (one, two) = (BatchDocuments.TickSheet(reckoned, Languages.English), BatchDocuments.TickSheet(other, Languages.English));
        Assert.NotEqual(new PdfCanvas().Draw(one, new PageSetup()).Bytes.ToArray(), new PdfCanvas().Draw(two, new PageSetup()).Bytes.ToArray());
    }

    [Theory, InlineData("en"), InlineData("de")]
    public void The_plan_on_paper_says_what_was_reckoned(string language)
    {
        var words = Languages.Find(language)!;
        var plan = BatchPlan.Of(DrawnPieces.Reckoned("tidewrack"), 10, CountingTray.Usual, new CostSheet { Steps = [new TimedStep("string", 26, false, [Sold.Piece])] });
        var text = Read(BatchDocuments.Plan(plan, null, words), Paper.A4);
        foreach (var kind in plan.Reckoned.Counts) Assert.Contains($"{kind.Letter} {kind.Bead.Name} {10 * kind.Count}", text, StringComparison.Ordinal);
        Assert.Contains("260 min", text, StringComparison.Ordinal);
        Assert.Contains(words.Cautions.FlyingPieces.Split(' ')[0], text, StringComparison.Ordinal);
    }

    [GeneratedRegex(@"\d+")]
    private static partial Regex Numbers();
}
