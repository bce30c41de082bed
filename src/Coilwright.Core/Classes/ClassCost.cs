namespace Coilwright.Core.Classes;

/// <summary>What a class costs the maker. Money is decimal and not rounded.</summary>
/// <param name="Kits">Kits that are packed.</param>
/// <param name="KitEach">What one costs, packed, with its overhead.</param>
/// <param name="TeachingMinutes">How long she teaches: until the end that was told, else until the last step is done; null when a step was not timed and no end was told.</param>
/// <param name="AroundMinutes">Setting up and clearing away.</param>
/// <param name="BeforehandMinutes">Steps done beforehand, for all kits, at her own pace; those that were not timed are not in it.</param>
/// <param name="WagePerHour">What an hour is paid; null when no wage was told, and then work is counted as nothing.</param>
/// <param name="Room">What is paid once.</param>
public sealed record ClassCost(int Kits, decimal KitEach, decimal? TeachingMinutes, decimal AroundMinutes, decimal BeforehandMinutes, decimal? WagePerHour, decimal Room)
{
    /// <summary>All kits.</summary>
    public decimal KitsTotal => Kits * KitEach;

    /// <summary>Her work beside packing kits, minutes; null when it is not known how long she teaches.</summary>
    public decimal? Minutes => TeachingMinutes + AroundMinutes + BeforehandMinutes;

    /// <summary>The same at her wage.</summary>
    public decimal? Labour => Minutes * (WagePerHour ?? 0) / 60;

    /// <summary>All together.</summary>
    public decimal? Total => KitsTotal + Labour + Room;
}
