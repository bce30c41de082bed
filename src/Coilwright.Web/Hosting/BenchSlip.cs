using Coilwright.Core.Faults;

namespace Coilwright.Web.Hosting;

/// <summary>What was wrong with how the bench was called.</summary>
public abstract record BenchSlip
{
    private BenchSlip() { }

    /// <summary>An argument that is not known, or has no value that it takes.</summary>
    /// <param name="Option">The argument.</param>
    public sealed record NotUnderstood(string Option) : BenchSlip;

    /// <summary>A folder and a database: pieces are kept in one place.</summary>
    public sealed record TwoPlaces : BenchSlip;

    /// <summary>The address of the database cannot be read.</summary>
    /// <param name="Why">Why.</param>
    public sealed record Address(Fault Why) : BenchSlip;
}
