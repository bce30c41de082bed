using System.Collections.Immutable;
using Coilwright.Documents.BeadFigures;

namespace Coilwright.Web.Components.Bench;

/// <summary>Names by which a page knows the strung beads from one edit to the next, so that those before and behind an edit keep theirs.</summary>
/// <remarks>Between what an order and the one after it begin and end with alike lies what was edited: its beads are new. Which beads of a kind are the same
/// ones is nothing that can be seen, so nothing but how much is drawn anew hangs on it.</remarks>
public sealed class LastingBeads
{
    private ImmutableArray<int> _kinds = [];
    private int _made;

    /// <summary>The names, in the order of the beads; each stands once.</summary>
    public ImmutableArray<int> Names { get; private set; } = [];

    /// <summary>Which drawing each bead has where its kind has several: it keeps that too.</summary>
    public ImmutableArray<int> Looks { get; private set; } = [];

    /// <summary>Goes on to another order.</summary>
    /// <param name="kinds">The kind of each bead.</param>
    public void GoOn(ImmutableArray<int> kinds)
    {
        int least = Math.Min(kinds.Length, _kinds.Length), before = 0, behind = 0;
        while (before < least && kinds[before] == _kinds[before]) before++;
        while (behind < least - before && kinds[^(behind + 1)] == _kinds[^(behind + 1)]) behind++;
        var end = kinds.Length - behind;
        var looks = NthOfKind.Of(kinds).ToBuilder();
        for (var i = 0; i < before; i++) looks[i] = Looks[i];
        for (var i = 1; i <= behind; i++) looks[^i] = Looks[^i];
        // The one behind a new bead has the look that would be its turn.
        if (behind > 0 && end > before && kinds[end - 1] == kinds[end] && looks[end - 1] == looks[end]) looks[end - 1]++;
        Looks = looks.DrainToImmutable();
        ImmutableArray<int> names = [.. Enumerable.Range(_made, end - before)];
        Names = [.. Names[..before], .. names, .. Names[^behind..]];
        (_kinds, _made) = (kinds, _made + names.Length);
    }
}
