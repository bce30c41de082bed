using Coilwright.Core.Tray;

namespace Coilwright.Wording;

/// <summary>The words of every language by which the tray understands lists and questions: a German list is read at an English bench, and a bead is found by either word.</summary>
public static class TrayVocabulary
{
    /// <summary>The words; those of languages that come first win where two mean different things by one.</summary>
    public static TrayWords All { get; } = new(
        Languages.All.SelectMany(l => l.Bench.Tray.Columns.Select(c => (c.Key, c.Value))
            .Concat(l.Bench.Tray.OtherHeads.SelectMany(h => Apart(h.Value).Select(word => (h.Key, word))))),
        Languages.All.SelectMany(l => l.Terms.Shapes.Select(s => (s.Key, s.Value)).Concat(l.Bench.Tray.OtherShapes.SelectMany(s => Apart(s.Value).Select(word => (s.Key, word))))),
        Languages.All.SelectMany(l => l.Terms.Roles.Select(r => (TrayColumns.RoleWord(r.Key), r.Value))),
        Languages.All.SelectMany(l => l.Bench.Tray.Families.Select(f => (f.Key, f.Value))));

    private static string[] Apart(string words) => words.Split('|', StringSplitOptions.TrimEntries);
}
