using System.CommandLine;
using Silkwright.Cli.Printing;
using Silkwright.Contracts;
using Silkwright.Records.Coating;

namespace Silkwright.Cli.Commands.Coat;

/// <summary><c>silkwright coat keep</c>.</summary>
internal static class CoatKeepVerb
{
    public static Verb Create(Surroundings surroundings)
    {
        var verb = new Verb("keep", "Takes in what other shops' readings taught: plans for the kept shop, and /coat, start from it.")
        {
            Examples = [("silkwright coat keep demo/coat-experience.json --data data --by \"Ines Tarrow\"", "keeping it twice keeps it once")],
            GoodToKnow = "Readings of the shop itself must not be in it: they would count twice.",
        };
        var file = new Argument<string>("EXPERIENCE.json") { Description = "what other shops' readings taught, as coat experience makes it" };
        var by = new Option<string>("--by") { Description = "who takes it in, by name", HelpName = "NAME", Required = true };
        var (data, json) = (RecordsFolder.Option(), Answer.JsonOption());
        verb.Add(file);
        verb.Add(by);
        verb.Add(data);
        verb.Add(json);
        verb.SetAction(async (parse, cancel) =>
        {
            var path = parse.GetRequiredValue(file);
            var text = await InputFile.ReadTextAsync(path, "coat experience", cancel);
            var records = (await RecordsFolder.OpenAsync(parse.GetRequiredValue(data), surroundings, cancel)).CoatExperience;
            var (kept, isNew) = await records.KeepAsync(text, Path.GetFileName(path), parse.GetRequiredValue(by), cancel: cancel);
            var taught = CoatExperienceReader.Read(kept.Text!, kept.Source);
            if (parse.GetValue(json))
                Answer.WriteJson(KeptExperienceDocument.Of(await records.HistoryAsync(cancel: cancel)), surroundings);
            else
                await surroundings.Output.WriteLineAsync($"{(isNew ? "Kept" : "Kept before")} as number {kept.Number}: {taught.Readings} readings of {taught.Shops} shop{(taught.Shops == 1 ? "" : "s")} elsewhere.");
            return ExitCode.Done;
        });
        return verb;
    }
}
