using Coilwright.Storage.Shelf;

namespace Coilwright.Web.Hosting;

/// <summary>Everything on the shelf in one file, to save wherever she likes.</summary>
internal static class BackupFile
{
    /// <summary>How the files are called that are saved here; the moment follows.</summary>
    public const string Name = "coilwright-";

    /// <summary>Adds the address.</summary>
    public static void MapBackupFile(this IEndpointRouteBuilder routes) => routes.MapGet("/backup/everything", SaveAsync);

    private static async Task<IResult> SaveAsync(IShelfBackup backup, TimeProvider clock, HttpContext http, CancellationToken cancel)
    {
        var folder = Directory.CreateTempSubdirectory("coilwright-backup-");
        try
        {
            var file = Path.Combine(folder.FullName, "everything");
            if (await backup.BackUpAsync(file, cancel) is BackupAnswer.NotMade not) throw new ShelfUnreadableException(not.Why);
            // A new one each time: what the browser kept of an older one is no backup.
            http.Response.Headers.CacheControl = "no-store";
            var at = clock.GetLocalNow().ToString("yyyy-MM-dd-HHmm", System.Globalization.CultureInfo.InvariantCulture);
            // It goes with its sending, whether that ends well or not; its folder here, as soon as it is empty.
            var stream = new FileStream(file, FileMode.Open, FileAccess.Read, FileShare.Read | FileShare.Delete, 64 * 1024, FileOptions.Asynchronous | FileOptions.DeleteOnClose);
            http.Response.OnCompleted(() =>
            {
                folder.Delete(recursive: true);
                return Task.CompletedTask;
            });
            return Results.File(stream, "application/octet-stream", $"{Name}{at}.pieces.db");
        }
        catch
        {
            folder.Delete(recursive: true);
            throw;
        }
    }
}
