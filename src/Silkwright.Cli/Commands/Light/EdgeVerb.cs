using System.CommandLine;
using Silkwright.Cli.Printing;
using Silkwright.Contracts;
using Silkwright.Estimates;
using Silkwright.Light;

namespace Silkwright.Cli.Commands.Light;

/// <summary><c>silkwright light edge</c>: the dose beside a film's edge.</summary>
internal static class EdgeVerb
{
    /// <summary>Photons from which the work is long enough to be watched.</summary>
    private const long PhotonsWatched = 2_000_000;

    private const int MostThreads = 1024;

    public static Verb Create(Surroundings surroundings)
    {
        var verb = new Verb("edge", "The dose in a coated mesh beside a film's edge: how far under the black, how unevenly, how much behind the threads.")
        {
            Examples =
            [
                ("silkwright light edge --count 120/cm --thread 34um --mesh-colour dyed --family photopolymer --eom 8um --lamp point", "a fine dyed mesh under a point lamp"),
                ("silkwright light edge --count 43/cm --thread 80um --lamp tubes --film-between 100um", "a coarse white mesh under tubes, the film the wrong way round"),
                ("silkwright light edge demo/light-edge.json --json", "a black line, the case in a file, for a program"),
            ],
            GoodToKnow = "What real coats do with light is not published: the intervals are wide for that. Trust which case is better than which, and hold the figures against a step test.",
        };
        var file = new Argument<string?>("CASE.json") { Description = "the case as a file, in place of the options below but --threads and --json", Arity = ArgumentArity.ZeroOrOne };
        verb.Add(file);
        var options = new QuestionOptions(verb, EdgeQuestion.Fields);
        var threads = new Option<int?>("--threads") { Description = "how many follow photons at once; the result is the same", HelpName = "N" };
        var json = Answer.JsonOption();
        verb.Add(threads);
        verb.Add(json);
        verb.SetAction(async (parse, cancel) =>
        {
            var asked = await ReadAsync(parse.GetValue(file), options.Given(parse), cancel);
            if (parse.GetValue(threads) is < 1 or > MostThreads)
                throw new InputProblemException(new Problem("So many threads there cannot be.", "--threads", $"Give 1 to {MostThreads}, or leave it out: one a core."));
            var many = parse.GetValue(threads) ?? Environment.ProcessorCount;
            var begun = surroundings.Time.GetTimestamp();
            Task<EdgeAnswer> Follow(IProgress<double>? progress) => Task.Run(() => EdgeAnswer.Of(asked, many, progress, cancel), cancel);
            var answer = asked.Case.Photons < PhotonsWatched ? await Follow(null) : await FilmWatch.RunAsync(surroundings, ["photons"], "following", progress => Follow(progress[0]));
            if (parse.GetValue(json))
                Answer.WriteJson(EdgeDocument.Of(answer, surroundings.Time.GetElapsedTime(begun).TotalSeconds, many), surroundings);
            else
                EdgeTable.Print(answer, Answer.Console(surroundings));
            return ExitCode.Done;
        });
        return verb;
    }

    private static async Task<EdgeAsked> ReadAsync(string? path, GivenTexts given, CancellationToken cancel)
    {
        if (path is null)
            return EdgeQuestion.Read(given);
        foreach (var field in EdgeQuestion.Fields.Where(given.Has))
            given.Problems.Add($"{given.Where(field)} and a case in a file say the same thing in two ways.", given.Where(field), "Give one of the two.");
        given.ThrowIfAny();
        return EdgeCaseReader.Read(await InputFile.ReadTextAsync(path, "a case", cancel), Path.GetFileName(path));
    }
}
