namespace Coilwright.Core.Geometry;

/// <summary>A place or a direction in space, mm where it is a place.</summary>
public readonly record struct Point3(double X, double Y, double Z)
{
    /// <summary>One of the three, 0 to 2.</summary>
    public double this[int axis] => axis == 0 ? X : axis == 1 ? Y : Z;

    /// <summary>How long it is.</summary>
    public double Length => Math.Sqrt(Dot(this));

    /// <summary>The same direction, one long; itself where it has no direction.</summary>
    public Point3 Unit => Length is > 0 and var length ? this * (1 / length) : this;

    /// <summary>Adds.</summary>
    public static Point3 operator +(Point3 a, Point3 b) => new(a.X + b.X, a.Y + b.Y, a.Z + b.Z);

    /// <summary>Takes away.</summary>
    public static Point3 operator -(Point3 a, Point3 b) => new(a.X - b.X, a.Y - b.Y, a.Z - b.Z);

    /// <summary>The other way.</summary>
    public static Point3 operator -(Point3 a) => new(-a.X, -a.Y, -a.Z);

    /// <summary>Stretches.</summary>
    public static Point3 operator *(Point3 a, double by) => new(a.X * by, a.Y * by, a.Z * by);

    /// <summary>Stretches.</summary>
    public static Point3 operator *(double by, Point3 a) => a * by;

    /// <summary>Scalar product.</summary>
    public double Dot(Point3 other) => X * other.X + Y * other.Y + Z * other.Z;

    /// <summary>Vector product, by the right hand.</summary>
    public Point3 Cross(Point3 other) => new(Y * other.Z - Z * other.Y, Z * other.X - X * other.Z, X * other.Y - Y * other.X);

    // What a record writes of itself would write the unit of the unit, and so on.
    /// <inheritdoc/>
    public override string ToString() => FormattableString.Invariant($"({X}, {Y}, {Z})");
}
