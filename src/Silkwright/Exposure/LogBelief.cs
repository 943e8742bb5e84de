using Silkwright.Estimates;

namespace Silkwright.Exposure;

/// <summary>What is believed of a window, in natural logarithms of exposure.</summary>
/// <param name="Through">Least exposure that cures through.</param>
/// <param name="Room">From there to the most that holds.</param>
/// <param name="ThroughVariance">Variance of the first.</param>
/// <param name="RoomVariance">Variance of the second.</param>
/// <param name="Covariance">Of the two.</param>
public sealed record LogBelief(double Through, double Room, double ThroughVariance, double RoomVariance, double Covariance)
{
    /// <summary>Standard deviations from the middle to the ends of an interval that holds 90 % (normal distribution).</summary>
    internal const double UsualReach = 1.6448536269514722;

    /// <summary>Through-cure times a known factor, plus a share of the room: an exposure with its interval.</summary>
    /// <param name="above">Known logarithm on top of through-cure.</param>
    /// <param name="roomShare">Share of the room on top of that. [1]</param>
    /// <param name="ground">Where it comes from.</param>
    internal Estimate Amount(double above, double roomShare, Ground ground)
    {
        var middle = Through + above + (roomShare * Room);
        var variance = ThroughVariance + (roomShare * roomShare * RoomVariance) + (2 * roomShare * Covariance);
        var reach = UsualReach * Math.Sqrt(Math.Max(0, variance));
        return new Estimate(Math.Exp(middle), Math.Exp(middle - reach), Math.Exp(middle + reach), ground);
    }

    /// <summary>Logarithm of how likely a pair is beside the likeliest.</summary>
    internal double LogDensity(double through, double room)
    {
        var (x, y) = (through - Through, room - Room);
        var beside = RoomVariance - (Covariance * Covariance / ThroughVariance);
        var off = y - (Covariance / ThroughVariance * x);
        return -((x * x / ThroughVariance) + (off * off / beside)) / 2;
    }

    /// <summary>Variance that belongs to a 90 % interval.</summary>
    internal static double Variance(Estimate logarithm)
    {
        var deviation = (logarithm.High - logarithm.Low) / (2 * UsualReach);
        return deviation * deviation;
    }
}
