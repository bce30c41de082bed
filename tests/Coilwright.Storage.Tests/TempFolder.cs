namespace Coilwright.Storage.Tests;

/// <summary>A folder of the test's own, removed afterwards.</summary>
internal sealed class TempFolder : IDisposable
{
    public TempFolder() => Path = Directory.CreateTempSubdirectory("coilwright-").FullName;

    /// <summary>A folder that exists already.</summary>
    public TempFolder(string path) => Path = path;

    public string Path { get; }

    public string File(string name) => System.IO.Path.Combine(Path, name);

    public void Dispose() => Directory.Delete(Path, recursive: true);
}
