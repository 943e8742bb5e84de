using Silkwright.Artwork;
using Silkwright.Cli.Printing;
using Silkwright.Contracts;
using Silkwright.Estimates;
using Silkwright.Film.Measuring;
using Silkwright.Mesh;
using Silkwright.Plans;
using Spectre.Console;

namespace Silkwright.Cli.Commands.Film;

/// <summary>What films demand, for people.</summary>
internal static class FilmTable
{
    /// <summary>Places told; the document has them all.</summary>
    private const int PlacesTold = 5;

    /// <param name="readings">A film each.</param>
    /// <param name="question">What was asked.</param>
    /// <param name="spots">What is at the spot asked for, a film each; none where none is asked for.</param>
    /// <param name="console">Where to.</param>
    public static void Print(IReadOnlyList<FilmReading> readings, FilmQuestion question, IReadOnlyList<FilmSpot>? spots, IAnsiConsole console)
    {
        for (var i = 0; i < readings.Count; i++)
            Print(readings[i], question.Mesh, spots?[i], readings.Count == 1, console);
        if (readings.Count > 1 || question.Frame is not null)
            Print(FilmDocument.Together([.. readings.Select(reading => reading.Measurement)], question.Frame), console);
    }

    private static void Print(FilmsTogether together, IAnsiConsole console)
    {
        console.WriteLine(together.SameSize is null ? "In the frame:" : "The films together:");
        foreach (var film in together.Register)
            Prose.Write(console, "  ", $"{PlainText.Of(film.File)} against {PlainText.Of(film.Against)}: {Hundredths(film.Offset.XMm)} mm to the right, {Hundredths(film.Offset.YMm)} mm down, turned {Hundredths(film.Offset.TurnDegrees)} degrees, by {film.Offset.Marks} register marks.");
        foreach (var remark in together.Remarks)
            Prose.Write(console, "  ", PlainText.Of(remark));
        if (together.FitsFrame == true)
            Prose.Write(console, "  ", "What prints fits the frame, with 75 mm on every side for squeegee and flow-bar (common practice).");
        if (together.SameSize is not null && together.Remarks.Count == 0)
            Prose.Write(console, "  ", "Held against each other they show nothing wrong.");
        if (together.SameSize is not null)
            Prose.Write(console, "  ", PlainText.Of(ReadingSide.Of(together)));
        console.WriteLine();
    }

    /// <summary>Nothing below a hundredth has a sign.</summary>
    private static string Hundredths(double value) => $"{Math.Round(value, 2) + 0.0:0.00}";

    private static void Print(FilmReading reading, WovenMesh? mesh, FilmSpot? spot, bool isAlone, IAnsiConsole console)
    {
        var film = reading.Measurement;
        console.WriteLine($"{PlainText.Of(film.File)}: {film.WidthPx} x {film.HeightPx} px at {Figures.Exact(film.Dpi)} dpi, {ShownUnit.Millimetres.WriteBoth(film.WidthMm)} x {ShownUnit.Millimetres.WriteBoth(film.HeightMm)}");
        Prose.Write(console, "  ", FilmDocument.Words(film, mesh));
        if (spot is not null)
            Prose.Write(console, "  ", $"At {Place(spot.XMm, spot.YMm)}: {SpotWords.Of(spot, FilmDocument.SpotOnMesh(spot, mesh), Length)}");
        var sheet = new Table { Border = TableBorder.Simple }.AddColumns("", "prints", "gap");
        sheet.AddRow("Share of the film", ShownUnit.Percent.Write(film.CoveragePercent), ShownUnit.Percent.Write(100 - film.CoveragePercent));
        sheet.AddRow("Pieces", Figures.Whole(film.Components.Image), Figures.Whole(film.Components.Gap));
        sheet.AddRow("Specks, left out", Figures.Whole(film.Specks.Image), Figures.Whole(film.Specks.Gap));
        sheet.AddRow("Finest", Width(film.FinestImage), Width(film.FinestGap));
        console.Write(sheet);
        Places("Finest line", film.FinestImage, console);
        Places("Finest gap", film.FinestGap, console);
        if (film.FinestDot is { } dot)
            console.WriteLine($"  Finest dot: {ShownUnit.Micrometres.WriteBoth(dot.DiameterUm)} at {Place(dot.XMm, dot.YMm)}");
        Halftones(film.Halftones, console);
        if (isAlone)
            Prose.Write(console, "  ", ReadingSide.Words);
        console.WriteLine($"  Measured at {Figures.Exact(reading.MegapixelsPerSecond)} megapixels a second.");
        console.WriteLine();
        Notes.Print([.. FilmDocument.NotesOn(film)], console);
    }

    private static string Width(FinestFeature? finest) => finest is null ? "none found" : ShownUnit.Micrometres.WriteBoth(finest.WidthUm);

    private static void Places(string what, FinestFeature? finest, IAnsiConsole console)
    {
        if (finest is null)
            return;
        var told = finest.Places.Take(PlacesTold).Select(place => $"{Place(place.XMm, place.YMm)} ({ShownUnit.Micrometres.Write(place.WidthUm)})");
        var more = finest.Places.Count > PlacesTold ? $"; {finest.Places.Count - PlacesTold} more" : "";
        Prose.Write(console, "  ", $"{what} at {string.Join("; ", told)}{more}. Counted from the top left.");
    }

    /// <summary>From a millimetre on nobody reads micrometres.</summary>
    private static string Length(double um) => um < 1000 ? ShownUnit.Micrometres.WriteBoth(um) : ShownUnit.Millimetres.WriteBoth(um / 1000);

    private static string Place(double xMm, double yMm) => $"{xMm:0.0}, {yMm:0.0} mm";

    private static void Halftones(IReadOnlyList<HalftoneZone> zones, IAnsiConsole console)
    {
        foreach (var zone in zones)
        {
            var dots = zone.SmallestDotUm is { } dot ? $", smallest dot {ShownUnit.Micrometres.WriteBoth(dot)}" : "";
            var holes = zone.SmallestHoleUm is { } hole ? $", smallest hole {ShownUnit.Micrometres.WriteBoth(hole)}" : "";
            Prose.Write(
                console, "  ",
                $"Halftone at {Place(zone.XMm, zone.YMm)}, {Figures.Exact(zone.WidthMm)} x {Figures.Exact(zone.HeightMm)} mm: {Figures.Exact(zone.RulingLpi)} lines/in ({Figures.Exact(zone.RulingLpi / 2.54)} /cm) at {zone.AngleDegrees:0.0} degrees, tones {Figures.Exact(zone.TonePercentMin)} to {Figures.Exact(zone.TonePercentMax)} %{dots}{holes}, {Figures.Whole(zone.CutDots)} cut dots.");
        }
    }
}
