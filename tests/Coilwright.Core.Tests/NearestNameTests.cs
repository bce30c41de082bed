using Coilwright.Core.Faults;
using CsCheck;

namespace Coilwright.Core.Tests;

/// <summary>The likeliest name meant.</summary>
public class NearestNameTests
{
    [Theory]
    [InlineData("rond", "round")] // one dropped
    [InlineData("rouund", "round")] // one too many
    [InlineData("roumd", "round")] // one changed
    [InlineData("ruond", "round")] // two neighbours swapped
    [InlineData("rd", null)]
    [InlineData("disk", "disc")]
    [InlineData("turquoise", null)]
    public void Slip_of_the_pen_finds_the_name(string typed, string? expected) => Assert.Equal(expected, NearestName.Of(typed, ["chip", "disc", "round"]));

    [Fact]
    public void Of_two_as_near_the_first_is_named() => Assert.Equal("bat", NearestName.Of("bap", ["bat", "bag"]));

    // The second way: the whole table of distances of all beginnings, without bounds. Optimal string alignment, from memory.
    private static int Distance(string a, string b)
    {
        var table = new int[a.Length + 1, b.Length + 1];
        for (var i = 0; i <= a.Length; i++)
            for (var j = 0; j <= b.Length; j++)
            {
                if (i == 0 || j == 0)
                {
                    table[i, j] = i + j;
                    continue;
                }
                table[i, j] = Math.Min(table[i - 1, j - 1] + (a[i - 1] == b[j - 1] ? 0 : 1), 1 + Math.Min(table[i - 1, j], table[i, j - 1]));
                if (i > 1 && j > 1 && a[i - 1] == b[j - 2] && a[i - 2] == b[j - 1]) table[i, j] = Math.Min(table[i, j], table[i - 2, j - 2] + 1);
            }
        return table[a.Length, b.Length];
    }

    [Fact]
    public void Nearest_is_the_nearest_by_the_whole_table()
    {
        var word = Gen.Char['a', 'c'].Array[0, 12].Select(letters => new string(letters));
        Gen.Select(word, word.Array[0, 8]).Sample((typed, known) =>
        {
            var expected = known.Select((name, i) => (Name: name, Distance: Distance(typed, name), At: i))
                .Where(n => n.Distance <= Math.Max(1, Math.Max(typed.Length, n.Name.Length) / 3))
                .OrderBy(n => n.Distance).ThenBy(n => n.At).Select(n => n.Name).FirstOrDefault();
            Assert.Equal(expected, NearestName.Of(typed, known));
        }, iter: 20_000);
    }
}
