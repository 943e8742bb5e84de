using MathNet.Numerics.LinearAlgebra;
using MathNet.Numerics.LinearAlgebra.Factorization;
using Silkwright.Emulsion;
using Silkwright.Estimates;
using Silkwright.Mesh;

namespace Silkwright.Coating;

/// <summary>Draws predictions towards a shop's own readings of the same emulsion.</summary>
/// <remarks>
/// The model's errors on two coats are taken as jointly normal: the same error on the same coat, a correlated one where
/// strokes, mesh or trough differ. Readings then shift every prediction by the usual conditioning of a normal
/// distribution: docs/engines/coating.md, equations 7 and 8. On readings of the very coat this is the mean of prior and readings, each
/// weighted by the inverse of its variance.
/// </remarks>
internal sealed class CoatLearning
{
    /// <summary>Half width of a normal's middle 90 %, in standard deviations.</summary>
    private const double HalfWidth90 = 1.6449;

    private readonly string emulsionId;
    private readonly GaugeReading[] readings;
    private readonly double[] spreads;
    private readonly Cholesky<double> covariance;
    private readonly Vector<double> weights;

    /// <exception cref="ArgumentOutOfRangeException">A reading is below 0 µm or its strokes make no sense.</exception>
    public CoatLearning(StencilEmulsion emulsion, IReadOnlyList<GaugeReading> readings)
    {
        foreach (var reading in readings)
        {
            if (!double.IsFinite(reading.EomUm) || reading.EomUm < 0)
                throw new ArgumentOutOfRangeException(nameof(readings), reading.EomUm, "A reading must be 0 µm or more.");
        }

        var priors = readings.Select(reading => CoatModel.Predict(reading.Mesh, emulsion, reading.Trough, reading.Strokes)).ToArray();
        emulsionId = emulsion.Id;
        // a capillary film has no strokes, whatever was noted with the reading
        var coats = readings.Zip(priors, (reading, prior) => reading with { Strokes = prior.Strokes }).ToArray();
        this.readings = coats;
        spreads = [.. priors.Select(prior => SpreadOf(prior.EomUm))];
        var matrix = Matrix<double>.Build.Dense(coats.Length, coats.Length, (i, j) =>
            (Likeness(coats[i], coats[j]) * spreads[i] * spreads[j]) + (i == j ? OneReadingVariance(MeanOfSameCoat(coats[i])) : 0));
        covariance = matrix.Cholesky();
        weights = covariance.Solve(Vector<double>.Build.Dense(coats.Length, i => coats[i].EomUm - priors[i].EomUm.Value));
    }

    /// <summary>The prediction with the readings taken in; what was measured on this very coat stands as measured here.</summary>
    public CoatPrediction Apply(CoatPrediction prior, WovenMesh mesh, Trough trough)
    {
        var target = new GaugeReading(mesh, trough, prior.Strokes, 0);
        var spread = SpreadOf(prior.EomUm);
        var shared = Vector<double>.Build.Dense(readings.Length, i => Likeness(target, readings[i]) * spread * spreads[i]);
        var value = Math.Max(0, prior.EomUm.Value + (shared * weights));
        var model = Math.Max(0, (spread * spread) - (shared * covariance.Solve(shared)));
        var reading = OneReadingVariance(value);
        var half = HalfWidth90 * Math.Sqrt(model + reading);
        var same = readings.Count(other => Likeness(target, other) == 1);
        var eom = new Estimate(value, Math.Max(0, value - half), value + half, same > 0 ? Ground.MeasuredHere : Ground.Model);
        return prior with
        {
            EomUm = eom,
            StencilUm = Propagation.Through(
                x => x[0] + x[1], [new("mesh", mesh.FabricThicknessUm), new("emulsion over mesh", eom)]).Estimate,
            Drivers =
            [
                .. new Driver[]
                {
                    new("screens and gauge", 100 * reading / (model + reading)),
                    new("this coat's own readings too few", 100 * model / (model + reading)),
                }.OrderByDescending(driver => driver.EffectPercent),
            ],
            Notes = [.. prior.Notes, NoteOn(same, $"The coat of {emulsionId} on {mesh.Fabric.Name}")],
        };
    }

    private Note NoteOn(int same, string coat) => same > 0
        ? new Note($"{coat}: drawn from this shop's own readings, {same} of this very coat and {readings.Length - same} of other coats of this emulsion.", Ground.MeasuredHere)
        : new Note($"{coat}: drawn from this shop's own readings, {readings.Length} of other coats of this emulsion and none of this one.", Ground.Model);

    private double MeanOfSameCoat(GaugeReading one) =>
        readings.Where(other => Likeness(one, other) == 1).Average(other => other.EomUm);

    private static double Likeness(GaugeReading one, GaugeReading other) =>
        (one.Strokes.SequenceEqual(other.Strokes) ? 1 : CoatDefaults.LikenessOfOtherStrokes)
        * (one.Mesh.Fabric.Name == other.Mesh.Fabric.Name ? 1 : CoatDefaults.LikenessOfOtherMesh)
        * (one.Trough == other.Trough ? 1 : CoatDefaults.LikenessOfOtherTrough);

    private static double SpreadOf(Estimate prior) =>
        Math.Max(CoatDefaults.LeastModelSpreadUm, (prior.High - prior.Low) / (2 * HalfWidth90));

    private static double OneReadingVariance(double eomUm)
    {
        var gauge = CoatDefaults.GaugeErrorUm.High / HalfWidth90;
        var screens = CoatDefaults.ScreenToScreenShare * eomUm;
        return (gauge * gauge) + (screens * screens);
    }
}
