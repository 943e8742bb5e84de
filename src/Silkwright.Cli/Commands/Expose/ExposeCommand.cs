using System.CommandLine;
using Silkwright.Cli.Commands.Plan;
using Silkwright.Cli.Printing;
using Silkwright.Contracts;
using Silkwright.Estimates;
using Silkwright.Exposure;
using Silkwright.Plans;

namespace Silkwright.Cli.Commands.Expose;

/// <summary><c>silkwright expose</c>: what light does to the stencil.</summary>
internal static class ExposeCommand
{
    public static Command Create(Surroundings surroundings) => new("expose", "How long to expose.")
    {
        Window(surroundings),
        Ladder(surroundings),
        Test(surroundings),
        Drift(surroundings),
        Step(surroundings),
        Fit(surroundings),
        Curve(surroundings),
    };

    private static Verb Window(Surroundings surroundings)
    {
        var verb = new Verb("window", "The least exposure that cures through, the most that holds the detail, and where to aim between.")
        {
            Examples =
            [
                ("silkwright expose window --lamp ledArray --family dualCure --count 120/cm --thread 34um --mesh-colour dyed --line 100um", "before any test: orders of magnitude, and it says so"),
                ("silkwright expose window demo/exposure-case.json --json", "a case with its step tests, for a program"),
            ],
            GoodToKnow = "Before a step test nobody knows the exposure: make one (expose ladder) and read it (expose test).",
        };
        var file = new Argument<string?>("CASE.json") { Description = "mesh, coat, emulsion, lamp, film, detail and tests (docs/schema/expose-case.json); or give the options instead", Arity = ArgumentArity.ZeroOrOne };
        verb.Add(file);
        var options = new QuestionOptions(verb, ExposureQuestion.Fields);
        return Complete(verb, surroundings, async (parse, cancel) => parse.GetValue(file) is { } path
            ? Known(await CaseAsync(path, cancel))
            : ExposureQuestion.Window(options.Given(parse)), WindowDocument.Of, WindowTable.Print);

        static (ExposureCase, ExposureWindow) Known(ExposureCase exposure) => (exposure, ExposureModel.Window(exposure));
    }

    private static Verb Ladder(Surroundings surroundings)
    {
        var verb = new Verb("ladder", "A step test to make: the fewest strips for the wanted certainty, and what to give each.")
        {
            Examples =
            [
                ("silkwright expose ladder --lamp ledArray --family dualCure --mesh-colour dyed --line 100um --coat-measured yes", "a first test, from what the trade knows"),
                ("silkwright expose ladder --lamp tubeBank --family diazo --line 200um --around 240 --setting 5 --json", "around what is exposed now, on a timer of 5 s"),
                ("silkwright expose ladder --lamp metalHalide --mesh-colour dyed --line 120um --after demo/step-test-units.csv", "the next test after one that was read"),
            ],
            GoodToKnow = "Strips on another day tell more than more strips on the same: one wash-out and one day's air move them all alike.",
        };
        var options = new QuestionOptions(verb, LadderQuestion.Fields);
        var after = new Option<string?>("--after") { Description = "strips already read, as expose test takes them (optional)", HelpName = "READINGS.csv" };
        verb.Add(after);
        return Complete(verb, surroundings, async (parse, cancel) =>
        {
            if (parse.GetValue(after) is not { } path)
                return LadderQuestion.Answer(options.Given(parse));
            var (strips, counts) = StripTable.Read(await InputFile.ReadTextAsync(path, "a table of strips", cancel), Path.GetFileName(path));
            return LadderQuestion.Answer(options.Given(parse), strips, counts);
        }, LadderDocument.Of, LadderTable.Print);
    }

    private static Verb Test(Surroundings surroundings)
    {
        var verb = new Verb("test", "A step test, read: the window it leaves, the strip that would tell most next, and how the tests of several days compare.")
        {
            Examples =
            [
                ("silkwright expose test demo/step-test.csv --lamp ledArray --family dualCure --count 140/cm --mesh-colour dyed --line 75um", "nine strips of one day"),
                ("silkwright expose test demo/step-test-units.csv --lamp metalHalide --family diazo --mesh-colour dyed --line 120um --json", "on a machine that counts units of its own"),
                ("silkwright expose test demo/exposure-case.json", "a case with the tests of many days: has the exposure drifted?"),
            ],
            GoodToKnow = "A strip that may have been damp teaches nothing: mark it (damp 1). Read wedge, squeegee side and finest line on every strip.",
        };
        var file = new Argument<string>("READINGS") { Description = $"a table (.csv) with seconds or units and any of {string.Join(", ", StripTable.Columns)}; or a case (.json)" };
        verb.Add(file);
        var options = new QuestionOptions(verb, ExposureQuestion.Fields);
        return Complete(verb, surroundings, async (parse, cancel) =>
        {
            var path = parse.GetValue(file)!;
            if (string.Equals(Path.GetExtension(path), ".json", StringComparison.OrdinalIgnoreCase))
                return StepTestQuestion.Answer(await CaseAsync(path, cancel), []);
            var (strips, counts) = StripTable.Read(await InputFile.ReadTextAsync(path, "a table of strips", cancel), Path.GetFileName(path));
            return StepTestQuestion.Answer(options.Given(parse), strips, counts);
        }, StepTestDocument.Of, StepTestTable.Print);
    }

