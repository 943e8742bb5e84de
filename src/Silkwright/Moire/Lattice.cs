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

    /// <summary>A halftone's orders, one of each pair that differs by its sign alone.</summary>
    private static readonly OrderPair[] RulingOrders = [.. Orders(MostRulingOrder).Where(IsHalf)];

    private static readonly OrderPair[] ThreadOrders = [.. Orders(MostThreadOrder)];

    /// <summary>Each order with the most it reaches over all tones. Worked out once: it is the same for every ruling.</summary>
    private static readonly (OrderPair Order, double Strength)[] StrongestDots = Dots(
        order => Enumerable.Range(LightestTonePercent, MiddleTonePercent - LightestTonePercent + 1).Max(tone => Math.Abs(DotStrength(order, tone))));

    /// <summary>A halftone's overtones, one of each pair that differs by its sign alone.</summary>
    /// <param name="rulingPerCm">Lines per centimetre. [1/cm]</param>
    /// <param name="angleDegrees">Counter-clockwise from the film's horizontal. [degrees]</param>
    /// <param name="tonePercent">One tone, 0 to 100; each overtone at its strongest where none is named. [%]</param>
    /// <returns>Strengths as shares of the print that is ink, the strongest first.</returns>
    public static Harmonic[] OfDots(double rulingPerCm, double angleDegrees, double? tonePercent) => Of(
        rulingPerCm, rulingPerCm, angleDegrees, tonePercent is { } tone ? Dots(order => Math.Abs(DotStrength(order, tone))) : StrongestDots);

    /// <summary>A mesh's overtones.</summary>
    /// <param name="mesh">The mesh; square openings between straight threads.</param>
    /// <param name="angleDegrees">Counter-clockwise from the film's horizontal. [degrees]</param>
    /// <returns>Strengths as shares of the mean that passes, the strongest first.</returns>
    public static Harmonic[] OfThreads(MeshFabric mesh, double angleDegrees)
    {
        var open = 1 - (mesh.CountPerCm * mesh.ThreadUm / 10_000);
        var strengths = Enumerable.Range(0, MostThreadOrder + 1).Select(order => Math.Abs(Trig.Sinc(order * open))).ToArray();
        return Of(mesh.CountPerCm, mesh.CountPerCm, angleDegrees, Threads(strengths));
    }

    /// <summary>A knit's overtones: wales upright, courses level, the garment laid square to the film.</summary>
    /// <param name="walesPerCm">[1/cm]</param>
    /// <param name="coursesPerCm">[1/cm]</param>
    /// <returns>Strengths as shares of the print's mean, the strongest first.</returns>
    public static Harmonic[] OfKnit(double walesPerCm, double coursesPerCm) => Of(walesPerCm, coursesPerCm, 0, Threads(KnitStrengths));

    /// <summary>One of the two orders that differ by their sign alone.</summary>
    internal static bool IsHalf(OrderPair order) => order.First > 0 || (order.First == 0 && order.Second > 0);

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

    private static Harmonic[] Of(double firstPerCm, double secondPerCm, double angleDegrees, (OrderPair Order, double Strength)[] strengths)
    {
        var (first, second) = (GratingVector.Of(firstPerCm, angleDegrees), GratingVector.Of(secondPerCm, angleDegrees + 90));
        return Array.ConvertAll(strengths, one => new Harmonic(one.Order, (one.Order.First * first) + (one.Order.Second * second), one.Strength));
    }

    /// <summary>Orders of dots, the strongest first.</summary>
    private static (OrderPair Order, double Strength)[] Dots(Func<double, double> strength) =>
        [.. RulingOrders.Select(order => (order, strength(double.Hypot(order.First, order.Second)))).OrderByDescending(one => one.Item2)];

    /// <summary>Orders of rows that cross, the strongest first.</summary>
    private static (OrderPair Order, double Strength)[] Threads(double[] strengths) =>
        [.. ThreadOrders.Select(order => (order, strengths[Math.Abs(order.First)] * strengths[Math.Abs(order.Second)])).OrderByDescending(one => one.Item2)];
}
