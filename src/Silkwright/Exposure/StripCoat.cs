using Silkwright.Estimates;

namespace Silkwright.Exposure;

/// <summary>Emulsion over mesh where nobody told it: as the strips were measured, or as coats usually are.</summary>
public static class StripCoat
{
    /// <summary>A coat as measured lies within this share. [1] Common practice, no source.</summary>
    private const double MeasuredWithin = 0.1;

    /// <summary>Between a thin coat and one for garments. Common practice, no source. [µm]</summary>
    private static readonly Estimate UsualEomUm = new(8, 3, 15, Ground.CommonPractice);

    /// <param name="strips">Strips of the same coat; those not measured say nothing.</param>
    /// <returns>Dry emulsion over mesh. [µm]</returns>
    public static Estimate EomUm(IEnumerable<StepTest> strips)
    {
        double[] measured = [.. strips.Select(strip => strip.EomUm).OfType<double>()];
        return measured.Length > 0 ? Estimate.Within(measured.Average(), MeasuredWithin, Ground.MeasuredHere) : UsualEomUm;
    }

    /// <summary>What was taken, for whoever did not tell the coat.</summary>
    /// <param name="strips">The same strips.</param>
    public static Note Told(IReadOnlyList<StepTest> strips)
    {
        var eom = EomUm(strips);
        var measured = strips.Count(strip => strip.EomUm is not null);
        if (measured == 0)
            return new Note($"Emulsion over mesh is not told: {eom.Value:0} µm, {eom.Low:0} to {eom.High:0}, is taken.", eom.Ground);
        var on = measured == strips.Count ? "the strips" : $"{measured} of {strips.Count} strips";
        return new Note($"Emulsion over mesh is taken as it was measured on {on}: {Figures.Value(eom)} µm, {Figures.Interval(eom)}. Give the job's own where it is coated otherwise.", eom.Ground);
    }
}
