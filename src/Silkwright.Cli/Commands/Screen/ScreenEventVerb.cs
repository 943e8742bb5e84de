using System.CommandLine;
using System.Globalization;
using Silkwright.Cli.Printing;
using Silkwright.Contracts;
using Silkwright.Records.Screens;

namespace Silkwright.Cli.Commands.Screen;

/// <summary>One kind of entry as a verb.</summary>
internal static class ScreenEventVerb
{
    private static readonly TextField Person = new("person", "who did it, by name", "\"Ines Tarrow\"") { Required = true };
    private static readonly TextField At = new("at", "when it happened, in this machine's time zone where none is written; now when not given", "2026-11-25T08:25");
    /// <summary>Day and time as ISO 8601-1 writes them: 11/12 is one day in one country and another in the next, and a bare day is no time.</summary>
    private static readonly string[] Iso8601 = ["yyyy-MM-ddTHH:mmK", "yyyy-MM-ddTHH:mm:ssK", "yyyy-MM-ddTHH:mm:ss.FFFFFFFK"];

    private static readonly TextField Note = new("note", "anything else worth knowing", "\"wet morning\"");
    private static readonly QuantityField Corrects = new("corrects", QuantityKind.Number, "number of the entry that this one stands in for") { Sample = "6", Least = 1, Whole = true, Most = 100_000 };
    private static readonly TextField Why = new("why", "why it is corrected; needed for a correction", "\"wrong screen\"");

    public static Command Create(
        string name, string says, string example, IReadOnlyList<QuestionField> fields, Func<GivenTexts, ScreenFact> read, Surroundings surroundings)
    {
        var verb = new Verb(name, says)
        {
            Examples = [($"silkwright screen event {name} S-0042 {example} --person \"Ines Tarrow\"".Replace("  ", " ", StringComparison.Ordinal), "one entry in the record of S-0042")],
        };
        var id = new Argument<string>("SCREEN") { Description = "the code on the frame, such as S-0001" };
        verb.Add(id);
        var options = new QuestionOptions(verb, [.. fields, Person, At, Note, Corrects, Why]);
        var data = RecordsFolder.Option();
        var json = Answer.JsonOption();
        verb.Add(data);
        verb.Add(json);
        verb.SetAction(async (parse, cancel) =>
        {
            var draft = Read(options.Given(parse), read, surroundings);
            var store = await RecordsFolder.OpenAsync(parse.GetRequiredValue(data), surroundings, cancel);
            await store.Screens.AppendAsync(parse.GetRequiredValue(id), draft, cancel);
            await ScreenShowVerb.PrintAsync(store, parse.GetRequiredValue(id), parse.GetValue(json), surroundings, cancel);
            return ExitCode.Done;
        });
        return verb;
    }

    private static EntryDraft Read(GivenTexts given, Func<GivenTexts, ScreenFact> read, Surroundings surroundings)
    {
        var fact = read(given);
        var person = given.Read(Person);
        var at = ReadTime(given, surroundings.Time.LocalTimeZone);
        var corrects = given.Read(Corrects);
        given.ThrowIfAny();
        return new EntryDraft
        {
            Fact = fact,
            Person = person!,
            At = at,
            Note = given.Read(Note),
            Corrects = (int?)corrects,
            Why = given.Read(Why),
        };
    }

    private static DateTimeOffset? ReadTime(GivenTexts given, TimeZoneInfo zone)
    {
        if (given.Read(At) is not { } text)
            return null;
        if (DateTime.TryParseExact(text, Iso8601, CultureInfo.InvariantCulture, DateTimeStyles.RoundtripKind, out var time))
        {
            return time.Kind == DateTimeKind.Unspecified
                ? new DateTimeOffset(time, zone.GetUtcOffset(time))
                : new DateTimeOffset(time.ToUniversalTime());
        }

        given.Problems.Add($"'{text}' is not a time.", given.Where(At), "Write year-month-dayThour:minute, as in 2026-11-25T08:25; then Z or +01:00 where it is not this machine's zone.");
        return null;
    }
}
