using System.Globalization;
using System.Text;
using Coilwright.Benchmarks.Running;
using Microsoft.Playwright;

namespace Coilwright.Benchmarks.Web;

/// <summary>How long until the piece in the round is first seen, against a scene with nothing in it, and how long a frame of 2,000 beads takes against one of 200.</summary>
/// <remarks>Without a graphics card: the browser draws on the processor, which makes a frame cost what its pixels cost. What is read back from the frame makes sure that it was drawn to its end.</remarks>
internal static class CoilInSpace
{
    private const int Visits = 7, Frames = 25;

    // Told as soon as the page says that it turns: the frame is drawn once more and read, and the time since the script began is kept.
    private const string Watch = """
        new MutationObserver((_, watch) => {
          const root = document.querySelector('.coil-view');
          if (root?.dataset.coilState !== 'turning') return;
          watch.disconnect();
          root.coil.frame();
          window.firstFrameMs = performance.now() - root.coil.began;
        }).observe(document, { attributes: true, subtree: true, attributeFilter: ['data-coil-state'] });
        """;

    public static async Task<int> MeasureAsync(int rounds, string program)
    {
        await using var bench = await BenchAndBrowser.StartAsync(program, inSpace: true);
        await using var few = await bench.OpenAsync(GeneratedPieces.OnABraceletCoil(200));
        await using var many = await bench.OpenAsync(GeneratedPieces.OnABraceletCoil(2_000));
        var (coil, large) = (new Uri(few.Page.Url).AbsolutePath + "/coil", new Uri(many.Page.Url).AbsolutePath + "/coil");
        await few.Page.AddInitScriptAsync(Watch);
        await many.Page.AddInitScriptAsync(Watch);
        var empty = false;
        // Asked for by way of us in either case, so that this costs both the same.
        await few.Page.RouteAsync("**/coil/worn.glb*", route => empty ? route.FulfillAsync(new RouteFulfillOptions { ContentType = "model/gltf-binary", BodyBytes = Nothing() }) : route.ContinueAsync());

        List<double> first = [], frame = [];
        await FirstAsync(few.Page, coil);
        for (var round = 0; round < rounds; round++)
        {
            List<double> full = [], bare = [];
            for (var i = 0; i < Visits; i++)
            {
                empty = false;
                full.Add(await FirstAsync(few.Page, coil));
                empty = true;
                bare.Add(await FirstAsync(few.Page, coil));
            }
            first.Add(Medians.Of(full) / Medians.Of(bare));
            empty = false;
            await FirstAsync(few.Page, coil);
            await FirstAsync(many.Page, large);
            List<double> small = [], big = [];
            for (var i = 0; i < 5; i++)
            {
                small.AddRange(await FramesAsync(few.Page));
                big.AddRange(await FramesAsync(many.Page));
            }
            frame.Add(Medians.Of(big) / Medians.Of(small));
            Console.WriteLine(string.Create(CultureInfo.InvariantCulture,
                $"First frame: 200 beads {Medians.Of(full):0} ms, nothing {Medians.Of(bare):0} ms. A frame: 2,000 beads {Medians.Of(big):0} ms, 200 beads {Medians.Of(small):0} ms."));
        }
        Verdict[] verdicts =
        [
            new("first frame of 200 beads / of an empty scene", first, Promise.AtMost, 2),
            new("frame of 2,000 beads / of 200", frame, Promise.AtMost, 2),
        ];
        foreach (var verdict in verdicts) Console.WriteLine(verdict);
        return verdicts.All(v => v.Met) ? 0 : 1;
    }

    private static async Task<double> FirstAsync(IPage page, string coil)
    {
        await page.GotoAsync(coil);
        await page.WaitForFunctionAsync("() => window.firstFrameMs > 0", null, new PageWaitForFunctionOptions { Timeout = 120_000 });
        return await page.EvaluateAsync<double>("window.firstFrameMs");
    }

    private static async Task<double[]> FramesAsync(IPage page)
    {
        await page.BringToFrontAsync();
        return await page.EvaluateAsync<double[]>("""
            frames => {
              const coil = document.querySelector('.coil-view').coil, times = [];
              coil.frame();
              for (let i = 0; i < frames; i++) { const began = performance.now(); coil.frame(); times.push(performance.now() - began); }
              return times;
            }
            """, Frames / 5);
    }

    // A model in glTF's binary form with a scene and nothing in it.
    private static byte[] Nothing()
    {
        var text = Encoding.ASCII.GetBytes("""{"asset":{"version":"2.0"},"scene":0,"scenes":[{}]}""");
        Array.Resize(ref text, (text.Length + 3) / 4 * 4);
        for (var i = text.Length - 1; text[i] == 0; i--) text[i] = (byte)' ';
        return [.. "glTF"u8, .. BitConverter.GetBytes(2), .. BitConverter.GetBytes(20 + text.Length), .. BitConverter.GetBytes(text.Length), .. "JSON"u8, .. text];
    }
}
