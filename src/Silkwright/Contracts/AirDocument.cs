using System.Text.Json.Nodes;
using Silkwright.Drying;
using Silkwright.Estimates;

namespace Silkwright.Contracts;

/// <summary>A state of moist air as other programs read it: silkwright/dry-air/1, docs/schema/dry-air.json.</summary>
public static class AirDocument
{
    public static JsonObject Of(MoistAir air)
    {
        var document = DocumentJson.Start("dry-air");
        document["temperatureCelsius"] = air.Celsius;
        document["humidityPercent"] = air.HumidityPercent;
        document["pressurePa"] = air.PressurePa;
        document.AddIfThere("dewPointCelsius", air.DewPointCelsius);
        document["wetBulbCelsius"] = air.WetBulbCelsius;
        document["humidityRatioGPerKg"] = air.HumidityRatioGPerKg;
        document["vapourPressurePa"] = air.VapourPressurePa;
        document["saturationPressurePa"] = air.SaturationPressurePa;
        document["enthalpyKjPerKg"] = air.EnthalpyKjPerKg;
        document["notes"] = DocumentJson.Of([.. NotesOn(air)]);
        return document;
    }

    public static IEnumerable<Note> NotesOn(MoistAir air)
    {
        yield return new Note(
            "Saturation over water by Hyland and Wexler, mixing by the ideal-gas relations of the ASHRAE Handbook of Fundamentals: docs/engines/drying.md.",
            Ground.Model);
        if (air.DewPointCelsius is null)
            yield return new Note("The dew point is left out: air without vapour has none.");
    }
}
