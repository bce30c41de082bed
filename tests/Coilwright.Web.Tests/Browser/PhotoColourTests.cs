using System.Buffers.Binary;
using System.Globalization;
using Coilwright.Core.Colour;
using Coilwright.Web.Tests.Components;
using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace Coilwright.Web.Tests.Browser;

/// <summary>A colour read off a photo that stays in the browser. With a bench of its own, as beads change.</summary>
public sealed class PhotoColourTests(BenchInBrowser bench) : IClassFixture<BenchInBrowser>
{
    private static readonly Srgb Bead = new(0x2a, 0x7f, 0x77);

    private static ILocator Picker(IPage page) => page.Locator(".photo-colour");

    private static async Task<(Visit Visit, string Piece)> AtPieceAsync(BenchInBrowser bench, Screen screen)
    {
        var visit = await bench.VisitAsync(screen);
        var piece = await visit.BringAsync(Examples.Boardwalk);
        await visit.OpenAsync(piece + "/photo-colour");
        return (visit, piece);
    }

    // Painted by the browser itself. On the left a bead with a lamp in it and a dark edge, on the right paper in warm light.
    private static async Task<byte[]> PaintedAsync(IPage page, string type = "image/png", int wide = 400, int high = 300, object[][]? paint = null, bool noise = false) =>
        Convert.FromBase64String(await page.EvaluateAsync<string>("""
            async ({ type, wide, high, paint, noise }) => {
              const canvas = new OffscreenCanvas(wide, high), on = canvas.getContext('2d');
              if (noise) {
                const dots = on.createImageData(wide, high);
                for (let i = 0; i < dots.data.length; i++) dots.data[i] = i % 4 === 3 ? 255 : Math.random() * 256;
                on.putImageData(dots, 0, 0);
              } else for (const [colour, ...box] of paint) {
                on.fillStyle = colour;
                on.fillRect(...box);
              }
              const bytes = new Uint8Array(await (await canvas.convertToBlob({ type, quality: 0.95 })).arrayBuffer());
              let text = '';
              for (let i = 0; i < bytes.length; i += 8192) text += String.fromCharCode(...bytes.subarray(i, i + 8192));
              return btoa(text);
            }
            """, new { type, wide, high, paint = paint ?? Scene, noise }));

    private static readonly object[][] Scene =
        [["rgb(200,190,170)", 0, 0, 400, 300], ["#2a7f77", 0, 0, 200, 300], ["#ffffff", 96, 146, 8, 8], ["#0a1e1c", 100, 156, 12, 4]];

    private static Task GiveAsync(IPage page, string name, string type, byte[] bytes) => page.GetByLabel("Choose a photo").SetInputFilesAsync(new FilePayload { Name = name, MimeType = type, Buffer = bytes });

    private static Task OpenAsync(IPage page) => Expect(Picker(page)).ToHaveAttributeAsync("data-photo-state", "open", new LocatorAssertionsToHaveAttributeOptions { Timeout = 60_000 });

    private static async Task TapAsync(IPage page, int x, int y) => await page.EvaluateAsync("""
        ([x, y]) => {
          const canvas = document.querySelector('.photo-stage canvas'), box = canvas.getBoundingClientRect();
          canvas.dispatchEvent(new MouseEvent('click', { bubbles: true, clientX: box.left + (x + 0.5) * box.width / canvas.width, clientY: box.top + (y + 0.5) * box.height / canvas.height }));
        }
        """, new[] { x, y });

