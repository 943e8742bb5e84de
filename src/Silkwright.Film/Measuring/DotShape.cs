using System.Runtime.CompilerServices;

namespace Silkwright.Film.Measuring;

/// <summary>A small component: a dot of the image or a hole in it.</summary>
/// <param name="X">Centroid; the first pixel's centre is at 0.5. [px]</param>
/// <param name="Y">Centroid. [px]</param>
/// <param name="Area">[px]</param>
/// <param name="Width">Bounding box. [px]</param>
/// <param name="Height">Bounding box. [px]</param>
internal readonly record struct DotShape(float X, float Y, ushort Area, byte Width, byte Height) : IComparable<DotShape>
{
    /// <summary>Longest side of what is kept as a dot. [px]</summary>
    public const int LongestSide = byte.MaxValue;

    /// <summary>Diameter of the circle of the same area. [px]</summary>
    public double Diameter => Math.Sqrt(4 * Area / Math.PI);

    /// <summary>Round enough for a dot: sides within 2:1 and at least 0.6 of the box filled (a circle fills 0.785, a diamond 0.5 or a little more).</summary>
    public bool IsCompact => Width <= 2 * Height && Height <= 2 * Width && Area >= 0.6 * Width * Height;

    /// <summary>From the top down, then from the left.</summary>
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    public int CompareTo(DotShape other) => Y != other.Y ? Y.CompareTo(other.Y)
        : X != other.X ? X.CompareTo(other.X)
        : (Area, Width, Height).CompareTo((other.Area, other.Width, other.Height));
}
