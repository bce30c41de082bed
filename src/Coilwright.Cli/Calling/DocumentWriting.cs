using System.Collections.Immutable;
using Coilwright.Core.Faults;
using Coilwright.Core.Grading;
using Coilwright.Core.Pieces;
using Coilwright.Core.Readings;
using Coilwright.Documents;
using Coilwright.Storage;
using Coilwright.Wording;

namespace Coilwright.Cli.Calling;

/// <summary>Writes a document of a piece into a folder, for every verb that does.</summary>
internal static class DocumentWriting
{
    /// <summary>Reads a piece, and writes a document of it with its drawings.</summary>
    public static async Task<DocumentsWritten> WriteAsync(DocumentKind kind, DocumentOptions.Request asked, Language language,
        Func<DocumentSource, IEnumerable<DocumentFile>>? beside, CancellationToken cancel)
    {
        var (path, target, request, wrists, setup) = asked;
        var data = DataFiles.LoadDefault();
        if (data.Data is not { } known) return new DocumentsWritten([.. data.Faults], null);
        var read = PieceFile.ReadFrom(path, known);
        if (read.Piece is not { } piece) return new DocumentsWritten([.. read.Faults], path);
        // Sizes take longer than the rest: they are made beside it, and the drawings beside the pages.
        var sizing = Task.Run(() => wrists is { } of ? Grader.Of(piece, known, new SizesRequest(of.IsEmpty ? UsualWrists.Few(piece, known) : of), null, cancel) : null, cancel);
        var reckoned = Reckoning.Of(piece, known, request, cancel);
        var drawing = Task.Run(() => DocumentFiles.Drawings(kind, reckoned, setup, language).Concat(beside?.Invoke(new DocumentSource(piece, known, reckoned)) ?? []).ToArray(), cancel);
        var sizes = await sizing.ConfigureAwait(false);
        cancel.ThrowIfCancellationRequested();

        // Everything is drawn before anything is written. A page whose letters cannot be printed is left out and said; the others are of use without it.
        var files = new List<DocumentFile>();
        foreach (var file in DocumentFiles.Pages(kind, reckoned, setup, language, sizes))
        {
            cancel.ThrowIfCancellationRequested();
            files.Add(file);
        }
        files.AddRange(await drawing.ConfigureAwait(false));
        var written = FolderFiles.Write(target, files.Where(f => f.Faults.IsEmpty).Select(f => (FileStem.Of(path) + "-" + f.Name, f.Bytes)), cancel);
        if (written.Fault is { } fault) return new DocumentsWritten([fault], written.At);
        // Where on the page such a text would have stood says nothing about the piece file.
        return new DocumentsWritten([.. files.SelectMany(f => f.Faults).Select(f => f with { Field = "" })], path) { Reckoned = reckoned, Written = written.Places };
    }
}

/// <summary>What a document is made from.</summary>
/// <param name="Piece">The piece as it was read.</param>
/// <param name="Data">The program's data.</param>
/// <param name="Reckoned">Its readings.</param>
internal sealed record DocumentSource(Piece Piece, ReckoningData Data, Reckoned Reckoned);

/// <summary>What came of it: the files that were written, and what is wrong and with which file.</summary>
internal sealed record DocumentsWritten(ImmutableArray<Fault> Faults, string? File)
{
    public Reckoned? Reckoned { get; init; }

    public ImmutableArray<string> Written { get; init; } = [];
}