    private static Verb Drift(Surroundings surroundings)
    {
        var verb = new Verb("drift", "A shop's step tests day by day on a control chart: has its exposure drifted, since when, by how much, and what changed then.")
        {
            Examples =
            [
                ("silkwright expose drift --shop demo/shop.json", "every emulsion, lamp and mesh with tests"),
                ("silkwright expose drift --data data --json", "out of the shop kept in a data folder"),
            ],
            GoodToKnow = "Put the day, the lamp's hours and the batch with every test: what is not told cannot be named.",
        };
        var shop = new Option<string?>("--shop") { Description = "the shop, as a file", HelpName = "SHOP.json" };
        var data = new Option<string?>("--data") { Description = "the folder a shop keeps its records in", HelpName = "FOLDER" };
        verb.Add(shop);
        verb.Add(data);
        return Complete(verb, surroundings, async (parse, cancel) =>
        {
            if (parse.GetValue(shop) is null == parse.GetValue(data) is null)
                throw new InputProblemException(new Problem("A shop must be named, in one of two ways.", "command line", "Write --shop SHOP.json, or --data FOLDER."));
            var sources = await PlanSources.OpenAsync(parse.GetValue(shop), parse.GetValue(data), surroundings, cancel);
            return Histories(sources.Shop);
        }, DriftDocument.Of, DriftTable.Print);

        static IReadOnlyList<(ExposureCase Case, ExposureDrift Drift)> Histories(Shop shop) =>
            [.. ShopStepTests.Of(shop, null).Select(exposure => (exposure, StepTestHistory.Of(exposure)))];
    }

    private static Verb Fit(Surroundings surroundings)
    {
        var verb = new Verb("fit", "A working curve from doses and the depths they cured: penetration depth and critical dose with their errors, robust against a misread strip.")
        {
            Examples = [("silkwright expose fit demo/cured-depths.csv", "seven doses, one depth misread")],
            GoodToKnow = "The pair belongs to the lamp and the meter it was found with. Most shops have neither: expose test works in seconds or units of the own lamp.",
        };
        var file = new Argument<string>("STEPS.csv") { Description = $"a table with {string.Join(" and ", FitDocument.Columns)}" };
        verb.Add(file);
        return Complete(verb, surroundings, async (parse, cancel) =>
        {
            var path = parse.GetValue(file)!;
            return FitDocument.Read(await InputFile.ReadTextAsync(path, "a table of doses", cancel), Path.GetFileName(path));
        }, FitDocument.Of, FitTable.Print);
    }

    private static Command Curve(Surroundings surroundings) => QuestionVerb.Complete(
        new Verb("curve", "How deep a coat cures by dose, whether its sensitiser bleaches or not.")
        {
            Examples =
            [
                ("silkwright expose curve --penetration-depth 70um --critical-dose 8mJ/cm2 --depth 57um", "a coat that does not bleach: the working curve"),
                ("silkwright expose curve --penetration-depth 30..50um --critical-dose 20mJ/cm2 --bleaching 90% --bleach-dose 40mJ/cm2 --json", "a diazo that bleaches, known within a range"),
            ],
            GoodToKnow = "Figures of real coats are not published; ask the supplier, or fit them (expose fit).",
        },
        CurveQuestion.Fields, CurveQuestion.Answer, CurveDocument.Of, CurveTable.Print, surroundings);

    private static Command Step(Surroundings surroundings) => QuestionVerb.Complete(
        new Verb("step", "The exposure that brings the last solid step of a wedge to where it should be.")
        {
            Examples =
            [
                ("silkwright expose step --seconds 60s --observed 5 --target 7", "step 5 was the last solid one, 7 is wanted: nearly twice the time"),
                ("silkwright expose step --units 120 --observed 8 --target 7 --json", "a machine that counts units of its own"),
            ],
            GoodToKnow = "Each step of a 0.15 wedge passes about 1.41 times the light of the next. Read the strip on a dry, well-developed screen.",
        },
        StepQuestion.Fields, StepQuestion.Answer, StepDocument.Of, StepTable.Print, surroundings);

    private static async Task<ExposureCase> CaseAsync(string path, CancellationToken cancel) =>
        ExposureCaseReader.Read(await InputFile.ReadTextAsync(path, "an exposure case", cancel), Path.GetFileName(path));

    /// <summary>A verb that reads files before it asks.</summary>
    private static Verb Complete<T>(
        Verb verb, Surroundings surroundings, Func<ParseResult, CancellationToken, Task<T>> answer,
        Func<T, System.Text.Json.Nodes.JsonObject> document, Action<T, Spectre.Console.IAnsiConsole> table)
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
