using System.Globalization;
using Coilwright.Core.Editing;

namespace Coilwright.Wording;

/// <summary>The steps of a piece's history in words.</summary>
/// <remarks>Chooses a sentence by the step's code and fills it with the edit's particulars where the edit is known. Names of beads are those that the piece
/// has now; a bead that it has no more is told by its id.</remarks>
/// <param name="beadNames">Names for people by bead id.</param>
/// <param name="language">The language.</param>
public sealed class StepSentences(IReadOnlyDictionary<string, string> beadNames, Language language)
{
    // More places than this are a stretch of numbers that nobody reads.
    private const int PlacesShown = 6;

    private readonly HistoryWords _words = language.Bench.History;

    /// <summary>What was done.</summary>
    /// <param name="code">The step's code.</param>
    /// <param name="edit">The edit; null where the step was none, or is not known.</param>
    /// <param name="state">The earliest state with the contents that the step led to.</param>
    public string Of(string code, PieceEdit? edit, long state)
    {
        if (edit is not null && _words.DoneTo.TryGetValue(code, out var told)) return language.Sentence(told, Particulars(edit));
        return language.Sentence(_words.Done.GetValueOrDefault(code, _words.DoneOtherwise), ("state", state));
    }

    private (string, object?)[] Particulars(PieceEdit edit) => edit switch
    {
        InsertBeads e => [("what", What(e.What)), ("at", e.At + 1)],
        RemoveBeads e => [("places", Places(e.Where))],
        MoveBeads e => [("places", Places(e.Where))],
        ReplaceBeads e => [("places", Places(e.Where)), ("with", NameOf(e.With))],
        ReplaceEverywhere e => [("bead", NameOf(e.Bead)), ("with", NameOf(e.With))],
        DuplicateBeads e => [("places", Places(e.Where))],
        RepeatBeads e => [("places", Places(e.Where)), ("times", e.Times)],
        MirrorBeads e => [("places", Places(e.Where))],
        PutBetween e => [("places", Places(e.Where)), ("what", What(e.What))],
        NameGroup e => [("places", Places(e.Where)), ("name", e.Name)],
        Ungroup e => [("places", Places(e.Where))],
        AddBead e => [("bead", NameOf(e.Bead.Id))],
        ChangeBead e => [("bead", NameOf(e.Bead.Id))],
        RemoveBead e => [("bead", NameOf(e.Id))],
        SetTitle e => [("name", e.Title)],
        SetWearer e => [("mm", e.Wearer.WristMm)],
        AddMeasuredRow e => [("places", Stretch(e.Row.FirstBead, e.Row.LastBead)), ("mm", e.Row.TotalMm)],
        _ => [],
    };

    private string NameOf(string id) => beadNames.GetValueOrDefault(id, id);

    // Neighbours of one kind are counted, as on the bench.
    private string What(IReadOnlyList<string> ids)
    {
        var runs = new List<string>();
        for (var i = 0; i < ids.Count;)
        {
            var count = 1;
            while (i + count < ids.Count && ids[i + count] == ids[i]) count++;
            runs.Add(count == 1 ? NameOf(ids[i]) : language.Fill(_words.SeveralOf, ("count", count), ("name", NameOf(ids[i]))));
            i += count;
        }
        return string.Join(", ", runs);
    }

    private string Places(BeadPlaces places) => places switch
    {
        BeadPlaces.Row row => Stretch(row.First + 1, row.First + row.Count),
        BeadPlaces.Each { Beads.Count: 1 } each => Stretch(each.Beads[0] + 1, each.Beads[0] + 1),
        BeadPlaces.Each each => language.Fill(_words.SeveralBeads, ("beads", List([.. each.Beads]))),
        _ => "",
    };

    private string Stretch(int first, int last) =>
        first == last ? language.Fill(_words.OneBead, ("first", first)) : language.Fill(_words.RowOfBeads, ("first", first), ("last", last));

    private string List(IReadOnlyList<int> beads)
    {
        var shown = string.Join(", ", beads.Take(PlacesShown).Select(b => (b + 1).ToString(CultureInfo.InvariantCulture)));
        return beads.Count <= PlacesShown ? shown : language.Fill(language.Terms.AndMore, ("list", shown), ("more", beads.Count - PlacesShown));
    }
}
