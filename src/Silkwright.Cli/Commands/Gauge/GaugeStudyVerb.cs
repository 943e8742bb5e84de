using Silkwright.Cli.Printing;
using Silkwright.Contracts;

namespace Silkwright.Cli.Commands.Gauge;

/// <summary><c>silkwright gauge study</c>.</summary>
internal static class GaugeStudyVerb
{
    public static Verb Create(Surroundings surroundings)
    {
        var verb = new Verb("study", "How far a gauge repeats, what another hand adds, and what is left to tell screens apart by.")
        {
            Examples =
            [
                ("silkwright gauge study demo/gauge-study.csv", "eight screens, three people, each screen read three times"),
                ("silkwright gauge study demo/gauge-study.csv --wanted 0.5um --json", "how many readings for ±0.5 µm; for a program"),
            ],
            GoodToKnow = "Let each person read every screen two or three times, in mixed order, without seeing the earlier figures. Flagged readings stay in the figures; those without them stand beside.",
        };
        var (file, unit, json) = (GaugeCommand.FileArgument(), GaugeCommand.UnitOption(), Answer.JsonOption());
        verb.Add(file);
        var options = new QuestionOptions(verb, [GaugeStudyQuestion.Wanted]);
        verb.Add(unit);
        verb.Add(json);
        verb.SetAction(async (parse, cancel) =>
        {
            var given = options.Given(parse);
            var wanted = given.Read(GaugeStudyQuestion.Wanted);
            given.ThrowIfAny();
            var answer = GaugeStudyQuestion.Of(await GaugeCommand.ReadAsync(parse.GetRequiredValue(file), parse.GetValue(unit), null, cancel), wanted, cancel);
            if (parse.GetValue(json))
                Answer.WriteJson(GaugeStudyDocument.Of(answer), surroundings);
            else
                GaugeStudyTable.Print(answer, Answer.Console(surroundings));
            return ExitCode.Done;
        });
        return verb;
    }
}
