using System.Collections.Immutable;
using Coilwright.Core.Beads;
using Coilwright.Core.Readings;

namespace Coilwright.Core.Listings;

/// <summary>Beads of one material in a piece.</summary>
/// <param name="Material">The material; null where it is hers or unknown.</param>
/// <param name="Other">A material that the data does not know, as she wrote it; null otherwise.</param>
/// <param name="Kinds">The kinds of bead, by key letter.</param>
public sealed record ListedMaterial(BeadMaterial? Material, string? Other, ImmutableArray<KindCount> Kinds)
{
    /// <summary>How many beads.</summary>
    public int Count => Kinds.Sum(k => k.Count);

    /// <summary>Whether it is known what they are of.</summary>
    public bool IsKnown => Material is not null || Other is not null;
}

/// <summary>What a buyer is told of a finished piece. Every figure is taken from its readings; none is stored.</summary>
/// <remarks>Made for the wearer's own wrist. Millimetres and grams. What cannot be known is null, never a guess.</remarks>
public sealed record Listing
{
    /// <summary>The readings.</summary>
    public required Reckoned Reckoned { get; init; }

    /// <summary>From end to end along the wire, the outsides of turned loops included, mm. A cap's own length is not known and not in it.</summary>
    public required double LengthMm { get; init; }

    /// <summary>Along the arm with the turns lying together, mm: as many rows as the turns begin, each as wide as the beads are on the mean of the row. About.</summary>
    public required double WidthMm { get; init; }

    /// <summary>The thickest bead, away from the wrist, mm.</summary>
    public required double ThicknessMm { get; init; }

    /// <summary>Round on the inside, off the wrist, mm.</summary>
    public double InsideMm => Reckoned.Fit.InsideRelaxedMm;

    /// <summary>Across on the inside, off the wrist, mm.</summary>
    public double InsideAcrossMm => InsideMm / Math.PI;

    /// <summary>Mass, g; null when it is not known of every part.</summary>
    public double? MassG => Reckoned.Mass.TotalG;

    /// <summary>Beads in all.</summary>
    public int Beads => Reckoned.Piece.Order.Count;

    /// <summary>What the beads are of, most beads first; of as many, in the order of the key letters.</summary>
    public required ImmutableArray<ListedMaterial> Materials { get; init; }

    /// <summary>Finishes and coatings, as she wrote them, each once.</summary>
    public required ImmutableArray<string> Finishes { get; init; }

    /// <summary>Kinds that may go into the small-parts cylinder when they come loose.</summary>
    public required ImmutableArray<KindCount> SmallParts { get; init; }

    /// <summary>Whether rules on metals may concern its beads. They may concern the wire of any piece.</summary>
    public bool HasMetalBeads => Materials.Any(m => m.Material is { IsMetal: true });

    /// <summary>Whether what it is made of is known of every bead.</summary>
    public bool MaterialsAreKnown => Materials.All(m => m.IsKnown);

    /// <summary>Whether its report says stop: then it is nothing to sell as it is.</summary>
    public bool SaysStop => !Reckoned.Fit.Fits;

    /// <summary>Lists a piece.</summary>
    /// <param name="reckoned">Its readings on its wearer's own wrist.</param>
    /// <param name="cylinder">The small-parts cylinder.</param>
    public static Listing Of(Reckoned reckoned, SmallPartsCylinder cylinder)
    {
        var (piece, wire) = (reckoned.Piece, reckoned.Piece.Wire.WireMm);
        // A hair over a whole number of turns begins no row that anyone sees.
        var rows = Math.Max(1, Math.Ceiling(reckoned.Fit.TurnsWorn - reckoned.Choices.FewerTurnsFrom));
        return new Listing
        {
            Reckoned = reckoned,
            LengthMm = reckoned.Lie.BeadedMm + (piece.Ends.Start.OutsideMm(wire) ?? 0) + (piece.Ends.Finish.OutsideMm(wire) ?? 0),
            WidthMm = rows * reckoned.Worn.PitchMm,
            ThicknessMm = reckoned.Counts.Max(k => k.Bead.ThicknessMm),
            Materials = [.. reckoned.Counts.GroupBy(k => (k.Bead.Description.Material?.Key, k.Bead.Description.OtherMaterial))
                .Select(g => new ListedMaterial(g.First().Bead.Description.Material, g.Key.OtherMaterial, [.. g])).OrderByDescending(m => m.Count)],
            Finishes = [.. reckoned.Counts.Select(k => k.Bead.Description.Coating).OfType<string>().Where(c => c.Length > 0).Distinct(StringComparer.Ordinal)],
            SmallParts = [.. reckoned.Counts.Where(k => cylinder.MayHold(k.Bead))],
        };
    }
}
