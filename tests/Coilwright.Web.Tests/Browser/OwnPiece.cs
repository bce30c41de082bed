using Coilwright.Core.Pieces;
using Microsoft.Playwright;

namespace Coilwright.Web.Tests.Browser;

/// <summary>Puts a piece on the shelf through the page, as a maker does, so that each test has its own and none trips over another's.</summary>
internal static class OwnPiece
{
    /// <summary>Brings the piece in and waits until it lies on the bench. Gives its address, <c>/piece/...</c>.</summary>
    public static async Task<string> BringAsync(this Visit visit, Piece piece)
    {
        await visit.OpenAsync("/pieces");
        await visit.Page.GetByLabel("Bring in a piece from a file").SetInputFilesAsync(new FilePayload
        {
            Name = "own.piece.json",
            MimeType = "application/json",
            Buffer = Storage.PieceFile.Write(piece),
        });
        await Assertions.Expect(visit.Page.Locator(".tape dd").First).ToHaveTextAsync($"{piece.Order.Count}");
        return new Uri(visit.Page.Url).AbsolutePath;
    }

    /// <summary>The button of this very name, said aloud as a whole.</summary>
    public static ILocator Button(this IPage page, string name) => page.GetByRole(AriaRole.Button, new PageGetByRoleOptions { Name = name, Exact = true });

    /// <summary>Takes a bead off, and waits until the figures show it.</summary>
    public static async Task TakeOffAsync(this IPage page, int bead, int left)
    {
        await page.Locator(".rows-beads [role=option]").Nth(bead).ClickAsync();
        await page.Button("Take off").ClickAsync();
        await Assertions.Expect(page.Locator(".tape dd").First).ToHaveTextAsync($"{left}");
    }
}
