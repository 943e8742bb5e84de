using MathNet.Numerics.Distributions;
using Silkwright.Estimates;

namespace Silkwright.Coating.Learning;

/// <summary>How far a gauge repeats, out of places that were read more than once.</summary>
public static class PlaceRepeats
{
    private const double Tail = (100 - Estimate.UsualCoverPercent) / 200;

    /// <summary>One standard deviation, pooled over the places, with its chi-squared interval. [µm]</summary>
    /// <param name="readings">Each place, told apart by its key, and what was read there. [µm]</param>
    /// <returns>None where no place was read twice, or no reading differs.</returns>
    public static Estimate? Of<TPlace>(IEnumerable<(TPlace Place, double EomUm)> readings)
        where TPlace : notnull
    {
        var (squares, freedom) = (0.0, 0);
        foreach (var place in readings.GroupBy(reading => reading.Place, reading => reading.EomUm).Select(place => place.ToArray()).Where(place => place.Length > 1))
        {
            var mean = place.Average();
            squares += place.Sum(um => (um - mean) * (um - mean));
            freedom += place.Length - 1;
        }

        return squares == 0 ? null : new Estimate(
            Math.Sqrt(squares / freedom),
            Math.Sqrt(squares / ChiSquared.InvCDF(freedom, 1 - Tail)),
            Math.Sqrt(squares / ChiSquared.InvCDF(freedom, Tail)),
            Ground.MeasuredHere);
    }
}
