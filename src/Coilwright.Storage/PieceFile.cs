using System.Collections.Immutable;
using Coilwright.Core.Faults;
using Coilwright.Core.Pieces;
using Coilwright.Storage.Binding;
using Coilwright.Storage.Json;

namespace Coilwright.Storage;

/// <summary>What came of reading a piece file.</summary>
/// <param name="Piece">The piece, or null when there were faults.</param>
/// <param name="Faults">Everything wrong with the file in the order of the file, the first hundred; empty exactly when there is a piece.</param>
public sealed record PieceReadResult(Piece? Piece, ImmutableArray<Fault> Faults)
{
    /// <summary>Where the file was read from, or null when it came from memory.</summary>
    public string? FileName { get; init; }
}

/// <summary>Reads and writes piece files, <c>*.piece.json</c>: UTF-8 JSON, described in docs/piece.schema.json.</summary>
/// <remarks>
/// <para>Bad input is an answer, never an exception: each fault has a code, the field's path, line and column. What keeps a file from being
/// read at all (not UTF-8, not JSON, cut off, an unknown format) is told alone; otherwise all faults of the file are told at once.</para>
/// <para>Holds no rule about beads: those are the core's, and their faults are only given their place in the file here.</para>
/// </remarks>
public static class PieceFile
{
    /// <summary>Largest file read, in bytes: far above any piece (the order of 200,000 beads takes about 3 MB), and soon said when exceeded.</summary>
    public const int MaxBytes = 8 * 1024 * 1024;

    /// <summary>The format that is written, and the newest that is read.</summary>
    public const string Format = "coilwright.piece/1";

    /// <summary>Reads a piece from the bytes of a file.</summary>
    /// <param name="utf8">The bytes; a byte order mark is allowed.</param>
    /// <param name="fileName">Name of the file for messages, or null.</param>
    /// <param name="data">Materials, steels and choices to read it with.</param>
    public static PieceReadResult Read(ReadOnlyMemory<byte> utf8, string? fileName, ReckoningData data)
    {
        if (utf8.Length > MaxBytes) return Refused(fileName, TooLarge());
        if (JsonText.Read(utf8, out var broken) is not { } text) return Refused(fileName, broken!);
        var faults = new FaultList();
        if (!PieceFormats.Accept(ref text, faults)) return new PieceReadResult(null, faults.InOrder()) { FileName = fileName };
        var piece = new PieceBinder(data, faults).Bind(text.Root);
        return new PieceReadResult(faults.Count == 0 ? piece : null, faults.InOrder()) { FileName = fileName };
    }

    /// <summary>Reads a piece from a file.</summary>
    /// <param name="path">Path of the file.</param>
    /// <param name="data">Materials, steels and choices to read it with.</param>
    public static PieceReadResult ReadFrom(string path, ReckoningData data)
    {
        var bytes = FileReading.Bytes(path, MaxBytes, out var fault);
        return bytes is null ? Refused(path, fault!) : Read(bytes, path, data);
    }

    /// <summary>Writes a piece as the bytes of a file, in the newest format: only what the piece holds, each field once, in the order of the
    /// schema. Reading the bytes gives an equal piece.</summary>
    /// <param name="piece">The piece.</param>
    public static byte[] Write(Piece piece) => PieceWriter.Write(piece);

    /// <summary>Writes a piece to a file safely (<see cref="SafeFile"/>); null when it is written, otherwise what kept it from being.</summary>
    /// <param name="path">Path of the file.</param>
    /// <param name="piece">The piece.</param>
    public static Fault? WriteTo(string path, Piece piece) => SafeFile.Write(path, Write(piece));

    internal static Fault TooLarge() => Fault.Of(FaultCodes.FileTooLarge, "", "", ("max", "8 MB"));

    private static PieceReadResult Refused(string? fileName, Fault fault) => new(null, [fault]) { FileName = fileName };
}
