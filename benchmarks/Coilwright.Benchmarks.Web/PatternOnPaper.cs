using System.Diagnostics;
using System.Globalization;
using System.Text;
using System.Text.RegularExpressions;
using Coilwright.Benchmarks.Running;
using Coilwright.Core.Grading;
using Coilwright.Core.Readings;
using Coilwright.Documents;
using Coilwright.Documents.Canvases;
using Coilwright.Documents.Pages;
using Coilwright.Wording;
using Microsoft.Playwright;

namespace Coilwright.Benchmarks.Web;

/// <summary>Does the written pattern come about sooner than a browser prints its page? Ours begins at the readings, and describes, draws and writes; the browser is open and warm,
/// has the page before it, laid out, and only prints. Both write a file with tags and a list of its parts.</summary>
internal static partial class PatternOnPaper
{
    private const int PairsInARound = 15, Warm = 5, Beads = 150;

    public static async Task<int> MeasureAsync(int rounds)
    {
        var piece = GeneratedPieces.OfFiveTurns(Beads);
        var reckoned = Reckoning.Of(piece, GeneratedPieces.Data);
        var sizes = Grader.Of(piece, GeneratedPieces.Data, new SizesRequest(UsualWrists.Few(piece, GeneratedPieces.Data)));
        var kind = DocumentKinds.Pattern();
        var setup = new PageSetup();

        using var playwright = await Playwright.CreateAsync();
        await using var browser = await BenchAndBrowser.LaunchAsync(playwright);
        var page = await browser.NewPageAsync();
        await page.SetContentAsync(Encoding.UTF8.GetString(new HtmlCanvas().Draw(kind.Describe(reckoned, sizes, setup, Languages.English), setup).Bytes.Span));

        for (var i = 0; i < Warm; i++)
        {
            Written();
            await PrintedAsync(true);
            await PrintedAsync(false);
        }
        var (mine, printed) = (Written(), await PrintedAsync(true));
        Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{Beads} beads: {Pages(mine)} pages with {Figure().Count(Encoding.Latin1.GetString(mine))} figures, {mine.Length / 1024} kB; the browser's {Pages(printed)} pages, {printed.Length / 1024} kB."));

        List<double> tagged = [], bare = [];
        for (var round = 0; round < rounds; round++)
        {
            List<double> own = [], with = [], without = [];
            for (var i = 0; i < PairsInARound; i++)
            {
                var clock = Stopwatch.StartNew();
                Written();
                own.Add(clock.Elapsed.TotalMilliseconds);
                clock.Restart();
                await PrintedAsync(true);
                with.Add(clock.Elapsed.TotalMilliseconds);
                clock.Restart();
                await PrintedAsync(false);
                without.Add(clock.Elapsed.TotalMilliseconds);
            }
            tagged.Add(Medians.Of(with) / Medians.Of(own));
            bare.Add(Medians.Of(without) / Medians.Of(own));
            Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"Medians of {PairsInARound}: own {Medians.Of(own):0} ms, the browser {Medians.Of(with):0} ms, without tags {Medians.Of(without):0} ms."));
        }
        Verdict[] verdicts =
        [
            new("the browser / own, pattern with figures", tagged, Promise.AtLeast, 5),
            new("the same with a browser that writes no tags", bare, Promise.AtLeast, null),
        ];
        foreach (var verdict in verdicts) Console.WriteLine(verdict);
        return verdicts.All(v => v.Met || v.Goal is null) ? 0 : 1;

        byte[] Written()
        {
            var drawn = new PdfCanvas().Draw(kind.Describe(reckoned, sizes, setup, Languages.English), setup);
            return drawn.Faults.IsEmpty ? drawn.Bytes.ToArray() : throw new InvalidOperationException("The pattern cannot be printed.");
        }

        Task<byte[]> PrintedAsync(bool tags) => page.PdfAsync(new PagePdfOptions { Format = "A4", PrintBackground = true, PreferCSSPageSize = true, Tagged = tags, Outline = tags });
    }

    private static int Pages(byte[] pdf) => Page().Count(Encoding.Latin1.GetString(pdf));

    [GeneratedRegex(@"/Type\s*/Page\b")]
    private static partial Regex Page();

    [GeneratedRegex(@"/S\s*/Figure\b")]
    private static partial Regex Figure();
}
