using System.Text;
using Coilwright.Core.Faults;

namespace Coilwright.Storage.Json;

/// <summary>Guesses which common slip broke a JSON text at a place, so that the message can name it.</summary>
internal static class JsonSlip
{
    /// <summary>The likeliest slip, one of <see cref="FaultDetails"/>.</summary>
    public static string Kind(ReadOnlySpan<byte> bytes, int offset)
    {
        if (offset >= bytes.Length) return FaultDetails.Unexpected;
        var here = bytes[offset];
        if (here is (byte)'}' or (byte)']' && LastBefore(bytes, offset) == ',') return FaultDetails.TrailingComma;
        if (here == '/' && offset + 1 < bytes.Length && bytes[offset + 1] is (byte)'/' or (byte)'*' || here == '#') return FaultDetails.Comment;
        if (here is (byte)'\n' or (byte)'\r' or (byte)'\t') return FaultDetails.TextNotClosed;
        return offset > 0 && bytes[offset - 1] == '\\' || here == '\\' ? FaultDetails.Escape : FaultDetails.Unexpected;
    }

    /// <summary>The word or single sign at a place, at most 40 characters, and where it starts.</summary>
    public static string WordAt(ReadOnlySpan<byte> bytes, int offset, out int start)
    {
        start = offset;
        while (start > 0 && offset - start < 40 && OfWord(bytes[start - 1])) start--;
        if (offset < bytes.Length && !OfWord(bytes[offset])) start = offset;
        var end = start;
        while (end < bytes.Length && end - start < 40 && OfWord(bytes[end])) end++;
        if (end == start && end < bytes.Length)
        {
            Rune.DecodeFromUtf8(bytes[end..], out var sign, out var read);
            return Rune.IsControl(sign) ? "" : Encoding.UTF8.GetString(bytes.Slice(end, read));
        }
        return Encoding.UTF8.GetString(bytes[start..end]);
    }

    private static bool OfWord(byte b) => char.IsAsciiLetterOrDigit((char)b) || b is (byte)'-' or (byte)'+' or (byte)'.' or (byte)'_';

    private static int LastBefore(ReadOnlySpan<byte> bytes, int offset)
    {
        while (--offset >= 0)
            if (bytes[offset] is not ((byte)' ' or (byte)'\t' or (byte)'\r' or (byte)'\n'))
                return bytes[offset];
        return -1;
    }
}
