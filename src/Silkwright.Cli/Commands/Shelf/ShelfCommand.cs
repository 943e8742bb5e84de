using System.CommandLine;
using Silkwright.Cli.Printing;
using Silkwright.Scheduling.Shelf;

namespace Silkwright.Cli.Commands.Shelf;

/// <summary><c>silkwright shelf</c>: the few emulsions to keep.</summary>
internal static class ShelfCommand
{
    /// <summary>Costs from which the work is long enough to be watched: below, the answer is there first.</summary>
    private const int CostsWatched = 50_000;

    public static Command Create(Surroundings surroundings)
    {
        var verb = new Verb("shelf", "Which few emulsions to keep, and which job to make with which, so that a month costs least; with proof, and the price of every other wish.")
        {
            Examples =
            [
                ("silkwright shelf demo/shelf.json", "an invented shop: what to drop, what to try, what it saves"),
                ("silkwright shelf demo/shelf.json --json", "for a program: keep, assignments, monthlyCost, bound, gapPercent"),
            ],
            GoodToKnow = "The answer is no better than the costs in the case: a screen's cost with an emulsion takes in its waste, its time and its remakes (docs/schema/shelf-case.json, docs/engines/shelf.md).",
        };
        var file = new Argument<string>("CASE.json") { Description = "emulsions with what keeping them costs, jobs with what a screen costs with each" };
        var json = Answer.JsonOption();
        verb.Add(file);
        verb.Add(json);
        verb.SetAction(async (parse, cancel) =>
        {
            var path = parse.GetRequiredValue(file);
            var shelf = ShelfReader.Read(await InputFile.ReadTextAsync(path, "a case", cancel, InputFile.MostTableBytes), Path.GetFileName(path));
            var answer = await ChooseAsync(shelf, Path.GetFileName(path), surroundings, cancel);
            if (parse.GetValue(json))
                Answer.WriteJson(ShelfDocument.Of(answer), surroundings);
            else
                ShelfTable.Print(shelf, answer, Answer.Console(surroundings));
            return ExitCode.Done;
        });
        return verb;
    }

    private static Task<ShelfAnswer> ChooseAsync(ShelfCase shelf, string name, Surroundings surroundings, CancellationToken cancel)
    {
        Task<ShelfAnswer> Choose(IProgress<double>? progress) => Task.Run(() => ShelfChoice.Of(shelf, surroundings.Time, progress, cancel), cancel);

        return shelf.Jobs.Sum(job => job.Costs.Count) < CostsWatched
            ? Choose(null)
            : FilmWatch.RunAsync(surroundings, [name], "choosing for", progress => Choose(progress[0]));
    }
}
