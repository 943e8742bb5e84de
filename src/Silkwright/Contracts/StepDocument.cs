using System.Text.Json.Nodes;
using Silkwright.Estimates;
using Silkwright.Exposure;

namespace Silkwright.Contracts;

/// <summary>A corrected exposure as other programs read it: silkwright/expose-step/1, docs/schema/expose-step.json.</summary>
public static class StepDocument
{
    public static JsonObject Of(StepCorrection correction)
    {
        var name = correction.Counts == ExposureCount.Seconds ? "seconds" : "units";
        var document = DocumentJson.Start("expose-step");
        document[name] = correction.Corrected;
        document["given"] = correction.Given;
        document["factor"] = correction.Corrected / correction.Given;
        document["observedStep"] = correction.ObservedStep;
        document["targetStep"] = correction.TargetStep;
        document["densityPerStep"] = correction.DensityPerStep;
        document["notes"] = DocumentJson.Of([.. NotesOn(correction)]);
        return document;
    }

    /// <summary>What to know before exposing by it.</summary>
    public static IEnumerable<Note> NotesOn(StepCorrection correction)
    {
        yield return new Note("This corrects for one lamp, emulsion, mesh and coat: change any of them and make a new strip.");
        if (Math.Abs(correction.TargetStep - correction.ObservedStep) > FarSteps)
            yield return new Note("So large a correction is beyond what one strip can tell: expose a new strip at it before making screens.");
        if (correction.Counts == ExposureCount.Units)
            yield return new Note("Units belong to the machine that counted them; they are not seconds and hold for no other lamp.");
    }

    /// <summary>Beyond four steps the exposure changes more than fourfold. Common practice: no further without a new strip.</summary>
    private const double FarSteps = 4;
}
