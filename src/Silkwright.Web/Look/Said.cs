using Silkwright.Coating;
using Silkwright.Emulsion;
using Silkwright.Exposure;
using Silkwright.Life;
using Silkwright.Light;
using Silkwright.Plans;

namespace Silkwright.Web.Look;

/// <summary>The words for the values that a plan is made of.</summary>
public static class Said
{
    public static string Of(InkKind ink) => ink switch
    {
        InkKind.WaterBased => "water-based",
        InkKind.Uv => "UV",
        _ => ink.ToString().ToLowerInvariant(),
    };

    public static string Of(EmulsionFamily family) => family switch
    {
        EmulsionFamily.Diazo => "two-part diazo",
        EmulsionFamily.DualCure => "two-part dual-cure",
        EmulsionFamily.Photopolymer => "ready-to-use photopolymer",
        _ => "capillary film",
    };

    public static string Of(InkRole role) => role switch
    {
        InkRole.Underbase => "underbase",
        InkRole.Highlight => "highlight",
        _ => "colour",
    };

    public static string Of(WorkKind kind) => kind switch
    {
        WorkKind.LeftChestSpot => "left-chest spot colour",
        WorkKind.FullFrontSpot => "full-front spot colour",
        WorkKind.FullFrontHalftone => "full-front halftone",
        WorkKind.AthleticNumbers => "athletic numbers",
        WorkKind.FineLettering => "fine lettering",
        _ => "large solid",
    };

    public static string Of(LampKind lamp) => lamp switch
    {
        LampKind.MetalHalide => "metal halide lamp",
        LampKind.LedArray => "LED array",
        LampKind.TubeBank => "bank of tubes",
        _ => "halogen work lamp",
    };

    public static string Of(LampShape lamp) => lamp switch
    {
        LampShape.Point => "a point at a distance",
        LampShape.Tubes => "a bank of tubes",
        LampShape.Diodes => "an array of diodes",
        _ => "straight down, to compare",
    };

    public static string Of(ThreadColour colour) => colour == ThreadColour.Dyed ? "dyed" : "white";

    public static string Of(FilmImageKind image) => image switch
    {
        FilmImageKind.Line => "a black line",
        FilmImageKind.Gap => "a clear gap",
        _ => "an edge",
    };

    public static string Of(RoomLight light) => light switch
    {
        RoomLight.Yellow => "yellow light",
        RoomLight.Filtered => "filtered white light",
        _ => "white light",
    };

    public static string Of(PressWash wash) => wash switch
    {
        PressWash.None => "nothing",
        PressWash.Water => "water",
        _ => "solvent or cleaner",
    };

    public static string Of(StencilFinish finish) => finish switch
    {
        StencilFinish.PostExposed => "Once dry, expose a second time.",
        StencilFinish.Hardened => "Brush with chemical hardener once dry. It usually cannot be reclaimed afterwards.",
        _ => "Dry and use.",
    };

    public static string Unit(ExposureCount counts) => counts == ExposureCount.Seconds ? "s" : "units";

    /// <summary>Strokes in the order they are made: "print side 2, squeegee side 1, wet on wet".</summary>
    public static string Of(IReadOnlyList<Stroke> strokes)
    {
        if (strokes.Count == 0)
            return "no stroke";
        var parts = new List<string>();
        for (var i = 0; i < strokes.Count;)
        {
            var first = strokes[i];
            var same = strokes.Skip(i).TakeWhile((s, k) => s.Side == first.Side && s.Scrape == first.Scrape && (k == 0 || !s.AfterDrying)).Count();
            var side = first.Side == StrokeSide.Print ? "print side" : "squeegee side";
            parts.Add($"{(first.AfterDrying ? "dry, then " : string.Empty)}{side} {same}{(first.Scrape ? " empty-edge scrape" : string.Empty)}");
            i += same;
        }

        var wet = strokes.Count > 1 && strokes.All(s => !s.AfterDrying) ? ", wet on wet" : string.Empty;
        return string.Join(", ", parts) + wet;
    }
}
