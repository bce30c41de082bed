using Coilwright.Core.Readings;

namespace Coilwright.Wording;

/// <summary>Beads as a maker reads them in a sentence: the name and the key letter that ties it to the table and the bag.</summary>
public sealed class BeadNames(Reckoned reckoned)
{
    private readonly Dictionary<string, string> _letters =
        reckoned.Counts.ToDictionary(k => k.Bead.Id, k => k.Letter, StringComparer.Ordinal);

    private readonly Dictionary<string, string> _names =
        reckoned.Counts.ToDictionary(k => k.Bead.Id, k => $"{k.Bead.Name} ({k.Letter})", StringComparer.Ordinal);

    /// <summary>The key letter of a bead's id.</summary>
    public string LetterOf(string id) => _letters[id];

    /// <summary>The name for people of a bead's id; a group's own name stays as it is.</summary>
    public string Of(string id) => _names.GetValueOrDefault(id, id);
}
