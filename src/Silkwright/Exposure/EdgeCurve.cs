namespace Silkwright.Exposure;

/// <summary>How far the cured edge reaches under the black as the dose on the print side grows over what just cures it.</summary>
/// <remarks>
/// Through the film's edge, where half the clear film's light is left, and three shares of it that the fitted light tells; straight between them in the logarithm of dose, and on beyond them as
/// the nearest two go. docs/engines/exposure.md, equation 7.
/// </remarks>
internal readonly record struct EdgeCurve
{
    private static readonly double[] Logs = [Math.Log(2), -Math.Log(0.35), -Math.Log(0.15), -Math.Log(0.05)];

    /// <summary>The curve never stands still. [µm]</summary>
    private const double LeastStepUm = 0.02;

    private readonly double at35Um, at15Um, at05Um;

    internal EdgeCurve(double at35Um, double at15Um, double at05Um)
    {
        this.at35Um = Math.Max(at35Um, LeastStepUm);
        this.at15Um = Math.Max(at15Um, this.at35Um + LeastStepUm);
        this.at05Um = Math.Max(at05Um, this.at15Um + LeastStepUm);
    }

    /// <summary>All undercuts so many times as far.</summary>
    internal EdgeCurve Times(double factor) => new(at35Um * factor, at15Um * factor, at05Um * factor);

    /// <summary>At every share the nearer of two.</summary>
    internal EdgeCurve NoFartherThan(EdgeCurve other) => new(Math.Min(at35Um, other.at35Um), Math.Min(at15Um, other.at15Um), Math.Min(at05Um, other.at05Um));

    /// <summary>At every dose at least as far as another.</summary>
    internal EdgeCurve NoNearerThan(EdgeCurve other)
    {
        var at15 = Math.Max(at15Um, other.at15Um);
        return new(Math.Max(at35Um, other.at35Um), at15, Math.Max(Math.Max(at05Um, other.at05Um), at15 + (other.at05Um - other.at15Um)));
    }

    /// <summary>The curve of an image whose edge is itself unsharp: the shares of light across the edge, averaged over a normal spot.</summary>
    /// <param name="deviationUm">Of the spot. [µm]</param>
    internal EdgeCurve Blurred(double deviationUm)
    {
        if (deviationUm <= 0)
            return this;
        var sharp = this;
        return new(Crossing(Logs[1]), Crossing(Logs[2]), Crossing(Logs[3]));

        double Crossing(double log)
        {
            var (near, far, share) = (0.0, sharp.UndercutUm(log) + (Reach * deviationUm), Math.Exp(-log));
            for (var i = 0; i < Halvings; i++)
            {
                var middle = (near + far) / 2;
                (near, far) = sharp.ShareAt(middle, deviationUm) > share ? (middle, far) : (near, middle);
            }

            return (near + far) / 2;
        }
    }

    /// <summary>Deviations to each side that a spot is summed over, and how finely.</summary>
    private const double Reach = 4;
    private const int Nodes = 20, Halvings = 24;

    private double ShareAt(double um, double deviationUm)
    {
        var (sum, weights) = (0.0, 0.0);
        for (var node = -Nodes; node <= Nodes; node++)
        {
            var off = Reach * node / Nodes;
            var weight = Math.Exp(-off * off / 2);
            var place = um + (off * deviationUm);
            var beyond = Math.Exp(-LogExcess(Math.Abs(place)));
            sum += weight * (place < 0 ? 1 - beyond : beyond);
            weights += weight;
        }

        return sum / weights;
    }

    /// <summary>Exposure in the middle of a clear stripe over that of a wide one: what two edges take away there is what each would let under the black so far. [natural log]</summary>
    /// <param name="widthUm">[µm], above 0.</param>
    internal double LogStripe(double widthUm) => -Math.Log(Math.Max(LeastStripe, 1 - (2 * Math.Exp(-LogExcess(widthUm / 2)))));

    /// <summary>Light that a stripe keeps however narrow it is reckoned. [1]</summary>
    private const double LeastStripe = 0.01;

    /// <summary>Undercut per edge. [µm]; below 0 the edge draws back.</summary>
    /// <param name="logExcess">Natural logarithm of the dose on the print side over what just cures it.</param>
    internal double UndercutUm(double logExcess)
    {
        var i = logExcess < Logs[1] ? 0 : logExcess < Logs[2] ? 1 : 2;
        return Um(i) + ((logExcess - Logs[i]) / (Logs[i + 1] - Logs[i]) * (Um(i + 1) - Um(i)));
    }

    /// <summary>The dose that brings the edge so far: <see cref="UndercutUm"/> the other way round.</summary>
    internal double LogExcess(double undercutUm)
    {
        var i = undercutUm < at35Um ? 0 : undercutUm < at15Um ? 1 : 2;
        return Logs[i] + ((undercutUm - Um(i)) / (Um(i + 1) - Um(i)) * (Logs[i + 1] - Logs[i]));
    }

    private double Um(int knot) => knot switch { 0 => 0, 1 => at35Um, 2 => at15Um, _ => at05Um };
}
