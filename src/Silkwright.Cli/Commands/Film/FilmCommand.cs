using System.CommandLine;
using Silkwright.Artwork;
using Silkwright.Cli.Printing;
using Silkwright.Contracts;
using Silkwright.Estimates;
using Silkwright.Film.Measuring;
using Silkwright.Film.Places;

namespace Silkwright.Cli.Commands.Film;

/// <summary><c>silkwright film</c>: what films demand.</summary>
internal static class FilmCommand
{
    public static Command Create(Surroundings surroundings)
    {
        var verb = new Verb("film", "What films demand of their stencils: finest line, gap and dot with the places, halftones, coverage.")
        {
            Examples =
            [
                ("silkwright film demo/films/lantern-walk-base.tif --mesh 61/cm,64um", "one film, and what of it this mesh cannot hold"),
                ("silkwright film demo/films/night-heron-base.tif demo/films/night-heron-moon.tif --json", "the films of one job, held against each other, for a program"),
                ("silkwright film demo/films/night-heron-base.tif demo/films/night-heron-moon.tif --frame-width 580mm --frame-height 760mm", "and whether their images fit this frame"),
                ("silkwright film demo/films/night-heron-moon.tif --picture moon.png --mesh 61/cm,64um", "and drawn, with what is narrower than this mesh prints whole in red"),
                ("silkwright film demo/films/night-heron-moon.tif --mesh 61/cm,64um --at 80.4mm,402.2mm", "and how wide image or gap is at one spot, counted from the top left"),
                ("silkwright film demo/films/mill-lane-numbers.tif --dpi 1200 --polarity negative", "as if the file did not say its resolution, and clear printed"),
            ],
            GoodToKnow = "Takes TIFF (1 bit or 8 bit; uncompressed, PackBits, LZW, CCITT G4), PNG, and PDF where pdftoppm is installed. Greys are cut at the middle. Lines and gaps are right to one pixel, dots to two.",
        };
        var files = new Argument<string[]>("FILE") { Description = "films: TIFF, PNG or PDF", Arity = ArgumentArity.OneOrMore };
        verb.Add(files);
        var options = new QuestionOptions(verb, FilmQuestion.Fields);
        var picture = new Option<string?>("--picture") { Description = "draw the film against a mesh into this file (optional; .png or .svg)", HelpName = "film.png" };
        verb.Add(picture);
        var json = Answer.JsonOption();
        verb.Add(json);
        verb.SetAction(async (parse, cancel) =>
        {
            var paths = parse.GetRequiredValue(files);
            var question = FilmQuestion.Read(options.Given(parse));
            if (question.At is { } at)
                await FindAsync(paths, question.Options, at, surroundings, cancel);
            ThrowIfTwice(paths);
            var drawing = FilmPicture.Of(parse.GetValue(picture), question.Mesh, paths);
            var readings = await FilmWork.MeasureAllAsync(
                paths,
                async (i, progress, stop) => Named(paths, i, await FilmWork.MeasureAsync(paths[i], question.Options, progress, surroundings, stop)),
                surroundings, cancel);
            var spots = question.At is { } spot ? await LookAsync(paths, question.Options, spot, readings, cancel) : null;
            if (drawing is not null)
                await drawing.DrawAsync(paths[0], question.Options, cancel);
            if (parse.GetValue(json))
                Answer.WriteJson(FilmDocument.Of([.. readings.Select(reading => (reading.Measurement, (double?)reading.MegapixelsPerSecond))], question.Frame, question.Mesh, spots), surroundings);
            else
                FilmTable.Print(readings, question, spots, Answer.Console(surroundings));
            return ExitCode.Done;
        });
        return verb;
    }

    private static void ThrowIfTwice(string[] paths)
    {
        var problems = new ProblemList();
        foreach (var twice in paths.Where(path => path.Length > 0).GroupBy(Path.GetFullPath).Where(same => same.Count() > 1))
            problems.Add("This film is named twice.", twice.First(), "Name each film of the job once.");
        problems.ThrowIfAny();
    }

    /// <summary>Films of one name are told apart by their folders.</summary>
    private static FilmReading Named(string[] paths, int i, FilmReading reading) =>
        paths.Count(path => Path.GetFileName(path) == reading.Measurement.File) > 1 ? reading with { Measurement = reading.Measurement with { File = paths[i] } } : reading;

    /// <summary>Before anything is measured: a spot that is not on the film costs nobody the wait.</summary>
    private static async Task FindAsync(
        IReadOnlyList<string> paths, FilmOptions options, (double XMm, double YMm) at, Surroundings surroundings, CancellationToken cancel)
    {
        await DemoFolder.DrawIfMissingAsync(paths, surroundings, cancel);
        var problems = new ProblemList();
        foreach (var path in paths)
        {
            try
            {
                FilmSpots.ThrowIfOff(path, options, at.XMm, at.YMm);
            }
            catch (InputProblemException fault)
            {
                problems.AddRange(fault.Problems);
            }
        }

        problems.ThrowIfAny();
    }

    private static Task<FilmSpot[]> LookAsync(
        IReadOnlyList<string> paths, FilmOptions options, (double XMm, double YMm) at, FilmReading[] readings, CancellationToken cancel) =>
        Task.Run(() => paths.Select((path, i) => FilmSpots.At(path, options, at.XMm, at.YMm, readings[i].Measurement.Halftones, cancel)).ToArray(), cancel);
}
