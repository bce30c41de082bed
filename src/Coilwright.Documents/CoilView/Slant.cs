using Coilwright.Documents.Drawing;

namespace Coilwright.Documents.CoilView;

/// <summary>A place or direction in space, mm: x to the right, y towards whoever looks, z upwards along the arm.</summary>
internal readonly record struct Space(double X, double Y, double Z)
{
    public static Space operator +(Space a, Space b) => new(a.X + b.X, a.Y + b.Y, a.Z + b.Z);

    public static Space operator *(Space a, double by) => new(a.X * by, a.Y * by, a.Z * by);
}

/// <summary>Looks at space from the front and from above, without perspective, so that sizes keep their proportion.</summary>
/// <param name="AboveDeg">How far above the level it looks from, degrees, 0 to 90.</param>
/// <param name="Scale">Millimetres of the picture for one in space.</param>
internal readonly record struct Slant(double AboveDeg, double Scale)
{
    private double Sin { get; } = Math.Sin(AboveDeg * Math.PI / 180);

    private double Cos { get; } = Math.Cos(AboveDeg * Math.PI / 180);

    /// <summary>Where a place is seen.</summary>
    internal Point Seen(Space at) => new(at.X * Scale, (at.Y * Sin - at.Z * Cos) * Scale);

    /// <summary>How near a place is to whoever looks, mm: the larger lies in front.</summary>
    internal double Nearness(Space at) => at.Y * Cos + at.Z * Sin;
}
