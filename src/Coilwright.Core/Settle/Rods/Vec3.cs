namespace Coilwright.Core.Settle.Rods;

/// <summary>A point or direction in space, mm or plain. The arm runs along y, x to the side, z away from the wrist on its top.</summary>
public readonly record struct Vec3(double X, double Y, double Z)
{
    /// <summary>The sum.</summary>
    public static Vec3 operator +(Vec3 a, Vec3 b) => new(a.X + b.X, a.Y + b.Y, a.Z + b.Z);

    /// <summary>The difference.</summary>
    public static Vec3 operator -(Vec3 a, Vec3 b) => new(a.X - b.X, a.Y - b.Y, a.Z - b.Z);

    /// <summary>The opposite.</summary>
    public static Vec3 operator -(Vec3 a) => new(-a.X, -a.Y, -a.Z);

    /// <summary>Scaled.</summary>
    public static Vec3 operator *(double s, Vec3 a) => new(s * a.X, s * a.Y, s * a.Z);

    /// <summary>Scalar product.</summary>
    public static double Dot(Vec3 a, Vec3 b) => a.X * b.X + a.Y * b.Y + a.Z * b.Z;

    /// <summary>Vector product.</summary>
    public static Vec3 Cross(Vec3 a, Vec3 b) => new(a.Y * b.Z - a.Z * b.Y, a.Z * b.X - a.X * b.Z, a.X * b.Y - a.Y * b.X);

    /// <summary>Length.</summary>
    public double Length => Math.Sqrt(Dot(this, this));

    /// <summary>The same direction of length 1.</summary>
    public Vec3 Unit => 1 / Length * this;

    /// <summary>One of the three, 0 to 2.</summary>
    public double this[int axis] => axis == 0 ? X : axis == 1 ? Y : Z;

    /// <summary>Carries a direction square to <paramref name="from"/> over to <paramref name="to"/> by the smallest turn that takes one into the other.</summary>
    /// <param name="v">The direction.</param>
    /// <param name="from">Of length 1.</param>
    /// <param name="to">Of length 1, not opposite to <paramref name="from"/>.</param>
    public static Vec3 Carried(Vec3 v, Vec3 from, Vec3 to)
    {
        // Turning about from x to by their angle: v - (v.to)/(1 + from.to) (from + to), for v square to from.
        var along = Dot(v, to) / (1 + Dot(from, to));
        return v - along * (from + to);
    }

    /// <summary>The angle from <paramref name="a"/> to <paramref name="b"/> as seen against <paramref name="axis"/>, radians in (-pi, pi].</summary>
    public static double SignedAngle(Vec3 a, Vec3 b, Vec3 axis) => Math.Atan2(Dot(Cross(a, b), axis), Dot(a, b));

    /// <inheritdoc/>
    public override string ToString() => FormattableString.Invariant($"({X}, {Y}, {Z})");
}
