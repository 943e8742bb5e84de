using Silkwright.Drying;
using Silkwright.Emulsion;
using Silkwright.Estimates;

namespace Silkwright.Contracts;

/// <summary>What <c>dry time</c> asks for.</summary>
public static class DryingQuestion
{
    /// <summary>Taken where no family is named: the one whose coat holds damp air's water most (common practice, no source).</summary>
    private const EmulsionFamily CautiousFamily = EmulsionFamily.Diazo;

    public static readonly QuantityField Temperature = AirQuestion.Temperature with
    {
        Meaning = "temperature of the drying air",
        Most = DryingTime.RefuseAboveCelsius,
        Because = "hotter air hardens the coat before any light does",
    };

    public static readonly QuantityField AirSpeed = new("air-speed", QuantityKind.Speed, "speed of the air along the screen; a room with one fan when not given")
    {
        Least = 0,
        Most = InputLimits.MostAirSpeedMPerS,
    };

    public static readonly QuantityField WetThickness = new("wet-thickness", QuantityKind.Thickness, "wet emulsion as an even layer over the screen")
    {
        Sample = "60um",
        Required = true,
        Least = InputLimits.LeastWetUm,
        Most = InputLimits.MostWetUm,
        TakesRange = true,
    };

    public static readonly QuantityField Solids = new("solids", QuantityKind.Share, "solids of the emulsion by weight")
    {
        Sample = "40%",
        Required = true,
        Least = InputLimits.LeastSolidsPercent,
        Most = 100,
        TakesRange = true,
    };

    public static readonly ChoiceField Family = ChoiceField.Of<EmulsionFamily>("family", "family of the emulsion; diazo, which holds damp most, when not given");

    public static readonly QuantityField Faces = new("faces", QuantityKind.Number, "faces of the screen that air reaches, 1 or 2; 2 when not given")
    {
        Sample = "1",
        Least = 1,
        Most = 2,
        Whole = true,
    };

    public static readonly QuantityField SafeMoisture = new(
        "safe-moisture", QuantityKind.Share, "most water the coat may hold when exposed, as a share of the dry coat")
    {
        Sample = "5%",
        Least = 0.1,
        Most = 100,
    };

    public static IReadOnlyList<QuestionField> Fields =>
        [Temperature, AirQuestion.Humidity, WetThickness, Solids, AirSpeed, Family, Faces, AirQuestion.Altitude, SafeMoisture];

    /// <exception cref="InputProblemException">Something typed is wrong or missing; carries every fault.</exception>
    public static DryingResult Answer(GivenTexts given)
    {
        var celsius = given.ReadRequired(Temperature);
        var humidity = given.ReadRequired(AirQuestion.Humidity);
        var wet = given.ReadRequiredEstimate(WetThickness);
        var solids = given.ReadRequiredEstimate(Solids);
        var speed = given.Read(AirSpeed);
        var family = given.Read<EmulsionFamily>(Family);
        var faces = given.Read(Faces);
        var altitude = given.Read(AirQuestion.Altitude);
        var safe = given.Read(SafeMoisture);
        given.ThrowIfAny();

        var result = DryingTime.Of(new DryingCase
        {
            AirCelsius = celsius,
            HumidityPercent = humidity,
            AirSpeedMPerS = speed,
            WetUm = wet,
            SolidsPercent = solids,
            Family = family ?? CautiousFamily,
            Faces = (int)(faces ?? 2),
            AltitudeM = altitude ?? 0,
            SafeMoisturePercent = safe,
        });
        return family is null
            ? result with { Notes = [new Note("The emulsion's family is not named: diazo is assumed, which holds damp most.", Ground.CommonPractice), .. result.Notes] }
            : result;
    }
}