    [Fact]
    public async Task A_tapped_bead_gives_its_colour_without_glare_and_shadow_and_the_piece_takes_it()
    {
        var (visit, piece) = await AtPieceAsync(bench, Screen.Desktop);
        await using var _ = visit;
        var page = visit.Page;
        await GiveAsync(page, "beads.png", "image/png", await PaintedAsync(page));
        await OpenAsync(page);
        await Expect(Picker(page)).ToContainTextAsync("Opened: 400 by 300 dots.");
        await TapAsync(page, 100, 150);
        await Expect(page.Locator(".photo-taken")).ToContainTextAsync($"{Bead}, lightness {Lab.FromSrgb(Bead).L.ToString("0.0", CultureInfo.InvariantCulture)}");
        await Expect(page.Locator(".photo-read")).ToContainTextAsync("glare and shadow were left out");
        await Barriers.NoneAsync(page);

        // By the paper it is another colour: as the core has it.
        await page.GetByLabel("white paper").CheckAsync();
        await TapAsync(page, 300, 150);
        await Expect(page.Locator(".photo-read")).ToContainTextAsync("Colours are balanced by the paper.");
        var white = PhotoColour.White([.. Enumerable.Repeat(new Srgb(200, 190, 170), 9)], out var trouble)!;
        Assert.Equal(WhiteTrouble.None, trouble);
        var balanced = white.Of(LinearLight.FromSrgb(Bead)).ToSrgb();
        Assert.NotEqual(Bead, balanced);
        await Expect(page.Locator(".photo-taken")).ToContainTextAsync(balanced.ToString());

        await page.Locator(".photo-put select").SelectOptionAsync("round");
        await page.Button("Make it its colour").ClickAsync();
        await Expect(page.Locator(".photo-put")).ToContainTextAsync("has it now.");
        await page.Button("Add it to its colours").ClickAsync();
        await visit.OpenAsync(piece + "/palette");
        await Expect(page.Locator(".palette-kinds tbody tr").First).ToContainTextAsync($"{balanced} {balanced}");
    }

    [Fact]
    public async Task The_photo_itself_is_never_sent()
    {
        var (visit, _) = await AtPieceAsync(bench, Screen.Desktop);
        await using var __ = visit;
        var page = visit.Page;
        long sent = 0;
        page.Request += (_, request) => Interlocked.Add(ref sent, request.PostDataBuffer?.Length ?? 0);
        var session = await page.Context.NewCDPSessionAsync(page);
        await session.SendAsync("Network.enable");
        session.Event("Network.webSocketFrameSent").OnEvent += (_, e) => Interlocked.Add(ref sent, e!.Value.GetProperty("response").GetProperty("payloadData").GetString()!.Length);
        // Dots at random, so that it cannot be made small.
        var noisy = await PaintedAsync(page, wide: 500, high: 400, noise: true);
        Assert.True(noisy.Length > 400_000);
        await GiveAsync(page, "noise.png", "image/png", noisy);
        await OpenAsync(page);
        await TapAsync(page, 250, 200);
        await Expect(page.Locator(".photo-read")).ToContainTextAsync("may lie on an edge or on a pattern");
        Assert.InRange(Interlocked.Read(ref sent), 1, 20_000);
    }

    [Fact]
    public async Task By_keys_the_ring_moves_takes_and_changes_its_size()
    {
        var (visit, _) = await AtPieceAsync(bench, Screen.Phone);
        await using var __ = visit;
        var page = visit.Page;
        await GiveAsync(page, "beads.png", "image/png", await PaintedAsync(page));
        await OpenAsync(page);
        var canvas = page.Locator(".photo-stage canvas");
        await Expect(canvas).ToBeFocusedAsync();
        await Expect(canvas).ToHaveAttributeAsync("data-at", "200,150");
        var scrolled = await page.EvaluateAsync<double>("scrollY");
        for (var i = 0; i < 6; i++) await page.Keyboard.PressAsync("ArrowRight");
        await page.Keyboard.PressAsync("Shift+ArrowDown");
        await Expect(canvas).ToHaveAttributeAsync("data-at", "230,151");
        Assert.Equal(scrolled, await page.EvaluateAsync<double>("scrollY"));
        await page.Keyboard.PressAsync("Enter");
        await Expect(page.Locator(".photo-taken")).ToContainTextAsync("#c8beaa");
        for (var i = 0; i < 20; i++) await page.Keyboard.PressAsync("ArrowLeft");
        await page.Keyboard.PressAsync("-");
        await Expect(page.GetByLabel("Ring")).ToHaveValueAsync("0");
        await page.Button("Take what is in the ring").ClickAsync();
        await Expect(page.Locator(".photo-taken")).ToContainTextAsync(Bead.ToString());
        await Barriers.NoneAsync(page);
    }

