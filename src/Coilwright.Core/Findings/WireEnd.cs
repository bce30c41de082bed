namespace Coilwright.Core.Findings;

/// <summary>How an end of the wire is finished.</summary>
public enum EndFinish
{
    /// <summary>Turned into a small loop with round-nose pliers.</summary>
    TurnedLoop,

    /// <summary>Glued into a cap or a half-drilled bead.</summary>
    GluedCap,

    /// <summary>Turned into a small loop in which a dangle hangs: a charm, or beads on a pin.</summary>
    Dangle,
}

/// <summary>One end of the wire: its finish and the wire it uses.</summary>
/// <remarks>The finish lies beyond the last bead and is no part of the beaded length. Millimetres. A dangle hangs in its loop by a ring or loop of its own: it takes no more of the wire than the
/// loop does, is no part of the stringing order, and is not weighed.</remarks>
/// <param name="Finish">The finish.</param>
/// <param name="InsideMm">Inside diameter of a turned loop, a dangle's among them, mm (D_e); for a cap the depth of its hole, mm.</param>
public sealed record WireEnd(EndFinish Finish, double InsideMm)
{
    /// <summary>Wire that a practice bend with the maker's own pliers used, mm; null until she made one. Overrules the formula.</summary>
    public double? MeasuredMm { get; init; }

    /// <summary>What hangs in the loop, as the maker calls it; null: she does not say, or nothing does.</summary>
    public string? Dangle { get; init; }

    /// <summary>How far the dangle hangs down from the loop, mm; null: she does not say, or there is none.</summary>
    public double? DangleMm { get; init; }

    /// <summary>Whether it is turned into a loop, with or without a dangle in it.</summary>
    public bool IsTurned => Finish != EndFinish.GluedCap;

    /// <summary>The same end finished otherwise: what belongs to a dangle stays with a dangle.</summary>
    public WireEnd As(EndFinish finish) => finish == EndFinish.Dangle ? this with { Finish = finish } : this with { Finish = finish, Dangle = null, DangleMm = null };

    /// <summary>Wire the finish uses beyond the last bead, mm: the practice bend's, else pi (D_e + d) for a turned loop and the depth for a cap.</summary>
    /// <param name="wireMm">Thickness of the wire, mm.</param>
    public double WireUsedMm(double wireMm) => MeasuredMm ?? (IsTurned ? Math.PI * (InsideMm + wireMm) : InsideMm);

    /// <summary>Outside diameter of a turned loop, mm: what holds the end bead. For a cap, null: its own size is the bead's business.</summary>
    /// <param name="wireMm">Thickness of the wire, mm.</param>
    public double? OutsideMm(double wireMm) => IsTurned ? InsideMm + 2 * wireMm : null;
}

/// <summary>Both ends of the piece and what is cut beyond them.</summary>
/// <param name="Start">The end strung first.</param>
/// <param name="Finish">The end strung last.</param>
/// <param name="GripMm">Wire beyond each finish for the pliers to hold, trimmed afterwards, mm, 0 or more.</param>
/// <param name="SpareMm">Wire cut to spare over the whole, mm, 0 or more.</param>
public sealed record WireEnds(WireEnd Start, WireEnd Finish, double GripMm, double SpareMm)
{
    /// <summary>What both ends take besides wire, each with how many: caps by their depth, dangles by what hangs.</summary>
    public IEnumerable<(WireEnd End, int Count)> Bought => new[] { Start, Finish }.Where(e => e.Finish != EndFinish.TurnedLoop)
        .GroupBy(e => (e.Finish, e.Dangle, e.DangleMm, DepthMm: e.IsTurned ? 0 : e.InsideMm)).Select(g => (g.First(), g.Count()));

    /// <summary>How many of both ends are finished in a way.</summary>
    public int Of(EndFinish finish) => (Start.Finish == finish ? 1 : 0) + (Finish.Finish == finish ? 1 : 0);

    /// <summary>How far the ends should lie over each other when worn, mm; 0 ends meet; null: the maker does not say.</summary>
    public double? OverlapMm { get; init; }
}
