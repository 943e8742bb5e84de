using System.CommandLine;
using Silkwright.Contracts;
using Silkwright.Records.Screens;

namespace Silkwright.Cli.Commands.Screen;

/// <summary>The kinds of entries, each a verb with the options that its entry has.</summary>
internal static class ScreenEventVerbs
{
    private static readonly QuantityField Tension = new("tension", QuantityKind.Tension, "mean tension over the screen") { Required = true, Least = InputLimits.LeastTensionNPerCm, Most = InputLimits.MostTensionNPerCm };
    private static readonly TextField MeshLot = new("mesh-lot", "lot of the mesh where it is new", "T34-0418");
    private static readonly TextField Emulsion = new("emulsion", "the emulsion as the shop calls it", "\"Wren 47\"") { Required = true };
    private static readonly TextField Lot = new("lot", "lot on the container", "W-0826");
    private static readonly TextField Strokes = new("strokes", "in order: P print side, S squeegee side, p or s an empty-edge scrape, | dried between", "\"P P S\"");
    private static readonly TextField Trough = new("trough", "the trough as the shop calls it", "sharp");
    private static readonly TextField Place = new("place", "where", "cabinet");
    private static readonly QuantityField Humidity = new("humidity", QuantityKind.Share, "relative humidity there") { Required = true, Least = 0, Most = 100 };
    private static readonly QuantityField Temperature = new("temperature", QuantityKind.Temperature, "temperature there") { Least = -20, Most = 80 };
    private static readonly QuantityField SolidStep = new("solid-step", QuantityKind.Number, "last step of the wedge that stayed fully hard") { Sample = "6", Least = 1, Most = InputLimits.MostWedgeSteps, Whole = true };
    private static readonly TextField Lamp = new("lamp", "the lamp as the shop calls it", "\"diode array\"");
    private static readonly ChoiceField Result = ChoiceField.Of<CheckResult>("result", "what the light table said") with { Required = true };
    private static readonly QuantityField Eom = new("eom", QuantityKind.Thickness, "emulsion over mesh as read on a gauge") { Sample = "6.5um", Least = 0, Most = InputLimits.MostEomUm };
    private static readonly TextField Job = new("job", "the job's id", "lantern-walk");
    private static readonly TextField Colour = new("colour", "the colour's name in the job", "Ember");
    private static readonly QuantityField Impressions = new("impressions", QuantityKind.Number, "impressions since the last such entry") { Sample = "240", Required = true, Least = 1, Most = InputLimits.MostImpressions, Whole = true };
    private static readonly ChoiceField Reason = ChoiceField.Of<EndReason>("reason", "what ended the stencil") with { Required = true };
    private static readonly TextField How = new("how", "how it broke; needed for a breakdown", "\"edges gone\"");

    public static IEnumerable<Command> All(Surroundings surroundings)
    {
        yield return Kind("tensioned", "Mesh stretched, or its tension read again.", "--tension 23N/cm", [Tension, MeshLot],
            given => new MeshTensioned(given.ReadRequired(Tension), given.Read(MeshLot)));
        yield return Kind("degreased", "Mesh washed free of grease.", "", [], _ => new ScreenDegreased());
        yield return Kind("coated", "Coated; the person is who coated.", "--emulsion \"Wren 47\" --lot W-0826 --strokes \"P S\" --trough sharp", [Emulsion, Lot, Strokes, Trough],
            given => new ScreenCoated(given.Read(Emulsion) ?? "", given.Read(Lot), ReadStrokes(given), given.Read(Trough)));
        yield return Kind("dry-in", "The screen goes to dry.", "--place cabinet", [Place], given => new DryingBegun(given.Read(Place)));
        yield return Kind("dry-out", "The screen is taken out dry.", "", [], _ => new DryingEnded());
        yield return Kind("climate", "Air read where the screen stands.", "--humidity 44% --temperature 27C --place cabinet", [Humidity, Temperature, Place],
            given => new ClimateRead(given.ReadRequired(Humidity), given.Read(Temperature), given.Read(Place)));
        yield return Kind("exposed", "Exposed, in seconds or in the machine's own units.", "--seconds 9s --solid-step 6 --lamp \"diode array\"",
            [StepQuestion.Seconds, StepQuestion.Units, SolidStep, Lamp], Exposed);
        yield return Kind("checked", "Looked at on the light table; the person is who checked.", "--result good --solid-step 6 --eom 6.5um", [Result, SolidStep, Eom],
            given => new ScreenChecked(given.Read<CheckResult>(Result) ?? default, (int?)given.Read(SolidStep), given.Read(Eom)));
        yield return Kind("job-assigned", "The screen is for this colour of this job.", "--job lantern-walk --colour Ember", [Job with { Required = true }, Colour],
            given => new JobAssigned(given.Read(Job with { Required = true }) ?? "", given.Read(Colour)));
        yield return Kind("printed", "Impressions made since the last such entry.", "--impressions 240", [Impressions, Job],
            given => new ScreenPrinted(Whole(given.ReadRequired(Impressions)), given.Read(Job)));
        yield return Kind("ended", "The stencil is gone, or put away.", "--reason broke --how \"edges gone\"", [Reason, How],
            given => new ScreenEnded(given.Read<EndReason>(Reason) ?? default, given.Read(How)));
        yield return Kind("withdrawn", "An entry taken back: what it said did not happen.", "--corrects 6 --why \"wrong screen\"", [], _ => new EntryWithdrawn());

        Command Kind(string name, string says, string example, IReadOnlyList<QuestionField> fields, Func<GivenTexts, ScreenFact> read) =>
            ScreenEventVerb.Create(name, says, example, fields, read, surroundings);
    }

    private static ScreenExposed Exposed(GivenTexts given)
    {
        var (amount, counts) = StepQuestion.ReadAmount(given);
        return new ScreenExposed(amount, counts, (int?)given.Read(SolidStep), given.Read(Lamp));
    }

    private static IReadOnlyList<Coating.Stroke>? ReadStrokes(GivenTexts given) =>
        given.Read(Strokes) is { } text ? StrokeText.TryRead(text, given.Where(Strokes), given.Problems) : null;

    /// <summary>A whole number that was read; a fault leaves none to convert.</summary>
    private static long Whole(double value) => double.IsNaN(value) ? 0 : (long)value;
}
