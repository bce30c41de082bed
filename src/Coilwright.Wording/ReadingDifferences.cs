using Coilwright.Core.Readings;

namespace Coilwright.Wording;

/// <summary>A reading that two versions of a piece do not share.</summary>
/// <param name="What">Which reading.</param>
/// <param name="One">What it says of the one.</param>
/// <param name="Other">What it says of the other.</param>
public sealed record ReadingDifference(string What, string One, string Other);

/// <summary>Two versions of a piece held against each other, in a maker's words.</summary>
/// <remarks>Tells what reads otherwise to her: figures that print the same are the same. Reckons nothing.</remarks>
public static class ReadingDifferences
{
    private const string None = "–";

    /// <summary>The readings that differ, in the order in which she asks for them.</summary>
    public static IEnumerable<ReadingDifference> Of(Reckoned one, Reckoned other, Language language)
    {
        var words = language.Bench.Compare;
        var (here, there) = (Lines(one, language), Lines(other, language));
        // A reading that only one of them has, as a focal, differs too.
        foreach (var what in here.Select(l => l.What).Union(there.Select(l => l.What)))
        {
            var (a, b) = (Says(here, what), Says(there, what));
            if (a != b) yield return new ReadingDifference(what, a, b);
        }
        foreach (var id in one.Counts.Select(c => c.Bead.Id).Union(other.Counts.Select(c => c.Bead.Id)))
        {
            var (a, b) = (one.Counts.FirstOrDefault(c => c.Bead.Id == id), other.Counts.FirstOrDefault(c => c.Bead.Id == id));
            if (a?.Count != b?.Count)
                yield return new ReadingDifference(language.Fill(words.Beads, ("name", (b ?? a)!.Bead.Name)), Count(a), Count(b));
        }

        string Count(KindCount? kind) => language.Fill(words.Count, ("count", kind?.Count ?? 0));
    }

    /// <summary>Whether the same beads are strung, in another order.</summary>
    public static bool IsOrderAlone(Reckoned one, Reckoned other) =>
        one.Counts.Select(c => (c.Bead.Id, c.Count)).Order().SequenceEqual(other.Counts.Select(c => (c.Bead.Id, c.Count)).Order())
        && !Ids(one).SequenceEqual(Ids(other), StringComparer.Ordinal);

    private static IEnumerable<string> Ids(Reckoned reckoned) => reckoned.Piece.Order.Kinds.Select(k => reckoned.Piece.Beads[k].Id);

    private static List<(string What, string Says)> Lines(Reckoned reckoned, Language language)
    {
        var words = language.Bench.Compare;
        return
        [
            (words.Wrist, language.Length(reckoned.WristMm)),
            (words.AllBeads, language.Number(reckoned.Lie.Count, 0)),
            (words.Length, language.Length(reckoned.Lie.BeadedMm)),
            (words.Turns, language.Number(reckoned.Fit.TurnsWorn, 2)),
            .. new ReadingSentences(reckoned, language).Main().Select(r => (r.Heading, r.Says)),
        ];
    }

    private static string Says(List<(string What, string Says)> lines, string what) =>
        lines.Find(l => l.What == what) is { Says: { } says } ? says : None;
}
