using System.Collections.Immutable;
using Coilwright.Core.Beads;
using Coilwright.Core.Readings;
using Coilwright.Core.Substitutes;

namespace Coilwright.Wording;

/// <summary>What was found in place of a bead.</summary>
/// <param name="Now">The piece as it is.</param>
/// <param name="Kind">The bead to be replaced, by index in the piece's list.</param>
/// <param name="All">What may stand in for it, the best first.</param>
public sealed record SubstitutesFound(Reckoned Now, int Kind, ImmutableArray<Substitute> All)
{
    /// <summary>The bead to be replaced.</summary>
    public Bead Bead => Now.Piece.Beads[Kind];
}

/// <summary>Beads that may stand in for another, in a maker's words.</summary>
public sealed class SubstituteSentences(SubstitutesFound found, Language language)
{
    private readonly SubstituteWords _words = language.Substitutes;

    /// <summary>What is looked for.</summary>
    public string For() => language.Sentence(_words.For, ("bead", found.Bead.Name), ("need", found.Now.Piece.Order.Kinds.Count(k => k == found.Kind)), ("title", found.Now.Piece.Title));

    /// <summary>Nothing would do; empty when something would.</summary>
    public IEnumerable<string> None()
    {
        if (found.All.IsEmpty) yield return _words.Nothing;
        else if (!found.All.Any(s => s is { IsEnough: true, BringsStop: false })) yield return _words.NoneWouldDo;
    }

    /// <summary>A bead and how near it comes.</summary>
    public string Heading(Substitute substitute) => language.Fill(_words.Heading, ("bead", substitute.Bead.Name), ("near", Near(substitute.Likeness.Total)));

    /// <summary>What stands against it.</summary>
    public IEnumerable<string> Against(Substitute substitute)
    {
        if (substitute is { IsEnough: false, Have: { } have }) yield return language.Sentence(_words.TooFew, ("have", have), ("need", substitute.Need));
        if (substitute.BringsStop) yield return _words.BringsStop;
    }

    /// <summary>In what the bead itself is another, the furthest first.</summary>
    public string Differs(Substitute substitute)
    {
        var d = substitute.Likeness;
        // What is a fifth of a hesitation is not worth a word.
        string[] parts = [.. new[] { (d.Length, _words.Length), (d.Across, _words.Across), (d.Bore, _words.Bore), (d.Colour, _words.Colour), (d.Shape, _words.Shape), (d.Material, _words.Material) }
            .Where(p => p.Item1 >= 0.2).OrderByDescending(p => p.Item1).Select(p => p.Item2)];
        return parts.Length == 0 ? _words.DiffersHardly : language.Sentence(_words.DiffersIn, ("parts", string.Join(", ", parts)));
    }

    /// <summary>What the piece is with it that it was not before.</summary>
    public IEnumerable<ReadingDifference> Piece(Substitute substitute) => ReadingDifferences.Of(found.Now, substitute.With, language).Where(d => d.What != BeadsOf(substitute.Bead) && d.What != BeadsOf(found.Bead));

    private string BeadsOf(Bead bead) => language.Fill(language.Bench.Compare.Beads, ("name", bead.Name));

    // In the steps at which a maker hesitates: within one, two, or beyond.
    private string Near(double distance) => distance <= 1 ? _words.VeryNear : distance <= 2 ? _words.Near : distance <= 4 ? _words.SomeWayOff : _words.FarOff;
}
