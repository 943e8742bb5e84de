using Silkwright.Drying;

namespace Silkwright.Contracts;

/// <summary>What <c>dry air</c> asks for.</summary>
public static class AirQuestion
{
    public static readonly QuantityField Temperature = new("temperature", QuantityKind.Temperature, "temperature of the air")
    {
        Required = true,
        Least = MoistAir.LeastCelsius,
        Most = MoistAir.MostCelsius,
    };

    public static readonly QuantityField Humidity = new("humidity", QuantityKind.Share, "relative humidity of the air")
    {
        Required = true,
        Least = 0,
        Most = 100,
    };

    public static readonly QuantityField Pressure = new("pressure", QuantityKind.Pressure, "pressure of the air; at sea level when neither it nor the altitude is given")
    {
        Least = MoistAir.LeastPa,
        Most = MoistAir.MostPa,
    };

    public static readonly QuantityField Altitude = new("altitude", QuantityKind.Height, "height above the sea, for the pressure")
    {
        Least = InputLimits.LeastAltitudeM,
        Most = InputLimits.MostAltitudeM,
    };

    public static IReadOnlyList<QuestionField> Fields => [Temperature, Humidity, Pressure, Altitude];

    /// <exception cref="Estimates.InputProblemException">Something typed is wrong or missing; carries every fault.</exception>
    public static MoistAir Answer(GivenTexts given)
    {
        var celsius = given.ReadRequired(Temperature);
        var humidity = given.ReadRequired(Humidity);
        given.NotBoth(Pressure, Altitude);
        var pressure = given.Read(Pressure);
        var altitude = given.Read(Altitude);
        given.ThrowIfAny();
        return MoistAir.At(celsius, humidity, pressure ?? MoistAir.PressureAtAltitude(altitude ?? 0));
    }
}
