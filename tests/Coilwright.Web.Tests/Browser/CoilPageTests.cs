using System.IO.Compression;
using Coilwright.Core.Beads;
using Coilwright.Core.Colour;
using Coilwright.Core.Pieces;
using Coilwright.Core.Stringing;
using Coilwright.Web.Tests.Components;
using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace Coilwright.Web.Tests.Browser;

/// <summary>The piece in space, in a real browser that draws without a graphics card.</summary>
public sealed class CoilPageTests(BenchInBrowser bench) : IClassFixture<BenchInBrowser>
{
    private static readonly Srgb Red = new(0xb0, 0x20, 0x20), Green = new(0x1f, 0x7a, 0x3a), Blue = new(0x20, 0x40, 0xa8);

    // Three saturated kinds, matt, so that what is seen is their own colour.
    private static Piece Coloured(int count = 60)
    {
        Bead Ball(string id, Srgb colour) => Bead.TryMake(new BeadDescription
        {
            Id = id,
            Name = id + " ball",
            Shape = "round",
            Length = new BeadLength.Nominal(8),
            BoreMm = 1,
            Colours = [colour],
            Coating = "matt",
        }, out var bead, out _) ? bead! : throw new InvalidOperationException();
        return Examples.Boardwalk with
        {
            Title = "Three colours",
            Beads = [Ball("red", Red), Ball("green", Green), Ball("blue", Blue)],
            Order = new StringingOrder([.. Enumerable.Range(0, count).Select(i => i % 3)], []),
            Written = null,
            MeasuredRows = [],
            Wishes = new(),
            Pattern = PatternNotes.None,
        };
    }

    private static Task ShownAsync(IPage page, string state = "turning") => Expect(page.Locator(".coil-view")).ToHaveAttributeAsync("data-coil-state", state);

    private static Task PickedAsync(IPage page, int bead) => Expect(page.Locator(".coil-view")).ToHaveAttributeAsync("data-picked", $"{bead}");

    private static Task<double[]> SeenAsync(IPage page, int bead) => page.EvaluateAsync<double[]>("bead => document.querySelector('.coil-view').coil.seen(bead)", bead);

    // The colour in the picture at a place of it, as the browser shows it: a photo of the page, read by the page itself.
    private static async Task<double[]> ColourAsync(IPage page, double x, double y)
    {
        var photo = Convert.ToBase64String(await page.Locator(".coil-stage").ScreenshotAsync());
        return await page.EvaluateAsync<double[]>("""
            async ({ photo, x, y }) => {
              const picture = new Image();
              picture.src = 'data:image/png;base64,' + photo;
              await picture.decode();
              const paper = new OffscreenCanvas(picture.width, picture.height).getContext('2d');
              paper.drawImage(picture, 0, 0);
              const around = paper.getImageData(Math.round(x) - 2, Math.round(y) - 2, 5, 5).data;
              return [0, 1, 2].map(c => { let sum = 0; for (let i = c; i < around.length; i += 4) sum += around[i]; return sum / 25; });
            }
            """, new { photo, x, y });
    }

    [Fact]
    public async Task Beads_are_seen_in_their_own_colours_where_they_stand()
    {
        await using var visit = await bench.VisitAsync(Screen.Desktop, inSpace: true);
        var page = visit.Page;
        await visit.OpenAsync(await visit.BringAsync(Coloured()) + "/coil");
        await ShownAsync(page);
        // Light and shade change how light a colour is; which of red, green and blue is the strongest, and by far, they do not. Those in front, about the middle of the picture.
        var wide = await page.EvaluateAsync<double>("document.querySelector('.coil-stage').clientWidth");
        var seen = new HashSet<int>();
        for (var bead = 1; bead <= 60; bead++)
        {
            var angle = await page.EvaluateAsync<double[]>("bead => document.querySelector('.coil-view').coil.faces(bead)", bead);
            if (angle[0] < 0.85) continue;
            var at = await SeenAsync(page, bead);
            Assert.InRange(at[0], 0, wide);
            var colour = await ColourAsync(page, at[0], at[1]);
            var own = (bead - 1) % 3;
            for (var other = 0; other < 3; other++)
                if (other != own)
                    Assert.True(colour[own] > colour[other] + 25, $"Bead {bead} is seen as {string.Join(", ", colour.Select(c => $"{c:0}"))}.");
            seen.Add(own);
        }
        Assert.Equal(3, seen.Count);
        // Paper in the corner, beads in the middle: the picture is not blank.
        var corner = await ColourAsync(page, 12, 12);
        Assert.All(corner, c => Assert.InRange(c, 215, 255));
    }

