using System.Globalization;
using Microsoft.AspNetCore.Mvc;
using Silkwright.Film.Pictures;
using Silkwright.Plans;

namespace Silkwright.Web.Measuring;

/// <summary>What a film's heat is drawn against, as its picture's address says it.</summary>
/// <param name="Held">Narrowest line. [µm]</param>
/// <param name="Gap">Narrowest gap; as the line where it is not given. [µm]</param>
/// <param name="Dot">Smallest dot of a halftone, likewise. [µm]</param>
/// <param name="Hole">Smallest hole, likewise. [µm]</param>
/// <param name="Light">"safe": red alone.</param>
/// <param name="Side">Longest side. [px]</param>
public sealed record HeatQuery(
    [FromQuery(Name = "held")] double Held,
    [FromQuery(Name = "gap")] double? Gap,
    [FromQuery(Name = "dot")] double? Dot,
    [FromQuery(Name = "hole")] double? Hole,
    [FromQuery(Name = "light")] string? Light,
    [FromQuery(Name = "side")] int? Side)
{
    /// <summary>Widths beyond these are no mesh's. [µm]</summary>
    private const double LeastUm = 10, MostUm = 5000;

    public static string[] Names { get; } = ["held", "gap", "dot", "hole", "light", "side"];

    public HeldWidths Widths => new(Width(Held, "held"), Width(Gap ?? Held, "gap"), Width(Dot ?? Held, "dot"), Width(Hole ?? Held, "hole"), null);

    public HeatColours Colours => ColoursIn(Light == "safe");

    public static HeatColours ColoursIn(bool safeLight) => safeLight ? HeatColours.SafeLight : HeatColours.Day;

    /// <summary>What the address of a picture says after its question mark.</summary>
    public static string Of(HeldWidths held, bool safeLight, int side) => string.Create(
        CultureInfo.InvariantCulture,
        $"side={side}&held={held.LineUm:0.##}&gap={held.GapUm:0.##}&dot={held.DotUm:0.##}&hole={held.HoleUm:0.##}{(safeLight ? "&light=safe" : "")}");

    private static double Width(double um, string name) => Math.Clamp(FilmPictures.Finite(um, name), LeastUm, MostUm);
}