    [Fact]
    public async Task Paper_that_tells_nothing_is_told_with_its_reason()
    {
        var (visit, _) = await AtPieceAsync(bench, Screen.Desktop);
        await using var __ = visit;
        var page = visit.Page;
        await GiveAsync(page, "beads.png", "image/png", await PaintedAsync(page, paint: [["#ffffff", 0, 0, 400, 300], ["#d02020", 0, 0, 200, 300]]));
        await OpenAsync(page);
        await page.GetByLabel("white paper").CheckAsync();
        await TapAsync(page, 300, 150);
        await Expect(page.Locator(".photo-read")).ToContainTextAsync("so bright there that its tint is lost");
        await TapAsync(page, 100, 150);
        await Expect(page.Locator(".photo-read")).ToContainTextAsync("hardly white paper");
        await Expect(page.Locator(".photo-read")).ToContainTextAsync("as the camera balanced them");
    }

    [Fact]
    public async Task A_photo_of_forty_megapixels_is_read_smaller_and_a_JPEG_keeps_its_colour()
    {
        var (visit, _) = await AtPieceAsync(bench, Screen.Desktop);
        await using var __ = visit;
        var page = visit.Page;
        await GiveAsync(page, "large.jpg", "image/jpeg", await PaintedAsync(page, "image/jpeg", 8000, 5000, [["#2a7f77", 0, 0, 8000, 5000]]));
        await OpenAsync(page);
        await Expect(Picker(page)).ToContainTextAsync("Opened: 8000 by 5000 dots.");
        await Expect(Picker(page)).ToContainTextAsync("read at 1600 by 1000 dots");
        await TapAsync(page, 800, 500);
        await Expect(page.Locator(".photo-taken")).ToBeVisibleAsync();
        var read = (await page.Locator(".photo-taken").InnerTextAsync()).Trim()[..7];
        Assert.True(Srgb.TryParse(read, out var colour));
        // What JPEG loses of a plain colour: a step or two of each channel.
        Assert.True(ColourDifference.Ciede2000(Lab.FromSrgb(Bead), Lab.FromSrgb(colour)) < 1.5, read);
    }

    [Fact]
    public async Task What_cannot_be_read_is_told_kindly_and_the_next_photo_opens_all_the_same()
    {
        var (visit, _) = await AtPieceAsync(bench, Screen.Desktop);
        await using var __ = visit;
        var page = visit.Page;
        var png = await PaintedAsync(page);
        foreach (var (name, type, bytes, told) in new (string, string, byte[], string)[]
                 {
                     ("list.png", "image/png", "name;drawer\nmoon;B 2\n"u8.ToArray(), "no picture that can be read"),
                     ("empty.png", "image/png", [], "no picture that can be read"),
                     ("phone.heic", "image/jpeg", [0, 0, 0, 24, .. "ftypheic"u8, 0, 0, 0, 0, .. new byte[400]], "HEIC"),
                     ("half.png", "image/png", png[..(png.Length / 2)], "cut short"),
                     ("stub.jpg", "image/jpeg", [0xff, 0xd8, 0xff, 0xe0], "cut short"),
                     ("huge.png", "image/png", Huge(10_000, 10_000), "100 million dots, and at most 64"),
                     ("inks.jpg", "image/jpeg", Inks, "printing inks"),
                     ("broken.png", "image/png", Broken(png), "broken"),
                 })
        {
            await GiveAsync(page, name, type, bytes);
            await Expect(Picker(page).Locator(".wrong")).ToContainTextAsync(told);
            await Expect(page.Locator(".photo-stage")).ToBeHiddenAsync();
        }
        await Barriers.NoneAsync(page);
        await GiveAsync(page, "beads.jpg", "image/jpeg", png);
        await OpenAsync(page);
        await Expect(Picker(page)).ToContainTextAsync("it is PNG and was read as that");
        await Expect(Picker(page).Locator(".wrong")).ToHaveCountAsync(0);
        await GiveAsync(page, "moving.gif", "image/gif", Moving);
        await Expect(Picker(page)).ToContainTextAsync("moving picture; its first one is shown");
        // One dot is no disc: nothing is taken, and nothing breaks.
        await page.Button("Take what is in the ring").ClickAsync();
        await Expect(page.Locator(".photo-taken")).ToHaveCountAsync(0);
    }

