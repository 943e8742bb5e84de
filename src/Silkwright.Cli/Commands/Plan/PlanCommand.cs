using System.CommandLine;
using Silkwright.Cli.Commands.Catalogue;
using Silkwright.Cli.Commands.Coat;
using Silkwright.Cli.Printing;
using Silkwright.Coating.Learning;
using Silkwright.Contracts;
using Silkwright.Estimates;
using Silkwright.Plans;

namespace Silkwright.Cli.Commands.Plan;

/// <summary><c>silkwright plan</c>: the stencil plan of a job.</summary>
internal static class PlanCommand
{
    public static Command Create(Surroundings surroundings)
    {
        var verb = new Verb("plan", "The stencil plan of a job: for every colour mesh, emulsion, coat, drying, exposure, ink, life and cost, with reasons.")
        {
            Examples =
            [
                ("silkwright plan demo/jobs/lantern-walk.json --shop demo/shop.json", "a job for the demonstration shop; its films are measured"),
                ("silkwright plan demo/jobs/lantern-walk.json --data data", "for the shop kept in a data folder; a film is measured once and remembered there"),
                ("silkwright plan demo/jobs/phone-enquiry.json --catalogue demo/catalogue.csv", "out of a catalogue's emulsions; with a shop they stand beside its own"),
                ("silkwright plan demo/jobs/phone-enquiry.json --json", "for a shop nobody described, for a program: everything assumed is in its notes"),
            ],
            GoodToKnow = "A job needs its colours with their inks and the run; films, or typed needs, or a kind of work say the rest (docs/schema/job.json, docs/schema/shop.json).",
        };
        var job = new Argument<string>("JOB.json") { Description = "the job; films it names are found from its own folder" };
        var shop = new Option<string?>("--shop") { Description = "the shop, as a file", HelpName = "SHOP.json" };
        var data = new Option<string?>("--data") { Description = "the folder a shop keeps its records in; with --shop, only remembers the films", HelpName = "FOLDER" };
        var json = Answer.JsonOption();
        verb.Add(job);
        verb.Add(shop);
        verb.Add(data);
        var experience = ExperienceFiles.Option();
        verb.Add(experience);
        var catalogue = new CatalogueOptions(verb);
        verb.Add(json);
        verb.SetAction(async (parse, cancel) =>
        {
            var sources = await PlanSources.OpenAsync(parse.GetValue(shop), parse.GetValue(data), surroundings, cancel, store => catalogue.AskedAsync(parse, store, cancel));
            var taught = await ExperienceFiles.TogetherAsync(parse.GetValue(experience), cancel);
            var plan = await PlanAsync(parse.GetRequiredValue(job), sources, taught, surroundings, cancel);
            if (parse.GetValue(json))
                Answer.WriteJson(PlanDocument.Of(plan), surroundings);
            else
                PlanTable.Print(plan, Answer.Console(surroundings));
            return ExitCode.Done;
        });
        return verb;
    }

    private static async Task<StencilPlan> PlanAsync(string jobPath, PlanSources sources, CoatExperience? taught, Surroundings surroundings, CancellationToken cancel)
    {
        var plan = Planner.Plan(await sources.JobAsync(jobPath, surroundings, cancel), taught is null ? sources.Shop : CoatExperienceQuestion.Beside(sources.Shop, taught));
        Note[] told = sources.ShopIsKnown
            ? []
            : [new Note("No shop was given: the plan is for a shop nobody described. Name one with --shop or --data.", Ground.CommonPractice)];
        return plan with { Notes = [.. told, .. sources.Notes, .. plan.Notes] };
    }
}
