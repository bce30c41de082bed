using System.Collections.Immutable;
using Coilwright.Core.Editing;
using Coilwright.Core.Readings;

namespace Coilwright.Core.Cures;

/// <summary>One edit that ends a notice, found out by reckoning the piece with it: a proposal, not done until she tries it.</summary>
/// <remarks>Is no promise that the piece is then as she wants it: what comes in the notice's place is in <see cref="Brings"/>. The sentence is made by
/// Coilwright.Wording.</remarks>
/// <param name="Code">Stable code from <see cref="CureCodes"/>.</param>
/// <param name="Edit">The edit.</param>
/// <param name="BeadId">The bead kind that it strings, takes off or changes; null where it does none of these.</param>
/// <param name="Numbers">Values by name, with their unit in the name. Places of beads are counted from 1.</param>
/// <param name="Words">Words by name: <c>end</c>.</param>
public sealed record Cure(string Code, PieceEdit Edit, string? BeadId, ImmutableSortedDictionary<string, double> Numbers,
    ImmutableSortedDictionary<string, string> Words)
{
    /// <summary>Warnings that the piece has with it and had not before; never one that stops it.</summary>
    public ImmutableArray<Notice> Brings { get; init; } = [];

    internal static Cure Of(string code, PieceEdit edit, string? bead = null, (string, double)[]? numbers = null, (string, string)[]? words = null) =>
        new(code, edit, bead, (numbers ?? []).ToImmutableSortedDictionary(n => n.Item1, n => n.Item2, StringComparer.Ordinal),
            (words ?? []).ToImmutableSortedDictionary(w => w.Item1, w => w.Item2, StringComparer.Ordinal));
}

/// <summary>The codes of <see cref="Cure"/>. Each has a sentence per language in Coilwright.Wording.</summary>
public static class CureCodes
{
    /// <summary>Another wire is cut: loops, cutMm.</summary>
    public const string CutAnew = "cut-anew";

    /// <summary>A larger coil: insideMm, loopMm.</summary>
    public const string LargerCoil = "larger-coil";

    /// <summary>A smaller coil: insideMm, loopMm.</summary>
    public const string SmallerCoil = "smaller-coil";

    /// <summary>Thinner wire, the first gauge that does: wireMm; words gauge.</summary>
    public const string ThinnerWire = "thinner-wire";

    /// <summary>A bead's holes are reamed: boreMm.</summary>
    public const string Ream = "ream";

    /// <summary>A larger end loop: insideMm; words end.</summary>
    public const string LargerEndLoop = "larger-end-loop";

    /// <summary>A bead that holds is moved to the end: number; words end.</summary>
    public const string MoveToEnd = "move-to-end";

    /// <summary>Beads more at a place: count, after.</summary>
    public const string StringMore = "string-more";

    /// <summary>The same wherever the same words of the order string it: count, after.</summary>
    public const string StringMoreEverywhere = "string-more-everywhere";

    /// <summary>A bead less: number.</summary>
    public const string TakeOff = "take-off";

    /// <summary>The same wherever the same words of the order string it: number.</summary>
    public const string TakeOffEverywhere = "take-off-everywhere";

    /// <summary>A row of beads less: first, last.</summary>
    public const string TakeOffRow = "take-off-row";

    /// <summary>A row of beads is strung several times in all: first, last, times.</summary>
    public const string StringAgain = "string-again";

    /// <summary>The piece is turned round the wrist until its focal lies on top.</summary>
    public const string FocalOnTop = "focal-on-top";
}
