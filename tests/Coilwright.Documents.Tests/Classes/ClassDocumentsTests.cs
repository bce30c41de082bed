using System.Globalization;
using System.Text.RegularExpressions;
using Coilwright.Core.Buying;
using Coilwright.Core.Classes;
using Coilwright.Core.Making;
using Coilwright.Core.Pricing;
using Coilwright.Core.Shopping;
using Coilwright.Documents.Canvases;
using Coilwright.Documents.Classes;
using Coilwright.Documents.Pages;
using Coilwright.Documents.Tests.Rendering;
using Coilwright.Storage;
using Coilwright.Wording;

namespace Coilwright.Documents.Tests.Classes;

/// <summary>The papers of a class, the teacher's and the one that lies at each place, read back from the files by programs that share no code with us.</summary>
public sealed partial class ClassDocumentsTests : IDisposable
{
    // A point is 1/72 inch; pdfinfo prints two digits after the point.
    private const double PointsPerMm = 72 / 25.4, PrintedPoints = 0.005;

    private readonly Workplace _place = new();

    public void Dispose() => _place.Dispose();

    /// <summary>Eight learners with two kits beside theirs, a break, shared shears, the wire cut beforehand, a room to pay and a rule for a place.</summary>
    private static ClassPlan Plan(string piece)
    {
        var reckoned = DrawnPieces.Reckoned(piece);
        var sheet = new CostSheet
        {
            WagePerHour = 16.5m,
            Wire = new WirePack(4.8m, 24, null),
            Steps =
            [
                new("lay out and count", 8, false, [Sold.Piece, Sold.Kit]), new("cut", 2, false, [Sold.Piece]) { Does = [StepAction.CutWire] },
                new("string", 26, false, [Sold.Piece]) { Does = [StepAction.StringBeads] }, new("ends", 7, false, [Sold.Piece]) { Does = [StepAction.FirstEnd, StepAction.LastEnd] },
            ],
            Rules = [new PriceRule("place", "cost * 2.2", Sold.Kit, [], 0.5m, null)],
        };
        Assert.True(Costs.TryMake(sheet, out var costs, out var slips), string.Join('\n', slips));
        var prices = new PriceList([.. reckoned.Counts.Select((k, i) => new Offer(k.Bead.Id, "post", "bag", 50, [new PriceStep(1, 2.1m + i)]))], [new Supplier("post")], "EUR");
        var ask = new ClassAsk
        {
            Participants = 8,
            SpareKits = 2,
            Factor = 2.5m,
            Start = new TimeOnly(10, 0),
            End = new TimeOnly(13, 0),
            Breaks = [new ClassBreak(new TimeOnly(11, 30), 15)],
            Places = 10,
            Beforehand = ["cutWire"],
            AroundMinutes = 30,
            Room = 60,
            Rule = "place",
        };
        Assert.True(ClassPlan.TryMake(reckoned.Piece, DataFiles.LoadDefault().Data!, ask, new ClassSources { Costs = costs!, Prices = prices }, new SupplierSets(), out var plan, out var faults), string.Join('\n', faults));
        return plan!;
    }

    private string Written(PageDocument document, PageSetup setup)
    {
        var drawn = new PdfCanvas().Draw(document, setup);
        Assert.Empty(drawn.Faults);
        return _place.File("class.pdf", drawn.Bytes);
    }

    // In the order in which it was drawn, as a line is broken anywhere: without the spaces.
    private static string Text(string pdf) => Bare(Programs.Output("pdftotext", "-raw", pdf, "-"));

    private static string Bare(string text) => Spaces().Replace(text, "");

    private static void AssertSays(string text, IEnumerable<string> parts)
    {
        var all = parts.Where(p => p.Length > 0).ToArray();
        Assert.NotEmpty(all);
        Assert.All(all, part => Assert.Contains(Bare(part), text, StringComparison.Ordinal));
    }

    public static TheoryData<string, string> Sheets => new MatrixTheoryData<string, string>(["boardwalk", "tidewrack", "puddle-hop"], ["en", "de"]);

