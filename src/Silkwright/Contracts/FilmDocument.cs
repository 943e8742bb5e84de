using System.Globalization;
using System.Text.Json.Nodes;
using Silkwright.Artwork;
using Silkwright.Estimates;
using Silkwright.Mesh;
using Silkwright.Plans;

namespace Silkwright.Contracts;

/// <summary>What films demand as other programs read it: silkwright/film/1, docs/schema/film.json.</summary>
public static class FilmDocument
{
    /// <summary>Measured films of one job.</summary>
    /// <param name="films">Each with the speed of its measuring [Mpx/s]; none where the measurement was kept from before.</param>
    /// <param name="frame">A frame they are to fit.</param>
    /// <param name="mesh">A mesh that is to hold them.</param>
    /// <param name="spots">What is at the spot asked for, a film each; none where none is asked for.</param>
    /// <remarks>One film's fields also stand at the top of the document, so that a program with one film need not look in the list.</remarks>
    public static JsonObject Of(IReadOnlyList<(FilmMeasurement Film, double? MegapixelsPerSecond)> films, Frame? frame = null, WovenMesh? mesh = null, IReadOnlyList<FilmSpot>? spots = null)
    {
        var together = Together([.. films.Select(one => one.Film)], frame);
        var document = DocumentJson.Start("film");
        if (films is [var only])
        {
            foreach (var (name, value) in Film(only.Film, only.MegapixelsPerSecond, mesh, spots?[0]))
                document[name] = value?.DeepClone();
        }

        document["films"] = new JsonArray([.. films.Select((one, i) => (JsonNode)Film(one.Film, one.MegapixelsPerSecond, mesh, spots?[i]))]);
        if (films.Count > 1 || frame is not null)
            document["job"] = FilmsTogetherDocument.Of(together);
        document["notes"] = DocumentJson.Of([.. films.SelectMany(one => NotesOn(one.Film)), .. TogetherNotes(films.Count, together)]);
        return document;
    }

    /// <summary>The films held against each other, and against a frame where one is given.</summary>
    public static FilmsTogether Together(IReadOnlyList<FilmMeasurement> films, Frame? frame = null) => FilmsCheck.Of(films, frame);

    /// <summary>What a reader of the figures should know: what the reader of the film remarked, and what could not be had.</summary>
    public static IEnumerable<Note> NotesOn(FilmMeasurement film)
    {
        foreach (var remark in FilmRemarks.Of(film))
            yield return new Note($"{film.File}: {remark}");
        if (BareFilm.Words(film) is not null)
        {
            yield return new Note($"{film.File}: finestImage, finestGap and finestDot are left out: there is no artwork.");
            yield break;
        }

        var (than, outside) = (string.Create(CultureInfo.InvariantCulture, $"{film.WidestLookedForUm / 1000:0.0#} mm"), film.Halftones.Count > 0 ? " outside the halftones" : "");
        if (film.FinestImage is null)
            yield return new Note($"{film.File}: finestImage is left out: nothing narrower than {than} prints{outside}.");
        if (film.FinestGap is null)
            yield return new Note($"{film.File}: finestGap is left out: no gap narrower than {than}{outside}.");
        if (film.FinestDot is null)
            yield return new Note($"{film.File}: finestDot is left out: no isolated dot{outside}.");
    }

    private static IEnumerable<Note> TogetherNotes(int films, FilmsTogether together)
    {
        if (films > 1 && together.Register.Count == 0)
            yield return new Note("registerOffsetsMm is empty: fewer than two films have register marks that agree.");
        if (films > 1)
            yield return new Note(ReadingSide.Of(together));
        if (together.FitsFrame is null)
            yield return new Note("fitsFrame is left out: no frame is given.");
    }

