namespace Coilwright.Core.Settle.Rods;

/// <summary>A wire as an elastic rod: its stiffnesses and the shape that it has when nothing pulls at it. What it is, not how it lies.</summary>
/// <remarks>
/// <para>A chain of straight edges between nodes. It bends and twists at the nodes, each of which stands for half of both edges beside it, and stretches
/// along the edges. Linear elastic; no shear across the wire, which at a length of a hundred thicknesses adds less than a thousandth.</para>
/// <para>Any one system of units: N and mm in the bench, pounds and inches in some published checks. Model: docs/theory/settle.md.</para>
/// </remarks>
public sealed class RodModel
{
    /// <summary>Makes it from the shape at rest.</summary>
    /// <param name="natural">How it lies when nothing pulls at it.</param>
    /// <param name="bendingStiffness">E I about the two axes of the material frame; alike for round wire.</param>
    /// <param name="twistStiffness">G J.</param>
    /// <param name="axialStiffness">E A.</param>
    public RodModel(RodState natural, (double First, double Second) bendingStiffness, double twistStiffness, double axialStiffness)
    {
        (Closed, BendingStiffness, TwistStiffness, AxialStiffness) = (natural.Closed, bendingStiffness, twistStiffness, axialStiffness);
        RestLengths = [.. natural.Lengths];
        Nodes = natural.Positions.Length;
        (RestLengthAt, RestBend1, RestBend2, RestTwist) = (new double[Nodes], new double[Nodes], new double[Nodes], new double[Nodes]);
        for (var i = 0; i < Nodes; i++)
        {
            if (!natural.BendsAt(i)) continue;
            var (before, after) = (natural.EdgeBefore(i), i);
            RestLengthAt[i] = (RestLengths[before] + RestLengths[after]) / 2;
            var bend = new NodeBend(natural, i);
            (RestBend1[i], RestBend2[i], RestTwist[i]) = (bend.Bend1, bend.Bend2, bend.Twist);
        }
    }

    private RodModel(RodModel other, double axialStiffness)
    {
        (Closed, BendingStiffness, TwistStiffness, AxialStiffness) = (other.Closed, other.BendingStiffness, other.TwistStiffness, axialStiffness);
        (RestLengths, Nodes, RestLengthAt, RestBend1, RestBend2, RestTwist) = (other.RestLengths, other.Nodes, other.RestLengthAt, other.RestBend1, other.RestBend2, other.RestTwist);
    }

    /// <summary>The same wire, stretching more easily or less: a soft one finds the neighbourhood of its rest sooner.</summary>
    public RodModel Stretching(double axialStiffness) => new(this, axialStiffness);

    /// <summary>Whether its end is joined to its start.</summary>
    public bool Closed { get; }

    /// <summary>How many nodes.</summary>
    public int Nodes { get; }

    /// <summary>E I about both axes.</summary>
    public (double First, double Second) BendingStiffness { get; }

    /// <summary>G J.</summary>
    public double TwistStiffness { get; }

    /// <summary>E A.</summary>
    public double AxialStiffness { get; }

    /// <summary>Length of each edge at rest.</summary>
    public double[] RestLengths { get; }

    internal double[] RestLengthAt { get; }

    internal double[] RestBend1 { get; }

    internal double[] RestBend2 { get; }

    internal double[] RestTwist { get; }
}
