using Silkwright.Estimates;

namespace Silkwright.Coating;

/// <summary>The figures that the coat model rests on, each with its ground: docs/engines/coating.md, table 1.</summary>
internal static class CoatDefaults
{
    /// <summary>Edge that the films below are given for: a round one. [mm]</summary>
    public const double RoundEdgeMm = 1.5;

    /// <summary>Smallest and greatest edge radius the model takes. [mm]</summary>
    public const double LeastEdgeMm = 0.2;
    public const double MostEdgeMm = 3;

    /// <summary>
    /// Film that a filled stroke of a round edge leaves over the mesh, as a share of the mesh's voids: a coarse mesh holds the
    /// edge further off. Set by the trade's thickness seeds (trade practice, ±50 %). [1]
    /// </summary>
    public static readonly Estimate FilmPerStroke = new(0.29, 0.22, 0.36, Ground.CommonPractice);

    /// <summary>Film left on the squeegee side by the last stroke there, as a share of the voids, round edge. [1]</summary>
    public static readonly Estimate SqueegeeFilm = new(0.5, 0.3, 0.7, Ground.CommonPractice);

    /// <summary>
    /// Share of the hollow that drying leaves inside the mesh which shows on the print side; the rest shows on the squeegee
    /// side. Set by the same seeds. [1]
    /// </summary>
    public static readonly Estimate SinkShare = new(0.18, 0.12, 0.24, Ground.CommonPractice);

    /// <summary>
    /// Power of the edge radius in the film a stroke leaves: a round edge lays 1.5 to 2 times what a sharp one of a third of
    /// its radius does (trade practice), hence ln 1.5 / ln 3 to ln 2 / ln 3. [1]
    /// </summary>
    public static readonly Estimate EdgePower = new(0.5, 0.37, 0.63, Ground.CommonPractice);

    /// <summary>One operator beside another: pressure, angle, speed (trade practice, ±30 %). [1]</summary>
    public static readonly Estimate Operator = new(1, 0.7, 1.3, Ground.CommonPractice);

    /// <summary>
    /// Wet film of a stroke over a dried coat, sharp edge of 0.5 mm: the trade finds 2 to 5 µm dry of mid-thirties solids. [µm]
    /// </summary>
    public static readonly Estimate FaceFilmUm = new(10.5, 6, 15, Ground.CommonPractice);
    public const double FaceFilmEdgeMm = 0.5;

    /// <summary>Share of a standing wet film that an empty edge drawn over it leaves. Guess, no source. [1]</summary>
    public const double LeftByScrape = 0.4;

    /// <summary>
    /// What a squeegee-side stroke pushes through to the print side while the print side is still bare, beside what it pushes
    /// once the mesh is filled. Guess, no source. [1]
    /// </summary>
    public const double PushedThroughBareMesh = 0.5;

    /// <summary>One reading of the gauge, ±1 to 2 µm (trade practice). [µm]</summary>
    public static readonly Estimate GaugeErrorUm = new(0, -1.5, 1.5, Ground.CommonPractice);

    /// <summary>Lost in the trough's heel and its washing, on top of what is laid (trade practice, 5 to 15 %). [1]</summary>
    public static readonly Estimate HeelLoss = new(0.10, 0.05, 0.15, Ground.CommonPractice);

    /// <summary>Share of the voids that swallow a capillary film drawn into wet mesh. Guess, no source. [1]</summary>
    public static readonly Estimate SwallowedShare = new(0.35, 0.2, 0.5, Ground.CommonPractice);

    /// <summary>Share of the voids that water still fills once a film is laid and the mesh squeegeed. Guess, no source. [1]</summary>
    public static readonly Estimate WaterLeftShare = new(0.6, 0.3, 1, Ground.CommonPractice);
}
