using System.Collections.Immutable;
using Coilwright.Core.Editing;
using Coilwright.Core.Faults;
using Coilwright.Core.Pieces;
using Coilwright.Storage.Binding;
using Coilwright.Storage.Json;

namespace Coilwright.Storage;

/// <summary>What came of reading an edit.</summary>
/// <param name="Edit">The edit, or null when there were faults.</param>
/// <param name="Faults">Everything wrong with it; empty exactly when there is an edit.</param>
public sealed record EditReadResult(PieceEdit? Edit, ImmutableArray<Fault> Faults);

/// <summary>The form in which edits are stored: one line of JSON, <c>{"format":"coilwright.edit/1","edit":"insert-beads","at":3,"what":["dot"]}</c>.</summary>
/// <remarks>Beads are meant by their places, 0 at the starting end, under <c>row</c> or <c>each</c>; what else there is has the names and forms of a piece file.
/// An edit that names a part of the text cannot be stored: its outcome (<see cref="EditOutcome.Done"/>) gives one that can.</remarks>
public static class EditJson
{
    /// <summary>The form that is written, and the newest that is read.</summary>
    public const string Format = "coilwright.edit/1";

    /// <summary>Writes an edit.</summary>
    /// <exception cref="ArgumentException">It names a part of the text.</exception>
    public static byte[] Write(PieceEdit edit) => EditWriter.Write(edit);

    /// <summary>Reads an edit. Bad input is an answer, as for piece files.</summary>
    /// <param name="utf8">The bytes.</param>
    /// <param name="data">Materials and steels to read it with.</param>
    public static EditReadResult Read(ReadOnlyMemory<byte> utf8, ReckoningData data)
    {
        if (utf8.Length > PieceFile.MaxBytes) return new EditReadResult(null, [PieceFile.TooLarge()]);
        if (JsonText.Read(utf8, out var broken) is not { } text) return new EditReadResult(null, [broken!]);
        var faults = new FaultList();
        PieceEdit? edit = null;
        if (PieceFormats.Accept(ref text, faults, Format, [])) edit = new EditBinder(data, faults).Bind(text.Root);
        return new EditReadResult(faults.Count == 0 ? edit : null, faults.InOrder());
    }
}
