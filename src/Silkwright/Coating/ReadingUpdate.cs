using Silkwright.Estimates;
using Silkwright.Mesh;

namespace Silkwright.Coating;

/// <summary>Draws a prediction towards the shop's own readings of the same coat.</summary>
/// <remarks>
/// Normal prior, normal readings of known spread: docs/engines/coating.md, equation 7. The prior's spread is the model's; the
/// readings' is the gauge's together with screen to screen.
/// </remarks>
internal static class ReadingUpdate
{
    /// <summary>Half width of a normal's middle 90 %, in standard deviations.</summary>
    private const double HalfWidth90 = 1.6449;

    public static CoatPrediction Of(CoatPrediction prior, WovenMesh mesh, IReadOnlyList<double> readingsUm)
    {
        foreach (var reading in readingsUm)
        {
            if (!double.IsFinite(reading) || reading < 0)
                throw new ArgumentOutOfRangeException(nameof(readingsUm), reading, "A reading must be 0 µm or more.");
        }

        var mean = readingsUm.Average();
        var gauge = CoatDefaults.GaugeErrorUm.High / HalfWidth90;
        var screens = CoatDefaults.ScreenToScreenShare * mean;
        var oneReading = (gauge * gauge) + (screens * screens);
        var priorSpread = (prior.EomUm.High - prior.EomUm.Low) / (2 * HalfWidth90);
        var model = Math.Max(priorSpread * priorSpread, oneReading);

        var weight = model / (model + (oneReading / readingsUm.Count));
        var value = prior.EomUm.Value + (weight * (mean - prior.EomUm.Value));
        var half = HalfWidth90 * Math.Sqrt((model * (1 - weight)) + oneReading);
        var eom = new Estimate(value, Math.Max(0, value - half), value + half, Ground.MeasuredHere);
        return prior with
        {
            EomUm = eom,
            StencilUm = Propagation.Through(
                x => x[0] + x[1], [new("mesh", mesh.FabricThicknessUm), new("emulsion over mesh", eom)]).Estimate,
            Drivers =
            [
                new Driver("screens and gauge", 100 * oneReading / ((model * (1 - weight)) + oneReading)),
                new Driver("readings still too few", 100 * model * (1 - weight) / ((model * (1 - weight)) + oneReading)),
            ],
            Notes = [.. prior.Notes, new Note($"Drawn from {readingsUm.Count} of this shop's own readings.", Ground.MeasuredHere)],
        };
    }
}
