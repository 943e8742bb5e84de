using System.CommandLine;
using System.Text.Json.Nodes;
using Silkwright.Cli.Printing;
using Silkwright.Contracts;
using Silkwright.Estimates;
using Silkwright.Plans;
using Spectre.Console;

namespace Silkwright.Cli.Commands.Coat;

/// <summary><c>silkwright coat</c>: what gauge readings say of coats.</summary>
internal static class CoatCommand
{
    public static Command Create(Surroundings surroundings) => new("coat", "How thick a coat turns out, learnt from gauge readings.")
    {
        Predict(surroundings),
        Aim(surroundings),
        Next(surroundings),
        Readings(surroundings),
        CoatExperienceVerb.Create(surroundings),
        CoatKeepVerb.Create(surroundings),
        CoatWithdrawVerb.Create(surroundings),
    };

    private static Verb Predict(Surroundings surroundings)
    {
        var verb = new Verb("predict", "The thickness each coat of a table will read, learnt from the readings of any shops together.")
        {
            Examples =
            [
                ("silkwright coat predict --readings demo/coat-readings.csv --cases demo/coat-cases.csv", "three shops' readings; who coats thick, and how sure it is"),
                ("silkwright coat predict --readings demo/coat-readings.csv --cases demo/coat-cases.csv --picture coats.svg", "and drawn: each reading beside what the others say of it, and how far each group is drawn to its like"),
                ("silkwright coat predict --readings demo/coat-readings.csv --cases demo/coat-cases.csv --without \"Cellar Prints\" --json", "a shop that shares nothing, for a program"),
            ],
            GoodToKnow = "Nine of ten new readings fall inside the interval. Between shops only what they have in common is learnt; a shop without readings is told what others' shops are like.",
        };
        var (readings, cases, without) = (ReadingsOption(), CasesOption(), WithoutOption());
        verb.Add(readings);
        verb.Add(cases);
        verb.Add(without);
        var experience = ExperienceFiles.Option();
        verb.Add(experience);
        var picture = CoatPictures.Option();
        verb.Add(picture);
        return Complete(
            verb, surroundings,
            (parse, cancel) => CoatPictures.DrawnAsync(parse.GetValue(picture), async () => CoatQuestion.Answer(await ReadingsAsync(parse.GetValue(readings)!, cancel), await CasesAsync(parse.GetValue(cases)!, cancel), parse.GetValue(without), await ExperienceFiles.TogetherAsync(parse.GetValue(experience), cancel), cancel), cancel),
            CoatDocument.Of, CoatTables.Print);
    }

    private static Verb Aim(Surroundings surroundings)
    {
        var verb = new Verb("aim", "The shortest strokes for a wanted thickness, with this shop's people and troughs, the chance to land, and the emulsion it takes.")
        {
            Examples =
            [
                ("silkwright coat aim --wanted 14um --emulsion \"Copper dual\" --count 61/cm --thread 64um --shop \"Harbour Shirts\" --readings demo/coat-readings.csv", "whose hand and trough, how many strokes"),
                ("silkwright coat aim --wanted 60um --tolerance 10um --emulsion thick --solids 48% --count 43/cm --thread 80um --json", "before any reading; face coats where they are needed"),
                ("silkwright coat aim --wanted 12um --emulsion \"Avocet 50\" --count 61/cm --thread 64um --data data", "for the kept shop, as /coat answers"),
                ("silkwright coat aim --wanted 14um --emulsion \"Copper dual\" --count 61/cm --thread 64um --experience demo/coat-experience.json", "a shop without readings, begun from what others' taught"),
            ],
            GoodToKnow = "The chance is for one screen's own thickness. Read the first screen: it tells more than any table.",
        };
        var options = new QuestionOptions(verb, CoatAimQuestion.Fields);
        var readings = new Option<string?>("--readings") { Description = "a table of readings, as coat predict takes them (optional)", HelpName = "READINGS.csv" };
        var experience = ExperienceFiles.Option();
        var data = new Option<string?>("--data") { Description = "the folder a shop is kept in: out of its people, troughs and readings, as /coat answers (optional)", HelpName = "FOLDER" };
        verb.Add(readings);
        verb.Add(experience);
        verb.Add(data);
        return Complete(
            verb, surroundings,
            async (parse, cancel) => parse.GetValue(data) is { } folder
                ? CoatAimQuestion.Of(options.Given(parse), await KeptShopAsync(folder, parse.GetValue(readings) is null && parse.GetValue(experience) is not { Length: > 0 }, surroundings, cancel))
                : CoatAimQuestion.Answer(options.Given(parse), parse.GetValue(readings) is { } path ? await ReadingsAsync(path, cancel) : [], await ExperienceFiles.TogetherAsync(parse.GetValue(experience), cancel), cancel),
            CoatAimDocument.Of, CoatTables.Print);
    }

