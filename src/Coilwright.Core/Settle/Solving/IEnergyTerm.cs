using Coilwright.Core.Settle.Rods;

namespace Coilwright.Core.Settle.Solving;

/// <summary>A part of the energy: the wire's bending, its stretching, weight, a contact.</summary>
public interface IEnergyTerm
{
    /// <summary>The unknowns that each of its elements ties together.</summary>
    IReadOnlyList<int[]> Elements { get; }

    /// <summary>Its energy; infinite where no body may be.</summary>
    double Value(RodState state);

    /// <summary>Adds its slopes, and its second slopes element by element where a sink is given.</summary>
    /// <param name="state">A state of finite energy.</param>
    /// <param name="gradient">Where the slopes are added.</param>
    /// <param name="hessian">Where the second slopes go; null when only slopes are asked.</param>
    /// <param name="convex">Whether each element's second slopes are to have no direction in which they fall.</param>
    void AddSlopes(RodState state, double[] gradient, IHessianSink? hessian, bool convex);
}

/// <summary>A contact whose bodies come near one another and part again.</summary>
public interface IContactTerm : IEnergyTerm
{
    /// <summary>Looks anew for what is near; whether its elements have changed.</summary>
    bool Renew(RodState state);

    /// <summary>What share of a step can be gone without passing through a body.</summary>
    /// <param name="state">Where it starts.</param>
    /// <param name="step">The change of each unknown.</param>
    /// <param name="share">The share wanted, above 0.</param>
    /// <returns>Above 0, up to <paramref name="share"/>.</returns>
    double FurthestShare(RodState state, ReadOnlySpan<double> step, double share);
}

/// <summary>Takes second slopes, element by element.</summary>
public interface IHessianSink
{
    /// <summary>Adds an element's matrix: square, row by row, alike on both sides of its diagonal.</summary>
    /// <param name="element">The element's index within its term.</param>
    /// <param name="matrix">As many rows as the element has unknowns.</param>
    void Add(int element, ReadOnlySpan<double> matrix);
}
