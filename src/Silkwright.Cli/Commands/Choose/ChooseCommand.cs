using System.CommandLine;
using Silkwright.Answers;
using Silkwright.Cli.Commands.Catalogue;
using Silkwright.Cli.Commands.Plan;
using Silkwright.Cli.Printing;
using Silkwright.Contracts;
using Silkwright.Estimates;

namespace Silkwright.Cli.Commands.Choose;

/// <summary><c>silkwright choose</c>: which emulsion, and why not the other.</summary>
internal static class ChooseCommand
{
    public static Command Create(Surroundings surroundings)
    {
        var verb = new Verb("choose", "Which emulsion for an ink and a run, why not the others, and what would change the answer.")
        {
            Examples =
            [
                ("silkwright choose --ink water-based --run 2000 --pace 3 --light yellow --humidity 75%", "what an advisor is told on the phone"),
                ("silkwright choose --ink discharge --run 400 --garment black --shop demo/shop.json", "out of what stands on a shop's shelf"),
                ("silkwright choose --ink water-based --run 2000 --catalogue demo/catalogue.csv", "out of a catalogue, each value on its own ground"),
                ("silkwright choose --ink water-based --run 2000 --data data --kept-catalogue", "out of the shelf and the catalogue kept in a data folder"),
                ("silkwright choose --job demo/jobs/phone-enquiry.json --colour \"Dark green\" --json", "one colour of a job, for a program"),
            ],
            GoodToKnow = "Ink and run are enough; whatever is not told is assumed and listed. A difference smaller than its interval is no decision: measure what the answer names.",
        };
        var options = new QuestionOptions(verb, EmulsionQuestion.Fields.Select(field => field with { Required = false }));
        var job = new Option<string?>("--job") { Description = "a job in place of ink and run", HelpName = "JOB.json" };
        var colour = new Option<string?>("--colour") { Description = "which colour of the job; the first when not given", HelpName = "NAME" };
        var shop = new Option<string?>("--shop") { Description = "the shop, as a file", HelpName = "SHOP.json" };
        var data = new Option<string?>("--data") { Description = "the folder a shop keeps its records in", HelpName = "FOLDER" };
        var json = Answer.JsonOption();
        verb.Add(job);
        verb.Add(colour);
        verb.Add(shop);
        verb.Add(data);
        var catalogue = new CatalogueOptions(verb);
        verb.Add(json);
        verb.SetAction(async (parse, cancel) =>
        {
            var sources = await PlanSources.OpenAsync(
                parse.GetValue(shop), parse.GetValue(data), surroundings, cancel, store => catalogue.AskedAsync(parse, store, cancel));
            var answer = parse.GetValue(job) is { } path
                ? await OfJobAsync(path, parse.GetValue(colour), sources, surroundings, cancel)
                : EmulsionQuestion.Answer(options.Given(parse), sources.Shop, surroundings.Today);
            answer = answer with { Assumed = [.. answer.Assumed, .. sources.Notes] };
            if (parse.GetValue(json))
                Answer.WriteJson(EmulsionAnswerDocument.Of(answer), surroundings);
            else
                AnswerTable.Print(answer, Answer.Console(surroundings));
            return ExitCode.Done;
        });
        return verb;
    }

    private static async Task<EmulsionAnswer> OfJobAsync(
        string path, string? colour, PlanSources sources, Surroundings surroundings, CancellationToken cancel)
    {
        var job = await sources.JobAsync(path, surroundings, cancel);
        var asked = colour is null
            ? job.Colours[0]
            : job.Colours.FirstOrDefault(c => string.Equals(c.Name, colour, StringComparison.OrdinalIgnoreCase))
                ?? throw new InputProblemException(new Problem(
                    $"The job has no colour called '{colour}'.", "--colour", $"Write one of {string.Join(", ", job.Colours.Select(c => c.Name))}."));
        return Advisor.Answer(job, asked, sources.Shop);
    }
}
