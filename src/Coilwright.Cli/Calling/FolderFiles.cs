using System.Collections.Immutable;
using Coilwright.Core.Faults;
using Coilwright.Storage;

namespace Coilwright.Cli.Calling;

/// <summary>Files that a verb writes together into one folder.</summary>
internal static class FolderFiles
{
    /// <summary>Makes the folder if it is not there and writes the files one after the other, each whole or not at all.</summary>
    /// <returns>Where they lie; when one could not be written, why and where, and in the fault the names of those that already are.</returns>
    public static FilesWritten Write(string folder, IEnumerable<(string Name, ReadOnlyMemory<byte> Bytes)> files, CancellationToken cancel)
    {
        if (SafeFile.MakeFolder(folder) is { } refused) return new FilesWritten([], refused, folder);
        var written = ImmutableArray.CreateBuilder<string>();
        foreach (var (name, bytes) in files)
        {
            cancel.ThrowIfCancellationRequested();
            var place = Path.Combine(folder, name);
            if (SafeFile.Write(place, bytes.Span) is { } fault)
                return new FilesWritten(written.ToImmutable(), written.Count == 0 ? fault
                    : fault with { Code = FaultCodes.FileUnwritableAfter, Values = fault.Values.Add("written", string.Join(", ", written)) }, place);
            written.Add(place);
        }
        return new FilesWritten(written.ToImmutable(), null, null);
    }
}

/// <summary>What came of writing files.</summary>
/// <param name="Places">Where those lie that were written.</param>
/// <param name="Fault">Why one could not be; null when all were.</param>
/// <param name="At">The file or folder that it happened to.</param>
internal sealed record FilesWritten(ImmutableArray<string> Places, Fault? Fault, string? At);
