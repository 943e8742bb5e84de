using Silkwright.Contracts;
using Silkwright.Exposure;
using Silkwright.Records.Screens;

namespace Silkwright.Web.Pages.Screens;

/// <summary>The form of an entry, read.</summary>
internal static class EntryForm
{
    /// <summary>The kinds a person writes by hand; a correction has the form of what it corrects.</summary>
    public static IReadOnlyList<ScreenEventKind> Kinds { get; } =
        [.. Enum.GetValues<ScreenEventKind>().Where(k => k != ScreenEventKind.Withdrawn)];

    /// <exception cref="Estimates.InputProblemException">Every fault of the form.</exception>
    public static EntryDraft Read(IFormCollection form, ScreenEventKind kind)
    {
        var values = new FormValues(form);
        var draft = new EntryDraft
        {
            Fact = Fact(values, kind),
            Person = values.Required("by", "name of the person"),
            Note = values.Text("note"),
            IdempotencyKey = values.Text("key"),
        };
        values.Problems.ThrowIfAny();
        return draft;
    }

    private static ScreenFact Fact(FormValues values, ScreenEventKind kind) => kind switch
    {
        ScreenEventKind.Tensioned => new MeshTensioned(values.RequiredNumber("tension", "tension"), values.Text("meshLot")),
        ScreenEventKind.Degreased => new ScreenDegreased(),
        ScreenEventKind.Coated => new ScreenCoated(
            values.Required("emulsion", "emulsion"),
            values.Text("lot"),
            values.Text("strokes") is { } strokes ? StrokeText.TryRead(strokes, "strokes", values.Problems) : null,
            values.Text("trough")),
        ScreenEventKind.DryIn => new DryingBegun(values.Text("place")),
        ScreenEventKind.DryOut => new DryingEnded(),
        ScreenEventKind.Climate => new ClimateRead(values.RequiredNumber("humidity", "humidity"), values.Number("celsius", "temperature"), values.Text("place")),
        ScreenEventKind.Exposed => new ScreenExposed(
            values.RequiredNumber("amount", "exposure"), values.Choice<ExposureCount>("counts", "unit of the exposure"), values.Count("solidStep", "solid step"), values.Text("lamp")),
        ScreenEventKind.Checked => new ScreenChecked(values.Choice<CheckResult>("result", "result"), values.Count("solidStep", "solid step"), values.Number("eom", "emulsion over mesh")),
        ScreenEventKind.JobAssigned => new JobAssigned(values.Required("job", "job"), values.Text("colour")),
        ScreenEventKind.Printed => new ScreenPrinted((long)values.RequiredNumber("impressions", "number of impressions"), values.Text("job")),
        ScreenEventKind.Ended => new ScreenEnded(values.Choice<EndReason>("reason", "reason"), values.Text("how")),
        _ => new EntryWithdrawn(),
    };
}
