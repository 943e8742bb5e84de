using System.CommandLine;
using Silkwright.Cli.Commands.Catalogue;
using Silkwright.Cli.Commands.Plan;
using Silkwright.Cli.Printing;
using Silkwright.Estimates;
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
                ("silkwright shelf --shop demo/shop.json --jobs demo/jobs", "out of a shop's own jobs, every cost from the engines; films are measured"),
                ("silkwright shelf --data data", "out of the jobs kept in a data folder, each month of the past a scenario"),
                ("silkwright shelf --shop demo/shop.json --jobs demo/jobs --catalogue demo/catalogue.csv", "with a catalogue's emulsions as ones to try"),
                ("silkwright shelf demo/shelf.json --json", "for a program: keep, assignments, monthlyCost, bound, gapPercent"),
            ],
            GoodToKnow = "The answer is no better than the costs in the case: a screen's cost with an emulsion takes in its waste, its time and its remakes (docs/schema/shelf-case.json, docs/engines/shelf.md).",
        };
        var file = new Argument<string?>("CASE.json")
        {
            Description = "emulsions with what keeping them costs, jobs with what a screen costs with each; or name a shop and its jobs instead",
            Arity = ArgumentArity.ZeroOrOne,
        };
        var shop = new Option<string?>("--shop") { Description = "the shop, as a file: its emulsions are weighed", HelpName = "SHOP.json" };
        var data = new Option<string?>("--data") { Description = "the folder a shop keeps its records in; without --jobs, the jobs kept there count in the month of their date", HelpName = "FOLDER" };
        var jobs = new Option<string?>("--jobs") { Description = "a folder of jobs of a usual month; each says its timesPerMonth, or comes once", HelpName = "FOLDER" };
        var most = new Option<int?>("--most") { Description = "the most emulsions to keep", HelpName = "N" };
        var json = Answer.JsonOption();
        verb.Add(file);
        verb.Add(shop);
        verb.Add(data);
        verb.Add(jobs);
        verb.Add(most);
        var catalogue = new CatalogueOptions(verb);
        verb.Add(json);
        verb.SetAction(async (parse, cancel) =>
        {
            var (shelf, answer) = (parse.GetValue(file), parse.GetValue(jobs)) switch
            {
                ({ } path, null) => await OfCaseAsync(path, surroundings, cancel),
                (null, var folder) when folder is not null || parse.GetValue(data) is not null => await OfShopAsync(
                    folder, await PlanSources.OpenAsync(parse.GetValue(shop), parse.GetValue(data), surroundings, cancel, store => catalogue.AskedAsync(parse, store, cancel)), parse.GetValue(most), surroundings, cancel),
                _ => throw new InputProblemException(new Problem(
                    "There must be a case, or the jobs of a shop, and not both.", "command line", "Write CASE.json, or --jobs FOLDER with --shop SHOP.json, or --data FOLDER for the jobs kept there.")),
            };
            if (parse.GetValue(json))
                Answer.WriteJson(ShelfDocument.Of(answer), surroundings);
            else
                ShelfTable.Print(shelf, answer, Answer.Console(surroundings));
            return ExitCode.Done;
        });
        return verb;
    }

    private static async Task<(ShelfCase Case, ShelfAnswer Answer)> OfCaseAsync(string path, Surroundings surroundings, CancellationToken cancel)
    {
        var shelf = ShelfReader.Read(await InputFile.ReadTextAsync(path, "a case", cancel, InputFile.MostTableBytes), Path.GetFileName(path));
        return (shelf, await ChooseAsync(shelf, Path.GetFileName(path), surroundings, cancel));
    }

    /// <param name="folder">The jobs of a usual month; none: those on record, month by month.</param>
    private static async Task<(ShelfCase Case, ShelfAnswer Answer)> OfShopAsync(
        string? folder, PlanSources sources, int? most, Surroundings surroundings, CancellationToken cancel)
    {
        if (folder is not null && !Directory.Exists(folder))
            throw new InputProblemException(new Problem("There is no such folder.", folder, "Name the folder that holds the jobs' files."));
        if (sources.Shop.Emulsions.Count == 0)
            throw new InputProblemException(new Problem("The shop has no emulsions to choose from.", "--shop", "Name a shop whose emulsions are listed (docs/schema/shop.json)."));
        if (most is < 1)
            throw new InputProblemException(new Problem("At least one emulsion must be kept.", "--most", "Give 1 or more."));
        var (shelf, answer) = folder is null ? await OfHistoryAsync(sources, most, surroundings, cancel) : await OfJobsAsync(folder, sources, most, surroundings, cancel);
        return (shelf, answer with { Notes = [.. answer.Notes, .. sources.Notes] });
    }

    private static async Task<(ShelfCase Case, ShelfAnswer Answer)> OfJobsAsync(
        string folder, PlanSources sources, int? most, Surroundings surroundings, CancellationToken cancel)
    {
        var work = new List<ShelfWork>();
        foreach (var path in Directory.EnumerateFiles(folder, "*.json").Order(StringComparer.Ordinal))
            work.Add(await sources.WorkAsync(path, surroundings, cancel));
        return ShopShelf.Choose(work, sources.Shop, most, surroundings.Time, sources.OnShelf, cancel);
    }

    private static async Task<(ShelfCase Case, ShelfAnswer Answer)> OfHistoryAsync(PlanSources sources, int? most, Surroundings surroundings, CancellationToken cancel)
    {
        var (work, leftOut) = await sources.HistoryAsync(surroundings, cancel);
        var (shelf, answer) = ShelfHistory.Of(work, surroundings.Today).Choose(sources.Shop, most, surroundings.Time, sources.OnShelf, cancel);
        return (shelf, answer with { Notes = [.. answer.Notes, .. leftOut.Select(job => new Note($"{job} is left out: a film it names was never given here."))] });
    }

    private static Task<ShelfAnswer> ChooseAsync(ShelfCase shelf, string name, Surroundings surroundings, CancellationToken cancel)
    {
        Task<ShelfAnswer> Choose(IProgress<double>? progress) => Task.Run(() => ShelfChoice.Of(shelf, surroundings.Time, progress, cancel), cancel);

        return shelf.Jobs.Sum(job => job.Costs.Count) < CostsWatched
            ? Choose(null)
            : FilmWatch.RunAsync(surroundings, [name], "choosing for", progress => Choose(progress[0]));
    }
}
