using MathNet.Numerics;
using Silkwright.Mesh;

namespace Silkwright.Moire;

/// <summary>What repeats in two directions and can beat: a halftone's dots, a mesh's threads, a knit's stitches; each as its overtones.</summary>
/// <remarks>docs/engines/moire.md, equations 3 to 6.</remarks>
public static class Lattice
{
    /// <summary>Orders of the halftone in each direction: threads to a line lie between 2.5 and 6.</summary>
    public const int MostRulingOrder = 6;

    /// <summary>Orders of threads and stitches in each direction.</summary>
    public const int MostThreadOrder = 2;

    /// <summary>Share by which a knit's rows lighten and darken a print, first and second order. Our own judgement; [1]</summary>
    private static readonly double[] KnitStrengths = [1, 0.10, 0.03];

    /// <summary>Lightest tone looked at where none is named; a round hole in as dark a tone beats alike. Common practice, no source. [%]</summary>
    private const int LightestTonePercent = 5;

    private const int MiddleTonePercent = 50;

    /// <summary>Strength by k₁² + k₂², the most over all tones. Worked out once: it is the same for every ruling.</summary>
    private static readonly double[] StrongestDots = Strengths(
        order => Enumerable.Range(LightestTonePercent, MiddleTonePercent - LightestTonePercent + 1).Max(tone => Math.Abs(DotStrength(order, tone))));

    /// <summary>A halftone's overtones, one of each pair that differs by its sign alone.</summary>
    /// <param name="rulingPerCm">Lines per centimetre. [1/cm]</param>
    /// <param name="angleDegrees">Counter-clockwise from the film's horizontal. [degrees]</param>
    /// <param name="tonePercent">One tone, 0 to 100; each overtone at its strongest where none is named. [%]</param>
    /// <returns>Strengths as shares of the print that is ink.</returns>
    public static Harmonic[] OfDots(double rulingPerCm, double angleDegrees, double? tonePercent)
    {
        var strengths = tonePercent is { } tone ? Strengths(order => Math.Abs(DotStrength(order, tone))) : StrongestDots;
        return [.. Orders(MostRulingOrder)
            .Where(order => order.First > 0 || (order.First == 0 && order.Second > 0))
            .Select(order => Of(order, rulingPerCm, rulingPerCm, angleDegrees, strengths[SquareOf(order)]))];
    }

    /// <summary>A mesh's overtones.</summary>
    /// <param name="mesh">The mesh; square openings between straight threads.</param>
    /// <param name="angleDegrees">Counter-clockwise from the film's horizontal. [degrees]</param>
    /// <returns>Strengths as shares of the mean that passes.</returns>
    public static Harmonic[] OfThreads(MeshFabric mesh, double angleDegrees)
    {
        var open = 1 - (mesh.CountPerCm * mesh.ThreadUm / 10_000);
        return [.. Orders(MostThreadOrder).Select(order => Of(
            order, mesh.CountPerCm, mesh.CountPerCm, angleDegrees, Math.Abs(Trig.Sinc(order.First * open) * Trig.Sinc(order.Second * open))))];
    }

    /// <summary>A knit's overtones: wales upright, courses level, the garment laid square to the film.</summary>
    /// <param name="walesPerCm">[1/cm]</param>
    /// <param name="coursesPerCm">[1/cm]</param>
    /// <returns>Strengths as shares of the print's mean.</returns>
    public static Harmonic[] OfKnit(double walesPerCm, double coursesPerCm) =>
        [.. Orders(MostThreadOrder).Select(order => Of(
            order, walesPerCm, coursesPerCm, 0, KnitStrengths[Math.Abs(order.First)] * KnitStrengths[Math.Abs(order.Second)]))];

    /// <summary>Fourier coefficient of round dots on a square lattice; above half the tone, of round holes.</summary>
    /// <param name="order">√(k₁² + k₂²). [1], above 0.</param>
    /// <param name="tonePercent">[%], 0 to 100.</param>
    /// <remarks>R J₁(2πRk)/k with R the radius in periods: docs/engines/moire.md, equation 3. Source: the transform of a disc.</remarks>
    public static double DotStrength(double order, double tonePercent)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(order);
        var share = Math.Min(tonePercent, 100 - tonePercent) / 100;
        ArgumentOutOfRangeException.ThrowIfNegative(share);
        var radius = Math.Sqrt(share / Math.PI);
        return radius * SpecialFunctions.BesselJ(1, 2 * Math.PI * radius * order) / order;
    }

    private static IEnumerable<OrderPair> Orders(int most) =>
        from first in Enumerable.Range(-most, (2 * most) + 1)
        from second in Enumerable.Range(-most, (2 * most) + 1)
        where first != 0 || second != 0
        select new OrderPair(first, second);

    private static Harmonic Of(OrderPair order, double firstPerCm, double secondPerCm, double angleDegrees, double strength) => new(
        order,
        (order.First * GratingVector.Of(firstPerCm, angleDegrees)) + (order.Second * GratingVector.Of(secondPerCm, angleDegrees + 90)),
        strength);

    private static double[] Strengths(Func<double, double> ofOrder) =>
        [.. Enumerable.Range(0, (2 * MostRulingOrder * MostRulingOrder) + 1).Select(square => square == 0 ? 0 : ofOrder(Math.Sqrt(square)))];

    private static int SquareOf(OrderPair order) => (order.First * order.First) + (order.Second * order.Second);
}
