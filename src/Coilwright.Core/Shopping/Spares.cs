using System.Collections.Immutable;

namespace Coilwright.Core.Shopping;

/// <summary>How many beads more than are used: for those that break, are badly drilled or roll away.</summary>
/// <param name="Percent">So many in a hundred of all that are used, rounded up, 0 to <see cref="MostPercent"/>.</param>
/// <param name="PerPiece">So many with each piece that uses the bead, 0 or more: those that lie in a kit's bag.</param>
public sealed record SparesRule(decimal Percent, int PerPiece)
{
    /// <summary>Most that may be asked for, in a hundred.</summary>
    public const int MostPercent = 1_000;

    /// <summary>Most that may be asked for with each piece.</summary>
    public const int MostPerPiece = 10_000;

    /// <summary>No spares.</summary>
    public static readonly SparesRule None = new(0, 0);

    /// <summary>Spares of a bead.</summary>
    /// <param name="used">Beads used in all.</param>
    /// <param name="pieces">Pieces that use it.</param>
    public long Of(long used, long pieces) => (long)Math.Ceiling(used * Percent / 100) + pieces * PerPiece;
}

/// <summary>Spares of every bead: a rule for all, and others for some.</summary>
/// <param name="Usual">The rule where no other is given.</param>
/// <param name="ByBead">Rules by the bead's name.</param>
public sealed record Spares(SparesRule Usual, ImmutableSortedDictionary<string, SparesRule> ByBead)
{
    /// <summary>No spares of anything.</summary>
    public static readonly Spares None = new(SparesRule.None, ImmutableSortedDictionary<string, SparesRule>.Empty);

    /// <summary>The rule for a bead.</summary>
    public SparesRule For(string bead) => ByBead.GetValueOrDefault(bead, Usual);
}
