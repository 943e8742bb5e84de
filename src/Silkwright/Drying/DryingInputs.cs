using Silkwright.Estimates;

namespace Silkwright.Drying;

/// <summary>The uncertain figures of a case in a fixed order, and the coat that follows from a choice of them.</summary>
internal sealed record DryingInputs(DryingCase Drying, MoistAir Air, IReadOnlyList<Uncertain> Uncertain)
{
    /// <summary>A room with one fan. [m/s]. Common practice, within a factor of two.</summary>
    internal const double RoomAirMPerS = 0.3;

    /// <summary>Warm and moist air moves by itself about this fast. [m/s]. Common practice.</summary>
    internal const double StillAirMPerS = 0.1;

    /// <summary>Length of screen along the air. [m]. Common practice: a usual textile frame.</summary>
    internal const double LengthM = 0.5;

    /// <summary>Liquid emulsion. [g/cm³]. Common practice.</summary>
    private const double WetDensityGPerCm3 = 1.05;

    /// <summary>Dry coat. [g/cm³]. Common practice.</summary>
    private const double DryDensityGPerCm3 = 1.2;

    /// <summary>Correlations for mass transfer hold within about this. [1]. From memory: 25 %.</summary>
    private const double CorrelationShare = 0.25;

    /// <summary>Water through a nearly dry polyvinyl alcohol coat at 25 °C. [m²/s]. From memory, within a factor of three.</summary>
    private const double InsideDiffusivityM2PerS = 5e-13;

    /// <summary>How it grows with heat. [J/mol]. From memory.</summary>
    private const double InsideActivationJPerMol = 40_000;

    private const double GasConstant = 8.314462618;

    internal static DryingInputs Of(DryingCase drying) => new(
        drying,
        MoistAir.At(drying.AirCelsius, drying.HumidityPercent, MoistAir.PressureAtAltitude(drying.AltitudeM)),
        [
            new("wet thickness", drying.WetUm),
            new("solids", drying.SolidsPercent),
            new("air speed", SpeedOf(drying)),
            new("mass transfer", Estimate.Within(1, CorrelationShare, Ground.Model)),
            new("water the coat keeps", CoatMoisture.IsothermFactor),
            new("way out through the coat", Estimate.WithinFactor(1, 3, Ground.CommonPractice)),
        ]);

    internal WetCoat Best() => At([.. Uncertain.Select(input => input.Estimate.Value)]);

    internal WetCoat At(IReadOnlyList<double> x)
    {
        double wetUm = x[0], solids = x[1] / 100, speed = x[2], transfer = x[3], isotherm = x[4], inside = x[5];
        var solidKgPerM2 = Math.Max(1e-6, wetUm * WetDensityGPerCm3 * solids / 1000);
        var rest = isotherm * CoatMoisture.Isotherm(Drying.Family, Drying.HumidityResistant)
            .MoisturePercent(Drying.HumidityPercent / 100) / 100;
        var rate = transfer * Drying.Faces * Evaporation.KgPerM2S(Air, speed, LengthM);
        var wayM = solidKgPerM2 / (1000 * DryDensityGPerCm3 * Drying.Faces);
        var hotter = Math.Exp(-InsideActivationJPerMol / GasConstant * ((1 / (Air.Celsius + 273.15)) - (1 / 298.15)));
        var insideSeconds = inside * 4 * wayM * wayM / (Math.PI * Math.PI * InsideDiffusivityM2PerS * hotter);
        return new WetCoat(
            new DryingPeriods(solidKgPerM2, rate, CoatMoisture.Critical, rest, insideSeconds), (1 - solids) / solids);
    }

    private static Estimate SpeedOf(DryingCase drying) => drying.AirSpeedMPerS is { } given
        ? Estimate.Exact(Math.Max(StillAirMPerS, given), Ground.MeasuredHere)
        : Estimate.WithinFactor(RoomAirMPerS, 2, Ground.CommonPractice);
}
