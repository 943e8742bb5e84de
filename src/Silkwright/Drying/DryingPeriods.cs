namespace Silkwright.Drying;

/// <summary>A layer that first dries like free water and then ever more slowly towards rest.</summary>
/// <param name="SolidKgPerM2">Dry layer. [kg/m²], above 0.</param>
/// <param name="RateKgPerM2S">Water leaving, all faces together, while the surface is wet. [kg/(m²·s)], 0 or more.</param>
/// <param name="Critical">Moisture at which the surface stops behaving as free water. [kg/kg dry]</param>
/// <param name="Rest">Moisture at rest in this air. [kg/kg dry], below <paramref name="Critical"/>.</param>
/// <param name="InsideSeconds">Time constant of the way through the layer itself. [s], 0 or more.</param>
/// <remarks>
/// docs/engines/drying.md, equations 12 and 13: constant rate down to the critical moisture, then a rate proportional to the
/// moisture above rest, with the layer's own resistance in series. Source of the two periods: Treybal, Mass-Transfer
/// Operations, 3rd edition, chapter 12.
/// </remarks>
public sealed record DryingPeriods(
    double SolidKgPerM2, double RateKgPerM2S, double Critical, double Rest, double InsideSeconds = 0)
{
    /// <summary>Seconds from one moisture down to another; infinite where the layer never gets there.</summary>
    /// <param name="from">[kg/kg dry]</param>
    /// <param name="to">[kg/kg dry]</param>
    public double Seconds(double from, double to)
    {
        if (to >= from)
            return 0;
        if (to <= Rest || RateKgPerM2S <= 0)
            return double.PositiveInfinity;
        var constant = Math.Max(0, from - Math.Max(to, Critical)) * SolidKgPerM2 / RateKgPerM2S;
        var start = Math.Min(from, Critical);
        return to >= start ? constant : constant + (FallingSeconds * Math.Log((start - Rest) / (to - Rest)));
    }

    /// <summary>Moisture after a time. [kg/kg dry]</summary>
    public double MoistureAfter(double seconds, double from)
    {
        if (RateKgPerM2S <= 0)
            return from;
        var constant = Math.Max(0, from - Critical) * SolidKgPerM2 / RateKgPerM2S;
        if (seconds <= constant)
            return from - (seconds * RateKgPerM2S / SolidKgPerM2);
        var start = Math.Min(from, Critical);
        return Rest + ((start - Rest) * Math.Exp(-(seconds - constant) / FallingSeconds));
    }

    private double FallingSeconds => (SolidKgPerM2 * (Critical - Rest) / RateKgPerM2S) + InsideSeconds;
}
