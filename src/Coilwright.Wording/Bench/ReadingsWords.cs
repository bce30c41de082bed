using System.Collections.Frozen;
using Coilwright.Core.Alignment;

namespace Coilwright.Wording;

/// <summary>The readings beside the rows.</summary>
public sealed record ReadingsWords
{
    /// <summary>Heading, as read aloud.</summary>
    public required string Heading { get; init; }

    /// <summary>How many beads.</summary>
    public required string Beads { get; init; }

    /// <summary>Wire under the beads.</summary>
    public required string Length { get; init; }

    /// <summary>Turns when worn.</summary>
    public required string Turns { get; init; }

    /// <summary>Whether it fits: the name of the figure.</summary>
    public required string Fit { get; init; }

    /// <summary>It fits.</summary>
    public required string FitYes { get; init; }

    /// <summary>It does not.</summary>
    public required string FitNo { get; init; }

    /// <summary>Where the focal lies: the name of the figure.</summary>
    public required string Focal { get; init; }

    /// <summary>Where: {angleDeg}.</summary>
    public required string FocalAt { get; init; }

    /// <summary>How it lines up: the name of the figure.</summary>
    public required string LiningUp { get; init; }

    /// <summary>How it lines up, in a word or two.</summary>
    public required FrozenDictionary<LiningUpWord, string> LiningUpWords { get; init; }

    /// <summary>What it weighs: the name of the figure.</summary>
    public required string Weight { get; init; }

    /// <summary>Its weight: {grams}.</summary>
    public required string Grams { get; init; }

    /// <summary>Wire to cut: the name of the figure.</summary>
    public required string Cut { get; init; }

    /// <summary>A figure that is not known.</summary>
    public required string NotKnown { get; init; }

    /// <summary>Selects the beads that a notice means.</summary>
    public required string ShowMe { get; init; }

    /// <summary>The beads of the piece: heading.</summary>
    public required string BeadsOfThePiece { get; init; }

    /// <summary>Selects every bead of a kind: {name}.</summary>
    public required string ShowKind { get; init; }

    /// <summary>How many of a kind go in the piece: {count}.</summary>
    public required string Use { get; init; }

    /// <summary>A bead's sizes: {alongMm} along the hole, {acrossMm} across.</summary>
    public required string Sizes { get; init; }

    /// <summary>The cautions: heading.</summary>
    public required string Cautions { get; init; }
}
