using System.Globalization;
using Silkwright.Artwork;
using Silkwright.Mesh;

namespace Silkwright.Plans;

/// <summary>What a film demands, in one sentence; of a film without artwork, that and what to do.</summary>
public static class FilmWords
{
    /// <summary>Halftones told; the others are counted.</summary>
    private const int ZonesTold = 3;

    /// <summary>Less would read as nothing. [%]</summary>
    private const double LeastTold = 0.1;

    /// <summary>The sentence.</summary>
    /// <param name="film">The film.</param>
    /// <param name="mesh">A mesh to hold it against; none: the film alone.</param>
    /// <param name="length">Writes a width. [µm]</param>
    /// <param name="place">Writes a distance from the film's left or top. [mm]</param>
    public static string Of(FilmMeasurement film, WovenMesh? mesh, Func<double, string> length, Func<double, string> place)
    {
        ArgumentNullException.ThrowIfNull(film);
        ArgumentNullException.ThrowIfNull(length);
        ArgumentNullException.ThrowIfNull(place);
        if (BareFilm.Words(film) is { } bare)
            return bare;
        var outside = film.Halftones.Count > 0 ? " outside the halftones" : "";
        var parts = new List<string> { Finest("line", film.FinestImage), Finest("gap", film.FinestGap) };
        if (mesh is not null)
            parts.Add(Against(FilmOnMesh.Of(film, mesh), length));
        parts.AddRange(film.Halftones.Take(ZonesTold).Select(zone =>
            Say($"{zone.RulingLpi:0.#} lpi at {zone.AngleDegrees:0.#} degrees, {zone.TonePercentMin:0.#} to {zone.TonePercentMax:0.#} %")));
        if (film.Halftones.Count > ZonesTold)
            parts.Add(Say($"{film.Halftones.Count - ZonesTold} more halftones"));
        parts.Add(film.CoveragePercent < LeastTold ? Say($"prints less than {LeastTold} % of its area") : Say($"prints {film.CoveragePercent:0.#} % of its area"));
        var text = string.Join("; ", parts) + ".";
        return char.ToUpperInvariant(text[0]) + text[1..];

        string Finest(string what, FinestFeature? finest) => finest switch
        {
            null => $"no {what} narrower than {length(film.WidestLookedForUm)}{outside}",
            { Places: [var first, ..] } => $"finest {what} {length(finest.WidthUm)} at ({place(first.XMm)}, {place(first.YMm)})",
            _ => $"finest {what} {length(finest.WidthUm)}",
        };
    }

    private static string Against(FilmOnMesh on, Func<double, string> length)
    {
        var mesh = Say($"the mesh {on.Mesh.Fabric.Name}");
        var faults = new List<string>();
        if (on.Lines + on.Gaps > 0)
            faults.Add($"{(on.MayBeMore ? "at least " : "")}{Say($"{on.Lines}")} {(on.Lines == 1 ? "line" : "lines")} and {Say($"{on.Gaps}")} {(on.Gaps == 1 ? "gap" : "gaps")} finer than {mesh} can hold, {length(on.Mesh.SmallestLineUm.Value)}");
        if (on.DotZones > 0)
            faults.Add(Say($"dots finer than the {length(on.Mesh.SmallestDotUm.Value)} it holds in {on.DotZones} of the halftones"));
        if (on.HoleZones > 0)
            faults.Add(Say($"holes finer than that in {on.HoleZones} of them"));
        return faults.Count == 0 ? $"nothing finer than {mesh} can hold" : string.Join("; ", faults);
    }

    private static string Say(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}