    [Theory, MemberData(nameof(Sheets))]
    public void Both_are_sound_files_of_the_paper_asked_for_with_every_face_in_them(string piece, string language)
    {
        var (plan, words) = (Plan(piece), Languages.Find(language)!);
        foreach (var document in new[] { ClassDocuments.Teacher(plan, words), ClassDocuments.Participant(plan, words) })
            foreach (var setup in new[] { new PageSetup(), new PageSetup { Paper = Paper.Letter }, new PageSetup { Paper = Paper.Letter, LargePrint = true, Greyscale = true } })
            {
                var pdf = Written(document, setup);
                Assert.Contains("No syntax or stream encoding errors found", Programs.Output("qpdf", "--check", pdf), StringComparison.Ordinal);
                // Columns at the end: embedded, subset, with a map back to Unicode, then the object's number and generation.
                var faces = Programs.Output("pdffonts", pdf).Split('\n', StringSplitOptions.RemoveEmptyEntries)[2..];
                Assert.NotEmpty(faces);
                Assert.All(faces, f => Assert.Matches(@"\byes +yes +yes +\d+ +\d+\s*$", f));
                var told = Programs.Output("pdfinfo", "-f", "1", "-l", "99", pdf);
                var pages = int.Parse(Pages().Match(told).Groups[1].Value, CultureInfo.InvariantCulture);
                var sizes = PageSizes().Matches(told);
                Assert.Equal(pages, sizes.Count);
                Assert.All(sizes, size =>
                {
                    Assert.Equal(setup.Paper.WidthMm * PointsPerMm, double.Parse(size.Groups[1].Value, CultureInfo.InvariantCulture), PrintedPoints);
                    Assert.Equal(setup.Paper.HeightMm * PointsPerMm, double.Parse(size.Groups[2].Value, CultureInfo.InvariantCulture), PrintedPoints);
                });
                // Each says which it is of how many, in its language.
                AssertSays(Text(pdf), Enumerable.Range(1, pages).Select(p => words.Fill(words.Sheet.PageOf, ("page", p), ("pages", pages))));
            }
    }

    [Theory, MemberData(nameof(Sheets))]
    public void The_teachers_sheet_says_all_that_was_reckoned(string piece, string language)
    {
        var (plan, words) = (Plan(piece), Languages.Find(language)!);
        var said = new ClassSentences(plan, words);
        var text = Text(Written(ClassDocuments.Teacher(plan, words), new PageSetup()));
        AssertSays(text,
        [
            said.Title, .. said.Head(), .. said.Reasons(), said.Takes(), .. said.Beforehand(), .. said.Kits(), .. said.Buying(), said.Wire(), .. said.Cautions(), .. said.Price(),
            .. said.Timetable().Select(s => s.What), .. said.Tools().Select(t => t[0]), .. said.Cost().Select(l => l.Amount), .. plan.Reckoned.Counts.Select(k => k.Bead.Name),
        ]);
        // The clock runs down the page.
        var at = text.IndexOf(Bare(words.Class.TimetableHeading), StringComparison.Ordinal);
        foreach (var time in said.Timetable().Select(s => s.Time).Where(t => t.Length > 0))
        {
            var found = text.IndexOf(Bare(time), at, StringComparison.Ordinal);
            Assert.True(found >= at, $"{time} does not follow what comes before it.");
            at = found;
        }
    }

    [Theory, MemberData(nameof(Sheets))]
    public void The_sheet_of_a_place_has_the_kit_and_every_step_and_nothing_of_money(string piece, string language)
    {
        var (plan, words) = (Plan(piece), Languages.Find(language)!);
        var said = new ClassSentences(plan, words);
        var text = Text(Written(ClassDocuments.Participant(plan, words), new PageSetup { Paper = Paper.Letter }));
        AssertSays(text, [words.Class.SheetLead, words.Class.SheetKit, words.Class.SheetTools, said.WireEach(), .. said.AtAPlace(), .. said.Cautions(), .. said.Bags().SelectMany(b => b.Take(3))]);
        // What the teacher did is told as done, all else in its order to tick off.
        Assert.Equal(["cutWire"], plan.Beforehand.Select(w => w.Key));
        AssertSays(text, plan.Beforehand.Select(said.DoneAlready));
        var at = 0;
        foreach (var step in plan.Works.Except(plan.Beforehand).Select(said.Whole))
        {
            var found = text.IndexOf(Bare(step), at, StringComparison.Ordinal);
            Assert.True(found >= at, $"\"{step}\" does not follow what comes before it.");
            at = found + 1;
        }
        Assert.DoesNotContain("EUR", text, StringComparison.Ordinal);
        Assert.DoesNotContain("€", text, StringComparison.Ordinal);
        Assert.DoesNotContain(Bare(words.Class.CostHeading), text, StringComparison.Ordinal);
        // Money is on the other one, in the same way of writing it, so that its absence here says something.
        Assert.Contains("EUR", Text(Written(ClassDocuments.Teacher(plan, words), new PageSetup())), StringComparison.Ordinal);
    }

    [GeneratedRegex(@"\s+")]
    private static partial Regex Spaces();

    [GeneratedRegex(@"(?m)^Pages:\s+(\d+)")]
    private static partial Regex Pages();

    [GeneratedRegex(@"(?m)^Page\s+\d+ size:\s+([\d.]+) x ([\d.]+) pts")]
    private static partial Regex PageSizes();
}
