using Coilwright.Core.Readings;
using Coilwright.Core.StringingMaterials.MemoryWire;

namespace Coilwright.Core.Cutting;

/// <summary>Lengths of wire that are to be cut alike: one design, so many times.</summary>
/// <param name="Name">Name of the piece.</param>
/// <param name="Wire">The wire that it is made on.</param>
/// <param name="CutMm">Wire to cut for one, mm, above 0: the piece's own reckoning.</param>
/// <param name="Count">How many are made, 1 or more.</param>
public sealed record WireDemand(string Name, CoilWire Wire, double CutMm, int Count)
{
    /// <summary>The wire of so many of a piece.</summary>
    /// <param name="reckoned">Its readings, which say how much is cut for one.</param>
    /// <param name="count">How many are made, 1 or more.</param>
    /// <param name="name">What it is called in lists; null for its title.</param>
    public static WireDemand Of(Reckoned reckoned, int count, string? name = null) => new(name ?? reckoned.Piece.Title, reckoned.Piece.Wire, reckoned.Wire.CutMm, count);

    /// <summary>The same as it is cut: whole millimetres, never too little.</summary>
    public int WholeMm => (int)Math.Ceiling(CutMm - HairMm);

    // A hair is taken off first, so that a whole number of millimetres stays what it is.
    private const double HairMm = 1e-6;
}

/// <summary>Wire at hand or to be bought, in coils alike: a pack of loops, a coil by weight, a kept offcut.</summary>
/// <param name="Name">What the maker calls it.</param>
/// <param name="Wire">Which wire it is.</param>
/// <param name="LengthMm">Wire in one, mm, above 0.</param>
/// <param name="Count">How many there are, 0 or more; null for as many as it takes.</param>
/// <param name="Price">What a new one costs, in one currency for all; null when it is not told.</param>
/// <param name="IsOffcut">Whether it was kept from before: paid for already, and used before a new one is begun.</param>
public sealed record WireLot(string Name, CoilWire Wire, double LengthMm, int? Count, decimal? Price, bool IsOffcut)
{
    /// <summary>The length in whole millimetres, never too much.</summary>
    public int WholeMm => (int)Math.Floor(LengthMm + HairMm);

    /// <summary>The length in loops of the coil at rest.</summary>
    public double Loops => LengthMm / Wire.LoopMm;

    private const double HairMm = 1e-6;

    /// <summary>Wire in a pack of loops, joined in one coil, mm.</summary>
    public static double LengthOfLoopsMm(CoilWire wire, double loops) => loops * wire.LoopMm;

    /// <summary>Wire in a coil that was weighed, mm: mass over density and cross-section; null when the steel, and so the density, is unknown.</summary>
    /// <remarks>Goes with the square of the thickness: 0.01 mm more on wire of 0.64 mm is 3 % less length. Measure the wire before a coil is planned by weight.</remarks>
    public static double? LengthOfMassMm(CoilWire wire, double massG) => massG / wire.LoopMassG * wire.LoopMm;
}

/// <summary>What holds for every cut.</summary>
/// <param name="LossMm">Wire that one cut takes away, mm, 0 or more; taken up to the next whole millimetre. Shears take none, a saw its blade.</param>
/// <param name="KeepFromMm">The shortest offcut that is kept, mm; null for the usual, so many loops of its own coil.</param>
public sealed record CuttingRules(double LossMm = 0, double? KeepFromMm = null)
{
    /// <summary>Lengths that are planned at once at most: more than a studio cuts in a year.</summary>
    public const int MostPieces = 5_000;

    /// <summary>The longest coil, mm: a pound of thin wire is less.</summary>
    public const double LongestMm = 250_000;
}
