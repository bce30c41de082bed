using CsCheck;

namespace Coilwright.Storage.Tests;

/// <summary>Whatever happens to a file, reading it is an answer: a piece or faults, never an exception.</summary>
public class PieceFileFuzzTests
{
    private static readonly byte[][] Sources = [.. TestData.ExampleFiles.Select(File.ReadAllBytes),
        .. FilesWithEveryField.All.Select(System.Text.Encoding.UTF8.GetBytes)];

    [Fact]
    public void Changed_bytes_give_a_piece_or_faults() =>
        Gen.Select(Pick.From(Sources), Gen.Select(Gen.Int[0, 100_000], Gen.Byte).Array[1, 4]).Sample((source, changes) =>
        {
            var bytes = source.ToArray();
            foreach (var (at, to) in changes) bytes[at % bytes.Length] = to;
            AnswersSoundly(bytes);
        }, iter: 5000);

    [Fact]
    public void Signs_of_JSON_put_in_anywhere_give_a_piece_or_faults() =>
        Gen.Select(Pick.From(Sources), Gen.Int[0, 100_000], Pick.From("{", "}", "[", "]", "\"", ",", ":", "\\", "\\u12", "1e999", "null", "-", "NaN",
            "\"id\":", "//", "\uFEFF", "\0", "é", "9999999999999999999999")).Sample((source, at, sign) =>
        {
            at %= source.Length;
            AnswersSoundly([.. source[..at], .. System.Text.Encoding.UTF8.GetBytes(sign), .. source[at..]]);
        }, iter: 5000);

    [Fact]
    public void Files_cut_off_or_with_a_piece_missing_give_a_piece_or_faults() =>
        Gen.Select(Pick.From(Sources), Gen.Int[0, 100_000], Gen.Int[0, 300], Gen.Bool).Sample((source, at, length, toTheEnd) =>
        {
            at %= source.Length;
            var end = toTheEnd ? source.Length : Math.Min(at + length, source.Length);
            AnswersSoundly([.. source[..at], .. source[end..]]);
        }, iter: 5000);

    [Fact]
    public void Any_bytes_at_all_give_faults() => Gen.Byte.Array[0, 200].Sample(AnswersSoundly, iter: 2000);

    private static void AnswersSoundly(byte[] bytes)
    {
        var read = PieceFile.Read(bytes, null, TestData.Data);
        Assert.Equal(read.Piece is null, read.Faults.Length > 0);
        var lines = bytes.Count(b => b == '\n') + 1;
        Assert.All(read.Faults, f =>
        {
            Assert.NotEmpty(f.Code);
            Assert.InRange(f.Line, 1, lines);
            Assert.InRange(f.Column, 1, bytes.Length + 1);
        });
    }
}
