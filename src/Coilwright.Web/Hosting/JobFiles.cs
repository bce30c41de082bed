using Coilwright.Web.Jobs;
using Coilwright.Web.Papers;

namespace Coilwright.Web.Hosting;

/// <summary>What came of a job, as a file to save.</summary>
internal static class JobFiles
{
    /// <summary>Adds the address.</summary>
    public static void MapJobFiles(this IEndpointRouteBuilder routes) => routes.MapGet("/job/{id:guid}/file", (Guid id, JobList jobs) =>
        jobs.Find(id) is { Result: SheetsMade made, Order: SheetsJob order }
            ? Results.Bytes(made.Zip, "application/zip", (order.Of is { } title ? PieceFiles.FileName(title) + "-" : "") + "sheets.zip")
            : Results.NotFound());
}
