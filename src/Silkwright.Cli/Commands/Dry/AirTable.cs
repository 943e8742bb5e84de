using Silkwright.Cli.Printing;
using Silkwright.Contracts;
using Silkwright.Drying;
using Spectre.Console;

namespace Silkwright.Cli.Commands.Dry;

/// <summary>A state of moist air for people.</summary>
internal static class AirTable
{
    public static void Print(MoistAir air, IAnsiConsole console)
    {
        console.WriteLine(
            $"Air of {ShownUnit.Celsius.WriteBoth(air.Celsius)} and {ShownUnit.Percent.Write(air.HumidityPercent)} relative humidity at {ShownUnit.Pascals.WriteBoth(air.PressurePa)}");
        var sheet = new Sheet();
        if (air.DewPointCelsius is { } dewPoint)
            sheet.Modelled("Dew point", dewPoint, ShownUnit.Celsius);
        sheet
            .Modelled("Wet bulb", air.WetBulbCelsius, ShownUnit.Celsius)
            .Modelled("Water held, for a kilogram of dry air", air.HumidityRatioGPerKg, ShownUnit.GramsPerKg)
            .Modelled("Vapour pressure", air.VapourPressurePa, ShownUnit.Pascals)
            .Modelled("Saturation pressure", air.SaturationPressurePa, ShownUnit.Pascals)
            .Modelled("Enthalpy, for a kilogram of dry air", air.EnthalpyKjPerKg, ShownUnit.KilojoulesPerKg)
            .Print(console);
        Notes.Print([.. AirDocument.NotesOn(air)], console);
    }
}
