using System.Collections.Immutable;
using Coilwright.Core.Beads;
using Coilwright.Core.Pieces;
using Coilwright.Core.Readings;

namespace Coilwright.Core.Substitutes;

/// <summary>A bead that might be strung in place of another.</summary>
/// <param name="Bead">The bead.</param>
/// <param name="Have">How many of it there are; null when nobody counted.</param>
public sealed record Candidate(Bead Bead, int? Have = null);

/// <summary>A bead in place of another, and what the piece then is.</summary>
/// <param name="Bead">The bead that stands in.</param>
/// <param name="Have">How many of it there are; null when nobody counted.</param>
/// <param name="Need">How many the piece needs.</param>
/// <param name="Likeness">How near it comes in itself.</param>
/// <param name="With">The piece with it, reckoned again.</param>
public sealed record Substitute(Bead Bead, int? Have, int Need, BeadDistance Likeness, Reckoned With)
{
    /// <summary>Whether there are enough of it, for all that is known.</summary>
    public bool IsEnough => !(Have < Need);

    /// <summary>Whether a notice says stop that does not say so of the piece as it is.</summary>
    public bool BringsStop { get; init; }
}

/// <summary>Finds what may stand in for a bead, and reckons the piece again with each.</summary>
public static class Substituting
{
    /// <summary>Most beads that are tried: each is a whole reckoning.</summary>
    public const int MostTried = 50;

    /// <summary>Looks for them.</summary>
    /// <param name="piece">The piece.</param>
    /// <param name="kind">Which of its beads is to be replaced wherever it is strung, by index.</param>
    /// <param name="candidates">What there is. A bead that the piece strings already, by its name, has its own place in it and is left out.</param>
    /// <param name="data">Materials, steels and our choices.</param>
    /// <param name="most">How many are given back at most, 1 to <see cref="MostTried"/>.</param>
    /// <param name="cancel">Stops it.</param>
    /// <returns>The nearest by <see cref="BeadDistance"/>: first those that there are enough of and that bring no stop, then the others, each from near to far.</returns>
    public static ImmutableArray<Substitute> For(Piece piece, int kind, IEnumerable<Candidate> candidates, ReckoningData data, int most = 10, CancellationToken cancel = default)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(most, 1);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(most, MostTried);
        var old = piece.Beads[kind];
        var strung = piece.Order.Kinds.Select(k => piece.Beads[k].Id).ToHashSet(StringComparer.Ordinal);
        var need = piece.Order.Kinds.Count(k => k == kind);
        var now = Reckoning.Of(piece, data, null, cancel);
        var stops = StopsOf(now);
        return [.. candidates.Where(c => !strung.Contains(c.Bead.Id))
            .Select(c => (Candidate: c, Distance: BeadDistance.Of(old, c.Bead)))
            .OrderBy(c => c.Candidate.Have < need).ThenBy(c => c.Distance.Total).ThenBy(c => c.Candidate.Bead.Id, StringComparer.Ordinal)
            .Take(most)
            .Select(c =>
            {
                var with = Reckoning.Of(With(piece, kind, c.Candidate.Bead), data, null, cancel);
                return new Substitute(c.Candidate.Bead, c.Candidate.Have, need, c.Distance, with) { BringsStop = StopsOf(with).Except(stops).Any() };
            })
            .OrderBy(s => !s.IsEnough).ThenBy(s => s.BringsStop).ThenBy(s => s.Likeness.Total).ThenBy(s => s.Bead.Id, StringComparer.Ordinal)];
    }

    /// <summary>The piece with another bead wherever one of its kinds is strung. Rows that were measured with the old one, and what it taught, no longer count.</summary>
    /// <param name="piece">The piece.</param>
    /// <param name="kind">The kind, by index.</param>
    /// <param name="bead">The bead in its place.</param>
    public static Piece With(Piece piece, int kind, Bead bead)
    {
        var old = piece.Beads[kind].Description;
        // It stands in for what the other was in the design. A bead with a seat can be nothing but a focal: it then stays one.
        if (Bead.TryMake(bead.Description with { Role = piece.Beads[kind].Role, Shows = old.Shows }, out var standing, out _)) bead = standing!;
        return piece with { Beads = piece.Beads.SetItem(kind, bead), MeasuredRows = [] };
    }

    private static IEnumerable<string> StopsOf(Reckoned reckoned) => reckoned.Notices.Where(n => n.Severity == Severity.Stop).Select(n => n.Code);
}
