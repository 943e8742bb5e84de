namespace Silkwright.Moire;

/// <summary>Frequency and direction of a grating of lines: how often it repeats, square to its lines.</summary>
/// <param name="XPerCm">Along the film's horizontal. [1/cm]</param>
/// <param name="YPerCm">Along the film's vertical, upwards. [1/cm]</param>
/// <remarks>docs/engines/moire.md, equations 1 and 2. Source: Amidror, The Theory of the Moiré Phenomenon (from memory).</remarks>
public readonly record struct GratingVector(double XPerCm, double YPerCm)
{
    private const double MmPerCm = 10;

    /// <summary>How often it repeats. [1/cm], 0 or more.</summary>
    public double PerCm => double.Hypot(XPerCm, YPerCm);

    /// <summary>From line to line. [mm]; infinite where the vector is zero.</summary>
    public double PeriodMm => MmPerCm / PerCm;

    /// <summary>Direction in which it repeats, counter-clockwise from the film's horizontal. [degrees], above −90 to 90.</summary>
    public double AngleDegrees
    {
        get
        {
            var degrees = double.RadiansToDegrees(Math.Atan2(YPerCm, XPerCm));
            return degrees > 90 ? degrees - 180 : degrees <= -90 ? degrees + 180 : degrees;
        }
    }

    /// <summary>A grating by its frequency and the direction in which it repeats.</summary>
    /// <param name="perCm">[1/cm], above 0.</param>
    /// <param name="angleDegrees">Counter-clockwise from the film's horizontal. [degrees]</param>
    public static GratingVector Of(double perCm, double angleDegrees)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(perCm);
        var (sin, cos) = Math.SinCos(double.DegreesToRadians(angleDegrees));
        return new(perCm * cos, perCm * sin);
    }

    public static GratingVector operator -(GratingVector one, GratingVector other) => new(one.XPerCm - other.XPerCm, one.YPerCm - other.YPerCm);

    public static GratingVector operator +(GratingVector one, GratingVector other) => new(one.XPerCm + other.XPerCm, one.YPerCm + other.YPerCm);

    public static GratingVector operator *(double order, GratingVector one) => new(order * one.XPerCm, order * one.YPerCm);
}