    [Fact]
    public async Task A_bead_tapped_in_the_picture_is_selected_in_the_list_and_the_other_way_round()
    {
        await using var visit = await bench.VisitAsync(Screen.Desktop, inSpace: true);
        var page = visit.Page;
        await visit.OpenAsync(await visit.BringAsync(Coloured()) + "/coil");
        await ShownAsync(page);
        var told = page.Locator(".coil-told");
        await Expect(told).ToContainTextAsync("Tap a bead");

        await page.Locator("#coil-option-17").ClickAsync();
        await PickedAsync(page, 17);
        await Expect(told).ToHaveTextAsync("Bead 17: B, green ball, turn 1, a quarter turn past the top");
        await Expect(page.Locator(".coil-tag")).ToHaveTextAsync("B");
        // It was turned to the front: there it is in the picture, with its line round it.
        var at = await SeenAsync(page, 17);
        var stage = (await page.Locator(".coil-stage").BoundingBoxAsync())!;
        Assert.InRange(at[0] / stage.Width, 0.4, 0.6);

        // Another one, by the picture: its neighbour in front.
        var next = await SeenAsync(page, 18);
        await page.Mouse.ClickAsync((float)(stage.X + next[0]), (float)(stage.Y + next[1]));
        await PickedAsync(page, 18);
        await Expect(told).ToHaveTextAsync("Bead 18: C, blue ball, turn 1, a quarter turn past the top");
        await Expect(page.Locator("#coil-option-18")).ToHaveAttributeAsync("aria-selected", "true");
        await Expect(page.Locator(".coil-beads [aria-selected=true]")).ToHaveCountAsync(1);

        // By keys in the list, and by the buttons.
        await page.Locator(".coil-beads").FocusAsync();
        await page.Keyboard.PressAsync("ArrowRight");
        await PickedAsync(page, 19);
        await page.Keyboard.PressAsync("End");
        await PickedAsync(page, 60);
        await page.Button("Bead before").ClickAsync();
        await PickedAsync(page, 59);
        await page.Locator(".coil-beads").FocusAsync();
        await page.Keyboard.PressAsync("Escape");
        await PickedAsync(page, 0);
        await Expect(page.Locator(".coil-tag")).ToBeHiddenAsync();
    }

    [Fact]
    public async Task Keys_and_buttons_turn_it_and_bring_it_back_to_how_it_was()
    {
        await using var visit = await bench.VisitAsync(Screen.Desktop, inSpace: true);
        var page = visit.Page;
        await visit.OpenAsync(await visit.BringAsync(Coloured()) + "/coil");
        await ShownAsync(page);
        var first = await SeenAsync(page, 10);
        await page.Locator(".coil-stage canvas").FocusAsync();
        async Task MovesAsync(Func<Task> does)
        {
            var before = await SeenAsync(page, 10);
            await does();
            var after = await SeenAsync(page, 10);
            Assert.True(Math.Abs(after[0] - before[0]) + Math.Abs(after[1] - before[1]) > 1, $"From {before[0]:0}, {before[1]:0} to {after[0]:0}, {after[1]:0}.");
        }
        var scrolled = await page.EvaluateAsync<double>("scrollY");
        foreach (var key in (string[])["ArrowLeft", "ArrowUp", "+", "ArrowRight", "ArrowRight", "ArrowDown", "-", "-"]) await MovesAsync(() => page.Keyboard.PressAsync(key));
        // The page did not scroll under the arrow keys.
        Assert.Equal(scrolled, await page.EvaluateAsync<double>("scrollY"));
        foreach (var button in (string[])["Left", "Nearer", "From above", "From below", "Farther", "Right", "Right"]) await MovesAsync(() => page.Button(button).ClickAsync());
        await page.Button("As at first").ClickAsync();
        var again = await SeenAsync(page, 10);
        Assert.Equal(first[0], again[0], 0.01);
        Assert.Equal(first[1], again[1], 0.01);
    }

    [Fact]
    public async Task Dragged_it_turns_and_no_bead_is_picked_by_that()
    {
        await using var visit = await bench.VisitAsync(Screen.Desktop, inSpace: true);
        var page = visit.Page;
        await visit.OpenAsync(await visit.BringAsync(Coloured()) + "/coil");
        await ShownAsync(page);
        var before = await SeenAsync(page, 10);
        var stage = (await page.Locator(".coil-stage").BoundingBoxAsync())!;
        var (x, y) = ((float)(stage.X + stage.Width / 2), (float)(stage.Y + stage.Height / 2));
        await page.Mouse.MoveAsync(x, y);
        await page.Mouse.DownAsync();
        await page.Mouse.MoveAsync(x + 140, y + 30, new MouseMoveOptions { Steps = 6 });
        await page.Mouse.UpAsync();
        Assert.True(Math.Abs((await SeenAsync(page, 10))[0] - before[0]) > 20);
        await PickedAsync(page, 0);
    }

