using System.Runtime.CompilerServices;

namespace Silkwright.Film.Measuring.Halftones;

/// <summary>A square lattice of dot centres: site (i, j) lies at origin + i u + j v, v being u turned by 90 degrees.</summary>
/// <param name="OriginX">[px]</param>
/// <param name="OriginY">[px]</param>
/// <param name="StepX">u, to the right. [px]</param>
/// <param name="StepY">u, down. [px]</param>
internal readonly record struct ScreenLattice(double OriginX, double OriginY, double StepX, double StepY)
{
    /// <summary>[px]</summary>
    public double Period => Math.Sqrt((StepX * StepX) + (StepY * StepY));

    /// <summary>From the horizontal, counter-clockwise, modulo 90. [degrees]</summary>
    public double AngleDegrees
    {
        get
        {
            var angle = Math.Atan2(-StepY, StepX) * 180 / Math.PI % 90;
            return angle < 0 ? angle + 90 : angle;
        }
    }

    public (double X, double Y) At(double i, double j) =>
        (OriginX + (i * StepX) - (j * StepY), OriginY + (i * StepY) + (j * StepX));

    /// <summary>A point in steps of the lattice.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public (double I, double J) Sites(double x, double y)
    {
        var (dx, dy) = (x - OriginX, y - OriginY);
        var square = (StepX * StepX) + (StepY * StepY);
        return (((dx * StepX) + (dy * StepY)) / square, ((dy * StepX) - (dx * StepY)) / square);
    }

    /// <summary>How far a point is off the nearest site, or off the nearest place that is shifted from one. [period]</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public (double I, double J) Off(double x, double y, double shift = 0)
    {
        var (i, j) = Sites(x, y);
        return (i - shift - Math.Round(i - shift), j - shift - Math.Round(j - shift));
    }

    /// <summary>How much its step differs from another's, quarter turns apart. [period]</summary>
    public double Differs(ScreenLattice other)
    {
        var (x, y) = (StepX, StepY);
        while ((x * other.StepX) + (y * other.StepY) < Math.Abs((y * other.StepX) - (x * other.StepY)))
            (x, y) = (-y, x);
        return Math.Sqrt(((x - other.StepX) * (x - other.StepX)) + ((y - other.StepY) * (y - other.StepY))) / other.Period;
    }

    /// <summary>The lattice nearest to points whose sites are known, by least squares.</summary>
    /// <param name="points">Gone through twice.</param>
    public static ScreenLattice Fit(IEnumerable<(double I, double J, double X, double Y)> points)
    {
        double mi = 0, mj = 0, mx = 0, my = 0, n = 0;
        foreach (var (i, j, x, y) in points)
            (mi, mj, mx, my, n) = (mi + i, mj + j, mx + x, my + y, n + 1);
        (mi, mj, mx, my) = (mi / n, mj / n, mx / n, my / n);
        double a = 0, b = 0, square = 0;
        foreach (var (i, j, x, y) in points)
        {
            var (di, dj, dx, dy) = (i - mi, j - mj, x - mx, y - my);
            a += (di * dx) + (dj * dy);
            b += (di * dy) - (dj * dx);
            square += (di * di) + (dj * dj);
        }

        var (ux, uy) = (a / square, b / square);
        return new ScreenLattice(mx - (mi * ux) + (mj * uy), my - (mi * uy) - (mj * ux), ux, uy);
    }
}
