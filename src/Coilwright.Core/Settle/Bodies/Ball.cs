namespace Coilwright.Core.Settle.Bodies;

/// <summary>A ball fixed to a bead: beads are covered by balls, which is what touches.</summary>
/// <param name="Bead">The bead, which is also the edge of the wire that it sits on.</param>
/// <param name="Share">How far along its edge, as a share of it; beyond 0 and 1 where the bead stands over its neighbours.</param>
/// <param name="OutwardMm">From the wire away from the wrist as the bead is turned, mm.</param>
/// <param name="DownMm">From the wire along the arm as the bead is turned, the way along crossed with outwards, mm.</param>
/// <param name="RadiusMm">Its radius, mm, 0 or more.</param>
/// <param name="Angle">The unknown by which the bead is turned about the wire: its roll, or the wire's own for a bead that is bent as the wire is; -1 for one that is round
/// about its hole, whose balls stand on the wire.</param>
public readonly record struct Ball(int Bead, double Share, double OutwardMm, double DownMm, double RadiusMm, int Angle = -1)
{
    /// <summary>The unknowns that move it: both nodes of its edge, and its angle.</summary>
    public int[] Unknowns()
    {
        var a = 4 * Bead;
        return Angle < 0 ? [a, a + 1, a + 2, a + 4, a + 5, a + 6] : [a, a + 1, a + 2, a + 4, a + 5, a + 6, Angle];
    }
}