    // Real touches, by the browser's own protocol: what a pointer event made by a script would leave out is which of them the browser keeps for itself.
    [Fact]
    public async Task One_finger_turns_it_two_bring_it_nearer_and_the_page_stays_where_it_is()
    {
        await using var visit = await bench.VisitAsync(Screen.Phone, inSpace: true);
        var page = visit.Page;
        await visit.OpenAsync(await visit.BringAsync(Coloured()) + "/coil");
        await ShownAsync(page);
        await page.Locator(".coil-stage").ScrollIntoViewIfNeededAsync();
        var fingers = await page.Context.NewCDPSessionAsync(page);
        Task TouchAsync(string type, params (double X, double Y)[] at) => fingers.SendAsync("Input.dispatchTouchEvent",
            new Dictionary<string, object> { ["type"] = type, ["touchPoints"] = at.Select((p, i) => new { x = p.X, y = p.Y, id = i }).ToArray() });
        var stage = (await page.Locator(".coil-stage").BoundingBoxAsync())!;
        var (x, y) = (stage.X + stage.Width / 2.0, stage.Y + stage.Height / 2.0);
        var scrolled = await page.EvaluateAsync<double>("scrollY");

        var before = await SeenAsync(page, 10);
        await TouchAsync("touchStart", (x - 60, y));
        for (var step = 1; step <= 8; step++) await TouchAsync("touchMove", (x - 60 + 15 * step, y + 2 * step));
        await TouchAsync("touchEnd");
        var turned = await SeenAsync(page, 10);
        Assert.True(Math.Abs(turned[0] - before[0]) > 15, $"From {before[0]:0} to {turned[0]:0}.");
        await PickedAsync(page, 0);

        async Task<double> WideAsync()
        {
            var all = new List<double>();
            for (var bead = 1; bead <= 60; bead++) all.Add((await SeenAsync(page, bead))[0]);
            return all.Max() - all.Min();
        }
        var wide = await WideAsync();
        await TouchAsync("touchStart", (x - 30, y));
        await TouchAsync("touchStart", (x - 30, y), (x + 30, y));
        for (var step = 1; step <= 8; step++) await TouchAsync("touchMove", (x - 30 - 6 * step, y), (x + 30 + 6 * step, y));
        await TouchAsync("touchEnd");
        var near = await WideAsync();
        Assert.True(near > 1.3 * wide, $"From {wide:0} to {near:0} wide.");
        await TouchAsync("touchStart", (x - 90, y));
        await TouchAsync("touchStart", (x - 90, y), (x + 90, y));
        for (var step = 1; step <= 8; step++) await TouchAsync("touchMove", (x - 90 + 7 * step, y), (x + 90 - 7 * step, y));
        await TouchAsync("touchEnd");
        Assert.True(await WideAsync() < 0.8 * near, "Two fingers together go back.");
        Assert.Equal(scrolled, await page.EvaluateAsync<double>("scrollY"));

        // A tap is no turn: it picks a bead.
        var bead = 0;
        for (var b = 1; b <= 60 && bead == 0; b++)
            if ((await page.EvaluateAsync<double[]>("b => document.querySelector('.coil-view').coil.faces(b)", b))[0] > 0.95) bead = b;
        var at = await SeenAsync(page, bead);
        await TouchAsync("touchStart", (stage.X + at[0], stage.Y + at[1]));
        await TouchAsync("touchEnd");
        await Expect(page.Locator(".coil-view")).ToHaveAttributeAsync("data-picked", new System.Text.RegularExpressions.Regex("^[1-9]"));
    }

    [Fact]
    public async Task At_rest_it_is_another_picture_than_on_the_wrist()
    {
        await using var visit = await bench.VisitAsync(Screen.Desktop, inSpace: true);
        var page = visit.Page;
        await visit.OpenAsync(await visit.BringAsync(Coloured()) + "/coil");
        await ShownAsync(page);
        var worn = await SeenAsync(page, 30);
        await page.GetByLabel("At rest").CheckAsync();
        await Expect(page.Locator(".coil-view")).ToHaveAttributeAsync("data-shown", "rest");
        var rest = await SeenAsync(page, 30);
        Assert.True(Math.Abs(worn[0] - rest[0]) + Math.Abs(worn[1] - rest[1]) > 1);
    }

