using System.Globalization;

namespace Coilwright.Core.Stock;

/// <summary>What an item is counted in.</summary>
public enum StockUnit
{
    /// <summary>One by one: whole beads, clasps, packs of loops.</summary>
    Each,

    /// <summary>By length, in millimetres: wire.</summary>
    Millimetre,

    /// <summary>By mass, in grams.</summary>
    Gram,
}

/// <summary>How much of an item, in thousandths of what it is counted in, so that sums are exact.</summary>
/// <remarks>May be below nought as a difference; what lies in a drawer never is. The default is nothing.</remarks>
/// <param name="Thousandths">Thousandths of the item's unit.</param>
public readonly record struct Quantity(long Thousandths) : IComparable<Quantity>
{
    private const int Scale = 1000;

    /// <summary>Most that any quantity may be, in units: the most that a buying list counts.</summary>
    public const int Most = Buying.BuyingList.MostCount;

    /// <summary>So many whole units.</summary>
    public static Quantity Of(int units) => new((long)units * Scale);

    /// <summary>A quantity in units; null when it is finer than thousandths or more than <see cref="Most"/> on either side of nought.</summary>
    public static Quantity? Exactly(decimal units) =>
        Math.Abs(units) <= Most && units * Scale is var thousandths && thousandths == decimal.Truncate(thousandths) ? new Quantity((long)thousandths) : null;

    /// <summary>The same in units.</summary>
    public decimal Units => (decimal)Thousandths / Scale;

    /// <summary>Whole units in it, what is over left out.</summary>
    public int Whole => (int)(Thousandths / Scale);

    /// <summary>Whole units that can be counted on: none below nought, no more than <see cref="Most"/>.</summary>
    public int ToHand => Math.Clamp(Whole, 0, Most);

    /// <summary>Whether no part of a unit is over.</summary>
    public bool IsWhole => Thousandths % Scale == 0;

    /// <summary>The lesser of two.</summary>
    public static Quantity Min(Quantity a, Quantity b) => a < b ? a : b;

    /// <inheritdoc/>
    public int CompareTo(Quantity other) => Thousandths.CompareTo(other.Thousandths);

    /// <summary>Together.</summary>
    public static Quantity operator +(Quantity a, Quantity b) => new(a.Thousandths + b.Thousandths);

    /// <summary>What is left.</summary>
    public static Quantity operator -(Quantity a, Quantity b) => new(a.Thousandths - b.Thousandths);

    /// <summary>The other way about.</summary>
    public static Quantity operator -(Quantity a) => new(-a.Thousandths);

    /// <summary>Whether it is less.</summary>
    public static bool operator <(Quantity a, Quantity b) => a.Thousandths < b.Thousandths;

    /// <summary>Whether it is more.</summary>
    public static bool operator >(Quantity a, Quantity b) => a.Thousandths > b.Thousandths;

    /// <summary>Whether it is not more.</summary>
    public static bool operator <=(Quantity a, Quantity b) => a.Thousandths <= b.Thousandths;

    /// <summary>Whether it is not less.</summary>
    public static bool operator >=(Quantity a, Quantity b) => a.Thousandths >= b.Thousandths;

    /// <summary>In units, with a decimal point in every language, as <c>12</c> or <c>0.5</c>.</summary>
    public override string ToString() => Units.ToString("0.###", CultureInfo.InvariantCulture);
}
