using Coilwright.Core.Faults;
using Coilwright.Storage.Shelf;
using Coilwright.Web.Papers;

namespace Coilwright.Web.Bench;

/// <summary>A backup that she chose, on its way back to the shelf: read from her browser to a file of its own, and put on the shelf when she says so.</summary>
/// <remarks>Belongs to one page. The file is gone when the page is.</remarks>
internal sealed class RestoreDesk(IShelfBackup backup, PieceNews news, Reckoner reckoner, SettledPieces sits, SheetMaker sheets) : IDisposable
{
    // A page that is drawn for every piece that comes would be slower than what it tells of.
    private const long ToldEvery = 2 * 1024 * 1024;

    private DirectoryInfo? _folder;

    private string FilePath => Path.Combine(_folder!.FullName, "chosen");

    /// <summary>Reads the file that she chose. Null when it is here; otherwise why not.</summary>
    /// <param name="stream">Its bytes.</param>
    /// <param name="told">Told now and then how many of them were read.</param>
    /// <param name="cancel">Gives up.</param>
    public async Task<Fault?> TakeAsync(Stream stream, Action<long> told, CancellationToken cancel = default)
    {
        try
        {
            _folder ??= Directory.CreateTempSubdirectory("coilwright-restore-");
            await using var file = new FileStream(FilePath, FileMode.Create, FileAccess.Write, FileShare.None);
            var buffer = new byte[128 * 1024];
            var next = 0L;
            while (await stream.ReadAsync(buffer, cancel) is var read and > 0)
            {
                await file.WriteAsync(buffer.AsMemory(0, read), cancel);
                if (file.Length < next) continue;
                told(file.Length);
                next = file.Length + ToldEvery;
            }
            return null;
        }
        catch (IOException e)
        {
            // Nothing on the shelf was touched.
            return Fault.Of(FaultCodes.ShelfOther, "", "", ("reason", e.Message));
        }
    }

    /// <summary>Puts it on the shelf in place of what is there, and tells every open bench.</summary>
    public async Task<RestoreAnswer> RestoreAsync()
    {
        var answer = await backup.RestoreAsync(FilePath);
        // She knows the file by her own name for it, not by that of the copy here.
        if (answer is RestoreAnswer.NotRestored not) return not.Why.Value == FilePath ? new RestoreAnswer.NotRestored(not.Why with { Value = "" }) : not;
        // A state of one number may now be another.
        reckoner.Forget();
        sits.Forget();
        await sheets.ForgetAsync();
        news.SayAll();
        return answer;
    }

    /// <inheritdoc/>
    public void Dispose() => _folder?.Delete(recursive: true);
}