    [Fact]
    public async Task Stills_have_the_size_that_was_asked_for_and_the_turntable_one_picture_for_each_view()
    {
        await using var visit = await bench.VisitAsync(Screen.Desktop, inSpace: true);
        var page = visit.Page;
        await visit.OpenAsync(await visit.BringAsync(Coloured()) + "/coil");
        await ShownAsync(page);
        // Larger than one tile.
        await page.GetByLabel("Width, pixels").FillAsync("2300");
        await page.GetByLabel("Height, pixels").FillAsync("700");
        var still = await page.RunAndWaitForDownloadAsync(() => page.Button("Save this view").ClickAsync(), new PageRunAndWaitForDownloadOptions { Timeout = 60_000 });
        Assert.Equal("Three colours-2300x700.png", still.SuggestedFilename);
        var png = await File.ReadAllBytesAsync((await still.PathAsync())!);
        Assert.Equal((2300, 700), Size(png));

        await page.GetByLabel("Width, pixels").FillAsync("240");
        await page.GetByLabel("Height, pixels").FillAsync("180");
        await page.GetByLabel("Pictures all round").FillAsync("5");
        var round = await page.RunAndWaitForDownloadAsync(() => page.Button("Save them all round").ClickAsync(), new PageRunAndWaitForDownloadOptions { Timeout = 60_000 });
        using var zip = ZipFile.OpenRead((await round.PathAsync())!);
        Assert.Equal(Enumerable.Range(1, 5).Select(i => $"Three colours-{i:000}.png"), zip.Entries.Select(e => e.FullName));
        var pictures = zip.Entries.Select(e =>
        {
            using var from = e.Open();
            using var into = new MemoryStream();
            from.CopyTo(into);
            return into.ToArray();
        }).ToArray();
        Assert.All(pictures, p => Assert.Equal((240, 180), Size(p)));
        Assert.Equal(5, pictures.Select(Convert.ToBase64String).Distinct().Count());
        // The picture on the page is as it was.
        await ShownAsync(page);
        await Expect(page.Button("Save them all round")).ToBeEnabledAsync();
    }

    // PNG (W3C): width and height are the first two words of the header chunk.
    private static (int, int) Size(byte[] png) =>
        (System.Buffers.Binary.BinaryPrimitives.ReadInt32BigEndian(png.AsSpan(16)), System.Buffers.Binary.BinaryPrimitives.ReadInt32BigEndian(png.AsSpan(20)));

    [Fact]
    public async Task Without_WebGL_the_drawn_piece_stands_there_and_the_list_answers()
    {
        await using var visit = await bench.VisitAsync(Screen.Desktop, inSpace: true);
        var page = visit.Page;
        await page.AddInitScriptAsync("const own = HTMLCanvasElement.prototype.getContext; HTMLCanvasElement.prototype.getContext = function (kind, ...more) { return kind.startsWith('webgl') ? null : own.call(this, kind, ...more); };");
        await visit.OpenAsync(await visit.BringAsync(Coloured()) + "/coil");
        await ShownAsync(page, "drawn");
        await Expect(page.GetByText("This browser cannot show pictures that turn")).ToBeVisibleAsync();
        await Expect(page.Locator(".coil-drawn svg")).ToBeVisibleAsync();
        await Expect(page.Locator(".coil-stage canvas")).ToBeHiddenAsync();
        await page.Locator("#coil-option-5").ClickAsync();
        await Expect(page.Locator(".coil-told")).ToHaveTextAsync("Bead 5: B, green ball, turn 1, a quarter turn before the top");
        await Expect(page.Locator(".coil-drawn #drawn-coil-bead-5")).ToHaveClassAsync(new System.Text.RegularExpressions.Regex("is-picked"));
        await Barriers.NoneAsync(page);
    }

    [Fact]
    public async Task The_models_are_there_to_save_and_a_piece_that_is_not_there_has_none()
    {
        await using var visit = await bench.VisitAsync(Screen.Phone, inSpace: true);
        var page = visit.Page;
        var piece = await visit.BringAsync(Coloured());
        await visit.OpenAsync(piece + "/coil");
        var model = await page.RunAndWaitForDownloadAsync(() => page.GetByRole(AriaRole.Link, new PageGetByRoleOptions { Name = "Save it at rest" }).ClickAsync());
        Assert.Equal("Three colours-at-rest.glb", model.SuggestedFilename);
        Assert.Equal("glTF"u8.ToArray(), (await File.ReadAllBytesAsync((await model.PathAsync())!))[..4]);
        var missing = await page.Context.APIRequest.GetAsync(new Uri(bench.Address, $"/piece/{Guid.Empty}/coil/worn.glb").ToString());
        Assert.Equal(404, missing.Status);
        await ShownAsync(page);
        await Barriers.NoneAsync(page);
    }
}