    [Fact]
    public async Task A_kind_of_the_tray_takes_a_colour_from_a_photo_too()
    {
        await using var visit = await bench.VisitAsync(Screen.Phone);
        var page = visit.Page;
        await visit.OpenAsync("/tray");
        await page.GetByLabel("Choose a list").SetInputFilesAsync(new FilePayload { Name = "list.csv", MimeType = "text/csv", Buffer = "name;shape;length;drawer\nSea ball;round;6;A 1\n"u8.ToArray() });
        await page.Button("Take all of it in").ClickAsync();
        await Expect(page.Locator(".tray-bring")).ToContainTextAsync("Taken in: 1 new");
        await page.GetByRole(AriaRole.Link, new PageGetByRoleOptions { Name = "Sea ball" }).ClickAsync();
        await page.Locator(".tray-photo summary").First.ClickAsync();
        await page.GetByLabel("Choose a photo").WaitForAsync();
        await page.Locator(".photo-colour").WaitForAsync();
        var painted = await PaintedAsync(page);
        await GiveAsync(page, "beads.png", "image/png", painted);
        await OpenAsync(page);
        await TapAsync(page, 100, 150);
        await page.Button("Make it its colour").ClickAsync();
        await page.Button("Keep").ClickAsync();
        await Expect(page.GetByText("Kept.", new PageGetByTextOptions { Exact = true })).ToBeVisibleAsync();
        await page.ReloadAsync();
        await Expect(page.GetByLabel("Colours")).ToHaveValueAsync(Bead.ToString());
    }

    private static byte[] Chunk(string name, ReadOnlySpan<byte> data)
    {
        byte[] chunk = [0, 0, 0, 0, .. System.Text.Encoding.ASCII.GetBytes(name), .. data, 0, 0, 0, 0];
        BinaryPrimitives.WriteInt32BigEndian(chunk, data.Length);
        return chunk;
    }

    // A PNG's head that promises more than it has.
    private static byte[] Huge(int wide, int high)
    {
        var head = new byte[13];
        BinaryPrimitives.WriteInt32BigEndian(head, wide);
        BinaryPrimitives.WriteInt32BigEndian(head.AsSpan(4), high);
        head[8] = 8;
        head[9] = 2;
        return [0x89, .. "PNG\r\n"u8, 0x1a, 0x0a, .. Chunk("IHDR", head), .. Chunk("IEND", [])];
    }

    // Whole by its ends, and nonsense between them.
    private static byte[] Broken(byte[] png)
    {
        byte[] broken = [.. png];
        for (var i = 33; i < broken.Length - 12; i++) broken[i] = 0x5a;
        return broken;
    }

    // A JPEG's frame of four inks.
    private static byte[] Inks => [0xff, 0xd8, 0xff, 0xee, 0, 14, .. "Adobe"u8, 0, 100, 0, 0, 0, 0, 2, 0xff, 0xc0, 0, 20, 8, 0, 60, 0, 80, 4, 1, 0x11, 0, 2, 0x11, 0, 3, 0x11, 0, 4, 0x11, 0, 0xff, 0xda, 0, 2, 0, 0xff, 0xd9];

    // Two pictures of one dot.
    private static byte[] Moving
    {
        get
        {
            byte[] one = [0x2c, 0, 0, 0, 0, 1, 0, 1, 0, 0, 2, 2, 0x44, 1, 0];
            return [.. "GIF89a"u8, 1, 0, 1, 0, 0x80, 0, 0, 255, 255, 255, 0, 0, 0, 0x21, 0xff, 11, .. "NETSCAPE2.0"u8, 3, 1, 0, 0, 0, .. one, .. one, 0x3b];
        }
    }
}