    /// <summary>The shop of a folder, its readings and what it took in of others' with it.</summary>
    /// <exception cref="InputProblemException">There is none, or other readings are named beside it.</exception>
    private static async Task<Shop> KeptShopAsync(string folder, bool alone, Surroundings surroundings, CancellationToken cancel) => alone
        ? await CoatExperienceVerb.KeptAsync(folder, surroundings, cancel)
        : throw new InputProblemException(new Problem("Other readings are named beside the kept shop.", "--data", "Leave --data out, or --readings and --experience; coat keep takes experience in for good."));

    private static Verb Next(Surroundings surroundings)
    {
        var verb = new Verb("next", "The one coat to read now: the reading that narrows most, by minute, what all the coats to come will be.")
        {
            Examples =
            [
                ("silkwright coat next --readings demo/coat-readings.csv --cases demo/coat-cases.csv", "tomorrow's coats, the best reading first"),
                ("silkwright coat next --readings demo/coat-readings.csv --cases demo/coat-cases.csv --without \"Cellar Prints\" --json", "a shop that shares nothing; every coat's interval before and after, for a program"),
            ],
            GoodToKnow = "A reading tells of its own coat most, and of all that share its shop, hand, trough, emulsion or mesh.",
        };
        var (readings, cases, without) = (ReadingsOption(), CasesOption(), WithoutOption());
        verb.Add(readings);
        verb.Add(cases);
        verb.Add(without);
        var experience = ExperienceFiles.Option();
        verb.Add(experience);
        return Complete(
            verb, surroundings,
            async (parse, cancel) => CoatNextQuestion.Answer(
                await ReadingsAsync(parse.GetValue(readings)!, cancel), await CasesAsync(parse.GetValue(cases)!, cancel), parse.GetValue(without), await ExperienceFiles.TogetherAsync(parse.GetValue(experience), cancel), cancel),
            CoatNextDocument.Of, CoatTables.Print);
    }

    private static Verb Readings(Surroundings surroundings)
    {
        var verb = new Verb("readings", "How many readings bring their mean as near to the truth as is wanted.")
        {
            Examples =
            [
                ("silkwright coat readings --wanted 1um --readings demo/coat-readings.csv", "how often to read a place"),
                ("silkwright coat readings --wanted 0.1mil --readings demo/coat-readings.csv --json", "the wish in mil, for a program"),
            ],
            GoodToKnow = "Read one place of a screen two or three times, with others between: only so the gauge shows how far it repeats (columns screen, point and repeat).",
        };
        var (readings, wanted) = (ReadingsOption(), new Option<string>("--wanted") { Description = "half width of the interval the mean should have: 2um, 0.1mil", HelpName = "X", Required = true });
        verb.Add(readings);
        verb.Add(wanted);
        return Complete(
            verb, surroundings,
            async (parse, cancel) => CoatReadingsQuestion.Answer(await ReadingsAsync(parse.GetValue(readings)!, cancel), WantedUm(parse.GetValue(wanted)!), cancel),
            CoatReadingsDocument.Of, CoatTables.Print);
    }

    private static Option<string> ReadingsOption() => new("--readings") { Description = $"a table of readings: {string.Join(',', CoatTable.Columns)},eomUm; it may have {string.Join(", ", CoatTable.Optional)} too", HelpName = "READINGS.csv", Required = true };

    private static Option<string> CasesOption() => new("--cases") { Description = "a table of the coats asked about: the same columns without eomUm", HelpName = "CASES.csv", Required = true };

    private static Option<string[]> WithoutOption() => new("--without") { Description = "a shop that shares nothing: it teaches nobody else (may be given again)", HelpName = "SHOP", AllowMultipleArgumentsPerToken = false };

    internal static async Task<IReadOnlyList<CoatRow>> ReadingsAsync(string path, CancellationToken cancel) =>
        CoatTable.Readings(await InputFile.ReadTextAsync(path, "a table of readings", cancel, InputFile.MostTableBytes), Path.GetFileName(path));

    private static async Task<IReadOnlyList<CoatRow>> CasesAsync(string path, CancellationToken cancel) =>
        CoatTable.Cases(await InputFile.ReadTextAsync(path, "a table of coats", cancel, InputFile.MostTableBytes), Path.GetFileName(path));

    private static double WantedUm(string text)
    {
        var problems = new ProblemList();
        var um = QuantityText.Read(text, QuantityKind.Thickness, "--wanted", problems);
        problems.ThrowIfAny();
        return um!.Value;
    }

    /// <summary>A verb that reads files before it asks.</summary>
    private static Verb Complete<T>(
        Verb verb, Surroundings surroundings, Func<ParseResult, CancellationToken, Task<T>> answer, Func<T, JsonObject> document, Action<T, IAnsiConsole> table)
    {
        var json = Answer.JsonOption();
        verb.Add(json);
        verb.SetAction(async (parse, cancel) =>
        {
            var result = await answer(parse, cancel);
            if (parse.GetValue(json))
                Answer.WriteJson(document(result), surroundings);
            else
                table(result, Answer.Console(surroundings));
            return ExitCode.Done;
        });
        return verb;
    }
}
