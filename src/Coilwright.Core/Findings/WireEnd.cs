namespace Coilwright.Core.Findings;

/// <summary>How an end of the wire is finished.</summary>
public enum EndFinish
{
    /// <summary>Turned into a small loop with round-nose pliers.</summary>
    TurnedLoop,

    /// <summary>Glued into a cap or a half-drilled bead.</summary>
    GluedCap,
}

/// <summary>One end of the wire: its finish and the wire it uses.</summary>
/// <remarks>The finish lies beyond the last bead and is no part of the beaded length. Millimetres.</remarks>
/// <param name="Finish">The finish.</param>
/// <param name="InsideMm">Inside diameter of a turned loop, mm (D_e); for a cap the depth of its hole, mm.</param>
public sealed record WireEnd(EndFinish Finish, double InsideMm)
{
    /// <summary>Wire that a practice bend with the maker's own pliers used, mm; null until she made one. Overrules the formula.</summary>
    public double? MeasuredMm { get; init; }

    /// <summary>Wire the finish uses beyond the last bead, mm: the practice bend's, else pi (D_e + d) for a turned loop and the depth for a cap.</summary>
    /// <param name="wireMm">Thickness of the wire, mm.</param>
    public double WireUsedMm(double wireMm) => MeasuredMm ?? (Finish == EndFinish.TurnedLoop ? Math.PI * (InsideMm + wireMm) : InsideMm);

    /// <summary>Outside diameter of a turned loop, mm: what holds the end bead. For a cap, null: its own size is the bead's business.</summary>
    /// <param name="wireMm">Thickness of the wire, mm.</param>
    public double? OutsideMm(double wireMm) => Finish == EndFinish.TurnedLoop ? InsideMm + 2 * wireMm : null;
}

/// <summary>Both ends of the piece and what is cut beyond them.</summary>
/// <param name="Start">The end strung first.</param>
/// <param name="Finish">The end strung last.</param>
/// <param name="GripMm">Wire beyond each finish for the pliers to hold, trimmed afterwards, mm, 0 or more.</param>
/// <param name="SpareMm">Wire cut to spare over the whole, mm, 0 or more.</param>
public sealed record WireEnds(WireEnd Start, WireEnd Finish, double GripMm, double SpareMm)
{
    /// <summary>How far the ends should lie over each other when worn, mm; 0 ends meet; null: the maker does not say.</summary>
    public double? OverlapMm { get; init; }
}