    private static JsonObject Film(FilmMeasurement film, double? megapixelsPerSecond, WovenMesh? mesh, FilmSpot? spot)
    {
        var document = new JsonObject
        {
            ["file"] = film.File,
            ["words"] = Words(film, mesh),
            ["widthPx"] = film.WidthPx,
            ["heightPx"] = film.HeightPx,
            ["dpi"] = film.Dpi,
            ["widthMm"] = film.WidthMm,
            ["heightMm"] = film.HeightMm,
            ["coveragePercent"] = film.CoveragePercent,
            ["components"] = Counts(film.Components),
            ["specks"] = Counts(film.Specks),
        };
        document.AddIfThere("finestImage", Finest(film.FinestImage));
        document.AddIfThere("finestGap", Finest(film.FinestGap));
        document.AddIfThere("finestDot", film.FinestDot is not { } dot ? null : new JsonObject
        {
            ["diameterUm"] = dot.DiameterUm,
            ["xMm"] = dot.XMm,
            ["yMm"] = dot.YMm,
        });
        document["imageWidths"] = new JsonArray([.. film.ImageWidths.Select(width => (JsonNode)new JsonObject
        {
            ["upToUm"] = width.UpToUm,
            ["areaPercent"] = width.AreaPercent,
        })]);
        document["halftones"] = new JsonArray([.. film.Halftones.Select(zone => (JsonNode)Halftone(zone))]);
        document.AddIfThere("finerThanMesh", mesh is null ? null : Finer(FilmOnMesh.Of(film, mesh)));
        document["rightReading"] = ReadingSide.Words;
        document.AddIfThere("at", spot is null ? null : FilmSpotDocument.Part(spot, SpotOnMesh(spot, mesh)));
        document.AddIfThere("megapixelsPerSecond", megapixelsPerSecond);
        return document;
    }

    /// <summary>A spot held against a mesh; none where none is given.</summary>
    public static SpotVerdict? SpotOnMesh(FilmSpot spot, WovenMesh? mesh) => mesh is null ? null : SpotVerdict.Of(spot, HeldWidths.Of(mesh));

    /// <summary>What a film demands in one sentence, metric.</summary>
    public static string Words(FilmMeasurement film, WovenMesh? mesh) => FilmWords.Of(
        film, mesh,
        um => string.Create(CultureInfo.InvariantCulture, $"{um / 1000:0.000} mm"),
        mm => string.Create(CultureInfo.InvariantCulture, $"{mm:0.0} mm"));

    private static JsonObject Finer(FilmOnMesh on) => new()
    {
        ["countPerCm"] = on.Mesh.Fabric.CountPerCm,
        ["threadUm"] = on.Mesh.Fabric.ThreadUm,
        ["smallestLineUm"] = on.Mesh.SmallestLineUm.Value,
        ["smallestDotUm"] = on.Mesh.SmallestDotUm.Value,
        ["lines"] = on.Lines,
        ["gaps"] = on.Gaps,
        ["mayBeMore"] = on.MayBeMore,
        ["dotZones"] = on.DotZones,
        ["holeZones"] = on.HoleZones,
    };

    private static JsonObject Counts(FilmCounts counts) => new() { ["image"] = counts.Image, ["gap"] = counts.Gap };

    private static JsonObject? Finest(FinestFeature? finest) => finest is null ? null : new JsonObject
    {
        ["widthUm"] = finest.WidthUm,
        ["places"] = new JsonArray([.. finest.Places.Select(place => (JsonNode)new JsonObject
        {
            ["xMm"] = place.XMm,
            ["yMm"] = place.YMm,
            ["widthUm"] = place.WidthUm,
        })]),
    };

    private static JsonObject Halftone(HalftoneZone zone)
    {
        var document = new JsonObject
        {
            ["xMm"] = zone.XMm,
            ["yMm"] = zone.YMm,
            ["widthMm"] = zone.WidthMm,
            ["heightMm"] = zone.HeightMm,
            ["rulingLpi"] = zone.RulingLpi,
            ["angleDegrees"] = zone.AngleDegrees,
            ["tonePercentMin"] = zone.TonePercentMin,
            ["tonePercentMax"] = zone.TonePercentMax,
        };
        document.AddIfThere("smallestDotUm", zone.SmallestDotUm);
        document.AddIfThere("smallestHoleUm", zone.SmallestHoleUm);
        document["cutDots"] = zone.CutDots;
        return document;
    }
}
