using System.Text;
using Coilwright.Storage.Lists;

namespace Coilwright.Web.Hosting;

/// <summary>The costs as a file to keep.</summary>
internal static class PriceFiles
{
    /// <summary>Adds the address.</summary>
    public static void MapPriceFiles(this IEndpointRouteBuilder routes) =>
        routes.MapGet("/price/my.costs.json", async (IKeptLists lists, CancellationToken cancel) =>
            await lists.ListAsync(ListKind.Costs, cancel) is { } kept ? Results.File(Encoding.UTF8.GetBytes(kept.Content), "application/json", "my.costs.json") : Results.NotFound());
}
