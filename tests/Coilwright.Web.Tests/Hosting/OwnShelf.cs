namespace Coilwright.Web.Tests.Hosting;

/// <summary>A folder for one bench's pieces: never the one of whoever runs the tests.</summary>
public sealed class OwnShelf : IDisposable
{
    public string Folder { get; } = Directory.CreateTempSubdirectory("coilwright-shelf-").FullName;

    public void Dispose() => Directory.Delete(Folder, recursive: true);
}
