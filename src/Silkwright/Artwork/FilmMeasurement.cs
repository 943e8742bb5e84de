namespace Silkwright.Artwork;

/// <summary>What one film demands, as measured on its own pixels. Definitions: docs/engines/film.md.</summary>
public sealed record FilmMeasurement
{
    /// <summary>The film's file name, without its folder.</summary>
    public required string File { get; init; }

    public required int WidthPx { get; init; }

    public required int HeightPx { get; init; }

    public required double Dpi { get; init; }

    /// <summary>Share of the film that prints. [%]</summary>
    public required double CoveragePercent { get; init; }

    /// <summary>8-connected components larger than a speck.</summary>
    public required FilmCounts Components { get; init; }

    /// <summary>8-connected components of 4 px or less; they take no part in the rest.</summary>
    public required FilmCounts Specks { get; init; }

    /// <summary>Narrowest part of the image outside the halftones; none on a film without line work.</summary>
    public FinestFeature? FinestImage { get; init; }

    /// <summary>Narrowest part of the gap outside the halftones.</summary>
    public FinestFeature? FinestGap { get; init; }

    /// <summary>Smallest isolated dot outside the halftones.</summary>
    public FilmDot? FinestDot { get; init; }

    public required IReadOnlyList<WidthShare> ImageWidths { get; init; }

    public required IReadOnlyList<HalftoneZone> Halftones { get; init; }

    /// <summary>Where it prints and where its register marks lie, to be held against the other films of its job; none where it was not looked for.</summary>
    public FilmLayout? Layout { get; init; }

    /// <summary>What a reader should know: thresholded greys, an assumed resolution, a search that was cut short.</summary>
    public IReadOnlyList<string> Remarks { get; init; } = [];

    /// <summary>Widest part that was looked for: where no finest image or gap is told, none outside the halftones is narrower. [µm]</summary>
    public double WidestLookedForUm => Math.Min(FinestFeature.WidestUm, FinestFeature.WidestPx * 25_400 / Dpi);

    /// <summary>Size of the film. [mm]</summary>
    public double WidthMm => WidthPx * 25.4 / Dpi;

    /// <summary>Size of the film. [mm]</summary>
    public double HeightMm => HeightPx * 25.4 / Dpi;
}
