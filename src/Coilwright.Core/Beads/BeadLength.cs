namespace Coilwright.Core.Beads;

/// <summary>A bead's length along its hole, as it was come by: from a label, as a range, or measured as a row.</summary>
/// <remarks>Millimetres. Nominal, ranged and measured lengths are different things and stay apart; only the mean and the two spreads are asked of
/// all. The spread of one bead about its lot's mean (<see cref="BeadSdMm"/>) evens out along a row; the uncertainty of the lot's mean
/// (<see cref="LotMeanSdMm"/>) does not. Model: docs/theory/spread.md.</remarks>
public abstract record BeadLength
{
    private BeadLength() { }

    /// <summary>Mean length along the hole, mm, above 0.</summary>
    public abstract double MeanMm { get; }

    /// <summary>Standard deviation of a single bead about its lot's mean, mm, 0 or more.</summary>
    public abstract double BeadSdMm { get; }

    /// <summary>Standard deviation of the lot's mean itself, mm, 0 or more.</summary>
    public abstract double LotMeanSdMm { get; }

    /// <summary>One figure, from a label or a caliper, with the maker's tolerance of a single bead as plus or minus <paramref name="ToleranceMm"/>
    /// (taken as uniform; 0 where none is given, which says "not known", not "exact").</summary>
    public sealed record Nominal(double Mm, double ToleranceMm = 0) : BeadLength
    {
        /// <inheritdoc/>
        public override double MeanMm => Mm;

        /// <inheritdoc/>
        public override double BeadSdMm => ToleranceMm / Math.Sqrt(3);

        /// <inheritdoc/>
        public override double LotMeanSdMm => 0;
    }

    /// <summary>Shortest and longest bead of the lot; uniform between them, so sd = (max - min)/sqrt(12).</summary>
    /// <remarks>Where the lot's mean lies in the range is not known until a row is measured: its own sd is taken as half the bead's, our choice,
    /// so that a measured row can move it.</remarks>
    public sealed record Range(double MinMm, double MaxMm) : BeadLength
    {
        /// <inheritdoc/>
        public override double MeanMm => (MinMm + MaxMm) / 2;

        /// <inheritdoc/>
        public override double BeadSdMm => (MaxMm - MinMm) / Math.Sqrt(12);

        /// <inheritdoc/>
        public override double LotMeanSdMm => BeadSdMm / 2;
    }

    /// <summary>So many beads of the lot measured in a row: mean = total / count. The reading's error is that of the ruler, spread over the row.</summary>
    public sealed record Row(int Count, double TotalMm, double ReadingErrorMm) : BeadLength
    {
        /// <inheritdoc/>
        public override double MeanMm => TotalMm / Count;

        /// <inheritdoc/>
        public override double BeadSdMm => 0;

        /// <inheritdoc/>
        public override double LotMeanSdMm => ReadingErrorMm / Count;
    }
}
