using System.CommandLine;
using System.Globalization;
using System.Text;
using Silkwright.Cli.Printing;
using Silkwright.Estimates;
using Silkwright.Light.Surface;
using Spectre.Console;

namespace Silkwright.Cli.Commands.Light;

/// <summary><c>silkwright light surface</c>: builds the fitted light anew that exposure windows are told from.</summary>
internal static class SurfaceVerb
{
    private const int FewestPlaces = 60, MostPlaces = 20_000;

    private const long FewestPhotons = 1000, MostPhotons = 100_000_000;

    public static Verb Create(Surroundings surroundings)
    {
        var usual = SurfaceBuild.Usual;
        var verb = new Verb("surface", "Follows photons at many places of what shops have and fits what exposure windows are told from; a quarter of an hour or more.")
        {
            Examples =
            [
                ("silkwright light surface --places 100 --photons 1e4 --out rough.json", "a rough one, to see how it goes"),
            ],
            GoodToKnow = "Without --places and --photons the surface that the program carries is built again, which takes a quarter of an hour or more. The program's own surface is src/Silkwright/Light/Surface/surface.json; its tests hold it against fresh photons.",
        };
        var path = new Option<string>("--out") { Description = "the file to write", HelpName = "surface.json", Required = true };
        var places = new Option<int>("--places") { Description = $"places followed; {usual.Places} when not given", HelpName = "N", DefaultValueFactory = _ => usual.Places };
        var photons = new Option<double>("--photons") { Description = $"photons of each place; {usual.Photons} when not given", HelpName = "N", DefaultValueFactory = _ => usual.Photons };
        var seed = new Option<ulong>("--seed") { Description = "where the random numbers begin; 1 when not given", HelpName = "N", DefaultValueFactory = _ => usual.Seed };
        verb.Add(path);
        verb.Add(places);
        verb.Add(photons);
        verb.Add(seed);
        verb.SetAction(async (parse, cancel) =>
        {
            var build = new SurfaceBuild(parse.GetValue(places), (long)parse.GetValue(photons), parse.GetValue(seed));
            if (build is not { Places: >= FewestPlaces and <= MostPlaces })
                throw new InputProblemException(new Problem("A surface needs more places, or no machine could follow so many.", "--places", $"Give {FewestPlaces} to {MostPlaces}."));
            if (build is not { Photons: >= FewestPhotons and <= MostPhotons })
                throw new InputProblemException(new Problem("Photons are too few to read a dose from, or too many.", "--photons", $"Give {FewestPhotons} to {MostPhotons}."));
            OutputFile.Try(parse.GetValue(path)!);
            var surface = await FilmWatch.RunAsync(surroundings, ["photons"], "following", progress => Task.Run(() => build.Run(progress[0], cancel), cancel));
            await OutputFile.WriteAsync(parse.GetValue(path)!, Encoding.UTF8.GetBytes(SurfaceFile.Write(surface)), cancel);
            var console = Answer.Console(surroundings);
            console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{build.Places} places, {build.Photons} photons each, seed {build.Seed}; {surface.Terms} terms."));
            console.WriteLine("Nine of ten places left out of the fit lie within, of their value:");
            foreach (var (name, percent) in surface.ErrorPercent)
                console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"  {name,-26} {percent:0.0} %"));
            return ExitCode.Done;
        });
        return verb;
    }
}
