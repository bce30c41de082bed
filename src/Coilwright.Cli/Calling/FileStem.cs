namespace Coilwright.Cli.Calling;

/// <summary>What files that are made of a piece are named after.</summary>
internal static class FileStem
{
    /// <summary>The piece's own name: my-bracelet of my-bracelet.piece.json. A pipe has none.</summary>
    public static string Of(string path)
    {
        var name = Path.GetFileName(path);
        foreach (var ending in new[] { ".json", ".piece" })
            if (name.EndsWith(ending, StringComparison.OrdinalIgnoreCase)) name = name[..^ending.Length];
        return name.Length == 0 || path.StartsWith("/dev/", StringComparison.Ordinal) ? "piece" : name;
    }
}
