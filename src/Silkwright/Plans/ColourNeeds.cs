using Silkwright.Artwork;
using Silkwright.Estimates;

namespace Silkwright.Plans;

/// <summary>Puts together what a colour asks for: the film first, then what somebody typed, then a typical kind of work.</summary>
public static class ColourNeeds
{
    /// <summary>Edges of a film are read to a pixel or so either way.</summary>
    private const double PixelsOfDoubt = 1;

    /// <summary>A figure told by phone is seldom better than this share either way. Common practice, no source.</summary>
    private const double TypedDoubt = 0.15;

    public static ArtworkNeeds Of(JobColour colour)
    {
        if (colour.Film is { } film)
            return OfFilm(film);
        var typical = colour.Kind is { } kind ? TypicalNeeds.Of(kind) : TypicalNeeds.Unknown;
        return colour.Needs is { } typed ? Typed(typed, typical, colour) : typical with { Notes = [Assumed(colour)] };
    }

    private static ArtworkNeeds OfFilm(FilmMeasurement film)
    {
        var pixelUm = 25_400 / film.Dpi;
        var finest = film.Halftones.Count > 0 ? film.Halftones.MaxBy(zone => zone.RulingLpi) : null;
        var dot = Least(film.Halftones.Select(zone => zone.SmallestDotUm));
        var hole = Least(film.Halftones.Select(zone => zone.SmallestHoleUm));
        // Line work that was searched and is nowhere fine asks no more than this of any stencil; a halftone asks by its dots.
        double? coarse = film.Halftones.Count > 0 ? null : film.WidestLookedForUm;
        return new ArtworkNeeds
        {
            FinestLineUm = Measured(Least([film.FinestImage?.WidthUm, film.FinestDot?.DiameterUm]) ?? coarse),
            NarrowPlaces = film.FinestImage?.Places ?? [],
            FinestGapUm = Measured(film.FinestGap?.WidthUm ?? coarse),
            RulingLpi = finest is null ? null : Estimate.Within(finest.RulingLpi, 0.002, Ground.MeasuredHere),
            AngleDegrees = finest?.AngleDegrees,
            SmallestDotUm = Measured(dot),
            SmallestHoleUm = Measured(hole),
            CoveragePercent = CoverageOf(film, PixelsOfDoubt * pixelUm),
            FilmAreaCm2 = Estimate.Exact(film.WidthMm * film.HeightMm / 100, Ground.MeasuredHere),
            FilmWidthMm = film.WidthMm,
            FilmHeightMm = film.HeightMm,
            Notes = [.. FilmRemarks.Of(film).Concat(NothingNarrow(film)).Select(remark => new Note($"Film {film.File}: {remark}"))],
        };

        Estimate? Measured(double? widthUm) => widthUm is not { } um ? null : new Estimate(
            um, Math.Max(um / 2, um - (PixelsOfDoubt * pixelUm)), um + (PixelsOfDoubt * pixelUm), Ground.MeasuredHere);
    }

    /// <summary>What of line work is taken as wide as was looked, for nothing narrower was found: the figure is the least it can be, not a width that was seen.</summary>
    private static IEnumerable<string> NothingNarrow(FilmMeasurement film)
    {
        if (film.Halftones.Count > 0)
            yield break;
        string[] what = [.. new[] { film.FinestImage is null && film.FinestDot is null ? "line" : null, film.FinestGap is null ? "gap" : null }.OfType<string>()];
        if (what.Length > 0)
            yield return $"no {string.Join(" and no ", what)} narrower than {Figures.Whole(film.WidestLookedForUm)} µm is on it, so its finest is at least that; it is planned for as if it were so fine, which asks no less of mesh and stencil.";
    }

    /// <summary>
    /// A part of width w that is read wrong by a width d has its area wrong by the share d / w; the film's own widths say how much of
    /// it is how wide. docs/engines/plans.md, equation 1.
    /// </summary>
    private static Estimate CoverageOf(FilmMeasurement film, double doubtUm)
    {
        var (upTo, told, doubt) = (0.0, 0.0, 0.0);
        foreach (var share in film.ImageWidths)
        {
            doubt += (share.AreaPercent - told) / 100 * Wrong((upTo + share.UpToUm) / 2);
            (upTo, told) = (share.UpToUm, share.AreaPercent);
        }

        doubt += (100 - told) / 100 * Wrong(upTo > 0 ? upTo : FinestFeature.WidestUm);
        return Estimate.Within(film.CoveragePercent, doubt, Ground.MeasuredHere).Map(percent => Math.Min(percent, 100));

        double Wrong(double widthUm) => Math.Min(1, doubtUm / widthUm);
    }

    private static ArtworkNeeds Typed(TypedNeeds typed, ArtworkNeeds typical, JobColour colour)
    {
        var ruling = typed.RulingLpi is { } lpi ? Told(lpi) : typical.RulingLpi;
        var dot = typed.RulingLpi is { } typedLpi
            ? Estimate.WithinFactor(Halftones.DotDiameterUm(typedLpi, LightestToneAssumedPercent), 1.4, Ground.CommonPractice)
            : typical.SmallestDotUm;
        var notes = new List<Note>
        {
            new($"{colour.Name}: figures as told, not measured, are taken as right to {TypedDoubt:0 %} either way.", Ground.CommonPractice),
        };
        if (typed.RulingLpi is not null)
            notes.Add(new Note($"{colour.Name}: the lightest tone of the halftone is taken as {LightestToneAssumedPercent} %.", Ground.CommonPractice));
        if (typed is { FinestLineUm: null, RulingLpi: null } || typed.CoveragePercent is null || typed.AreaCm2 is null)
            notes.Add(Assumed(colour));
        return new ArtworkNeeds
        {
            FinestLineUm = typed.FinestLineUm is { } line ? Told(line) : typical.FinestLineUm,
            FinestGapUm = typed.FinestGapUm is { } gap ? Told(gap) : typed.FinestLineUm is { } sameAsLine ? Told(sameAsLine) : typical.FinestGapUm,
            RulingLpi = ruling,
            SmallestDotUm = dot,
            CoveragePercent = typed.CoveragePercent is { } share
                ? Told(share).Map(percent => Math.Min(percent, 100))
                : typical.CoveragePercent,
            FilmAreaCm2 = typed.AreaCm2 is { } area ? Told(area) : typical.FilmAreaCm2,
            Notes = notes,
        };
    }

    /// <summary>Lightest tone of a halftone that nobody has measured. Common practice, no source. [%]</summary>
    private const double LightestToneAssumedPercent = 5;

    private static Note Assumed(JobColour colour) => new(
        colour.Kind is { } kind
            ? $"{colour.Name}: no film; what is not given is assumed as usual for {TypicalNeeds.Words(kind)}."
            : $"{colour.Name}: no film and no kind of work; what is not given is assumed as for a full front in spot colour.",
        Ground.CommonPractice);

    private static Estimate Told(double value) => Estimate.Within(value, TypedDoubt, Ground.CommonPractice);

    private static double? Least(IEnumerable<double?> values) => values.Where(v => v is not null).Min();
}
