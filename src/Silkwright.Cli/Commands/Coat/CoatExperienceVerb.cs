using System.CommandLine;
using System.Text;
using Silkwright.Cli.Printing;
using Silkwright.Contracts;
using Silkwright.Estimates;
using Silkwright.Plans;
using Silkwright.Records.Shops;

namespace Silkwright.Cli.Commands.Coat;

/// <summary><c>silkwright coat experience</c>: what readings taught, to be given to other shops.</summary>
internal static class CoatExperienceVerb
{
    public static Verb Create(Surroundings surroundings)
    {
        var verb = new Verb("experience", "What readings taught of any shop's coats, without the readings: a file for other shops to start from. Adds up several such files.")
        {
            Examples =
            [
                ("silkwright coat experience --readings demo/coat-readings.csv --without \"Cellar Prints\" --out experience.json", "what two shops taught; the third shares nothing"),
                ("silkwright coat experience demo/coat-experience.json --readings demo/coat-readings.csv --out together.json", "a file that came from elsewhere added up with one's own; one that holds the same readings is refused"),
                ("silkwright coat experience --data data --out ours.json", "of a kept shop, unless its document says sharesExperience: false"),
            ],
            GoodToKnow = "A shop uses it with --experience, at coat predict, aim and next and at plan. A shop's newer file takes the place of its older: do not add up both.",
        };
        var files = new Argument<string[]>("EXPERIENCE.json") { Description = "files to add up (optional)", Arity = ArgumentArity.ZeroOrMore };
        var readings = new Option<string?>("--readings") { Description = "a table of readings, as coat predict takes them", HelpName = "READINGS.csv" };
        var without = new Option<string[]>("--without") { Description = "a shop of the readings that shares nothing (may be given again)", HelpName = "SHOP", AllowMultipleArgumentsPerToken = false };
        var shop = new Option<string?>("--shop") { Description = "a shop with its readings, as a file", HelpName = "SHOP.json" };
        var data = new Option<string?>("--data") { Description = "the folder a shop keeps its readings in", HelpName = "FOLDER" };
        var target = new Option<string?>("--out") { Description = "the file to write", HelpName = "experience.json" };
        var json = Answer.JsonOption();
        verb.Add(files);
        verb.Add(readings);
        verb.Add(without);
        verb.Add(shop);
        verb.Add(data);
        verb.Add(target);
        verb.Add(json);
        verb.SetAction(async (parse, cancel) =>
        {
            var (table, document, folder, write) = (parse.GetValue(readings), parse.GetValue(shop), parse.GetValue(data), parse.GetValue(target));
            if (new[] { table, document, folder }.Count(given => given is not null) > 1)
                throw new InputProblemException(new Problem("Readings are named more than once.", "--readings, --shop, --data", "Give one of the three; add the others' files up afterwards."));
            if (parse.GetValue(without) is { Length: > 0 } && table is null)
                throw new InputProblemException(new Problem("There is no table for it to be left out of.", "--without", "Give --readings; a shop's document says sharesExperience: false."));
            foreach (var read in new[] { table, document }.OfType<string>().Where(_ => write is not null))
                OutputFile.RefuseInput(write!, read, "--out");
            var others = await ExperienceFiles.ReadAsync(parse.GetValue(files), cancel);
            var told = document is not null ? ShopReader.Read(await InputFile.ReadTextAsync(document, "a shop", cancel), Path.GetFileName(document))
                : folder is not null ? await KeptAsync(folder, surroundings, cancel) : null;
            var answer = told is not null
                ? CoatExperienceQuestion.Of(told, others, cancel)
                : CoatExperienceQuestion.Answer(table is null ? null : await CoatCommand.ReadingsAsync(table, cancel), parse.GetValue(without) ?? [], others, cancel);
            var made = CoatExperienceDocument.Of(answer.Experience);
            if (write is not null)
                await OutputFile.WriteAsync(write, Encoding.UTF8.GetBytes(made.ToJsonString(DocumentJson.Options) + "\n"), cancel);
            if (parse.GetValue(json))
                Answer.WriteJson(made, surroundings);
            else
                CoatTables.Print(answer, Answer.Console(surroundings));
            return ExitCode.Done;
        });
        return verb;
    }

    internal static async Task<Shop> KeptAsync(string folder, Surroundings surroundings, CancellationToken cancel)
    {
        var store = await RecordsFolder.OpenAsync(folder, surroundings, cancel);
        return await store.Shops.CurrentAsync(cancel: cancel) is { } kept
            ? await KeptShop.OfAsync(store, kept, cancel)
            : throw new InputProblemException(ShopRecords.NoShop(null));
    }
}
