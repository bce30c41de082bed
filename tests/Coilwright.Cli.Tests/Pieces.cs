namespace Coilwright.Cli.Tests;

/// <summary>Small pieces that tests make by changing one thing.</summary>
internal static class Pieces
{
    /// <summary>A sound piece: rounds and spacers, two turns.</summary>
    public const string Sound = """
        {
          "format": "coilwright.piece/1",
          "title": "Two turns",
          "beads": [
            { "id": "round", "name": "Green round", "shape": "round", "lengthMm": 6, "boreMm": 1.0, "colours": ["#3f8f83"], "material": "soda-lime-glass", "role": "main" },
            { "id": "spacer", "name": "Brass spacer", "shape": "rondelle", "lengthMm": 1.5, "widthMm": 4, "boreMm": 1.2, "material": "brass", "role": "spacer" }
          ],
          "stringingMaterial": { "kind": "memoryWire", "wireMm": 0.64, "insideMm": 55 },
          "ends": { "start": { "finish": "turnedLoop", "insideMm": 3 }, "finish": { "finish": "turnedLoop", "insideMm": 3 } },
          "wearer": { "wristMm": 152 },
          "order": { "text": ["18 (3 round, spacer)"] }
        }
        """;

    /// <summary>The same with so many beads that reckoning takes its time.</summary>
    public static string Long(int repeats) => Sound.Replace("18 (3 round", $"{repeats} (3 round", StringComparison.Ordinal);

    /// <summary>The sound piece with one thing changed, which must be there to change.</summary>
    public static string With(string old, string changed)
    {
        Assert.Contains(old, Sound, StringComparison.Ordinal);
        return Sound.Replace(old, changed, StringComparison.Ordinal);
    }
}
