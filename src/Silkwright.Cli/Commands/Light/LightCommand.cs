using System.CommandLine;
using Silkwright.Cli.Printing;
using Silkwright.Contracts;
using Silkwright.Estimates;
using Silkwright.Light;

namespace Silkwright.Cli.Commands.Light;

/// <summary><c>silkwright light</c>: light in layers and beside a film's edge.</summary>
internal static class LightCommand
{
    /// <summary>Photons from which the work is long enough to be watched.</summary>
    private const long PhotonsWatched = 10_000_000;

    private const int MostThreads = 1024;

    public static Command Create(Surroundings surroundings) => new("light", "Where light goes in a coat, computed photon by photon.")
    {
        Slab(surroundings),
        EdgeVerb.Create(surroundings),
        SurfaceVerb.Create(surroundings),
    };

    private static Verb Slab(Surroundings surroundings)
    {
        var verb = new Verb("slab", "How much of a beam flat layers throw back, let through and absorb, with the standard error of each share.")
        {
            Examples =
            [
                ("silkwright light slab --mua 10/cm --mus 90/cm --g 0.75 --n 1 --thickness 200um --photons 1e6 --seed 1", "a slab that the handbooks have: 0.09739 back, 0.66096 through"),
                ("silkwright light slab --mua 2/cm --mus 120/cm --g 0.8 --n 1.5 --thickness 40um --photons 1e6 --json", "a coat on its own, for a program"),
            ],
            GoodToKnow = "Optical coefficients of real coats are not published; these are figures to compare with, not a coat of yours. Several layers: --layers FILE.csv with n,muaPerCm,musPerCm,g,thicknessUm.",
        };
        var options = new QuestionOptions(verb, SlabQuestion.Fields);
        var layers = new Option<string?>("--layers") { Description = "a table of layers in place of one: the first and the last row are what lies above and below, without a thickness", HelpName = "LAYERS.csv" };
        var threads = new Option<int?>("--threads") { Description = "how many follow photons at once; the result is the same", HelpName = "N" };
        var json = Answer.JsonOption();
        verb.Add(layers);
        verb.Add(threads);
        verb.Add(json);
        verb.SetAction(async (parse, cancel) =>
        {
            var path = parse.GetValue(layers);
            var table = path is null ? null : await InputFile.ReadTextAsync(path, "a table of layers", cancel, InputFile.MostTableBytes);
            var slab = SlabQuestion.Read(options.Given(parse), table, path is null ? "" : Path.GetFileName(path));
            if (parse.GetValue(threads) is < 1 or > MostThreads)
                throw new InputProblemException(new Problem("So many threads there cannot be.", "--threads", $"Give 1 to {MostThreads}, or leave it out: one a core."));
            var many = parse.GetValue(threads) ?? Environment.ProcessorCount;
            var begun = surroundings.Time.GetTimestamp();
            Task<SlabResult> Follow(IProgress<double>? progress) => Task.Run(() => SlabTransport.Of(slab, many, progress, cancel), cancel);
            var result = slab.Photons < PhotonsWatched ? await Follow(null) : await FilmWatch.RunAsync(surroundings, ["photons"], "following", progress => Follow(progress[0]));
            var seconds = surroundings.Time.GetElapsedTime(begun).TotalSeconds;
            if (parse.GetValue(json))
                Answer.WriteJson(SlabDocument.Of(slab, result, seconds, many), surroundings);
            else
                SlabTable.Print(slab, result, Answer.Console(surroundings));
            return ExitCode.Done;
        });
        return verb;
    }
}
