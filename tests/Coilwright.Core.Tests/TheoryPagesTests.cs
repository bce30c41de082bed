using System.Text.RegularExpressions;

namespace Coilwright.Core.Tests;

/// <summary>The pages of theory point at what is there: a file or a test that was renamed takes its page with it.</summary>
public partial class TheoryPagesTests
{
    private static readonly string Root = FindRoot();

    [GeneratedRegex("`((?:src|data|docs)/[^`* ]+|tests/[^`* ]+\\.cs)`")]
    private static partial Regex Paths();

    // A claim in words with underscores; three dots stand for the rest of it.
    [GeneratedRegex("`([A-Z][A-Za-z0-9]*_[A-Za-z0-9_]*)(\\.\\.\\.)?")]
    private static partial Regex Claims();

    public static TheoryData<string> Files => new(Directory.GetFiles(Path.Combine(Root, "docs", "theory"), "*.md")
        .Concat(Directory.GetFiles(Path.Combine(Root, "docs", "how-to"), "*.md")).Select(f => Path.GetRelativePath(Root, f)));

    [Theory]
    [MemberData(nameof(Files))]
    public void Files_and_tests_that_a_page_names_are_there(string page)
    {
        var text = File.ReadAllText(Path.Combine(Root, page));
        foreach (Match match in Paths().Matches(text))
            Assert.True(Path.Exists(Path.Combine(Root, match.Groups[1].Value)), $"{page} names {match.Groups[1].Value}");
        var tests = string.Join("\n", Directory.GetFiles(Path.Combine(Root, "tests"), "*.cs", SearchOption.AllDirectories)
            .Where(f => !f.Contains($"{Path.DirectorySeparatorChar}obj{Path.DirectorySeparatorChar}", StringComparison.Ordinal)).Select(File.ReadAllText));
        foreach (Match match in Claims().Matches(text))
            Assert.True(tests.Contains(" " + match.Groups[1].Value + (match.Groups[2].Success ? "" : "("), StringComparison.Ordinal), $"{page} names {match.Value}");
    }

    private static string FindRoot()
    {
        var folder = new DirectoryInfo(AppContext.BaseDirectory);
        while (!File.Exists(Path.Combine(folder!.FullName, "Coilwright.slnx"))) folder = folder.Parent;
        return folder.FullName;
    }
}
