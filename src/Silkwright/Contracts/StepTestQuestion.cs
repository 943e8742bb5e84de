using Silkwright.Estimates;
using Silkwright.Exposure;

namespace Silkwright.Contracts;

/// <summary>What <c>expose test</c> asks for: strips, and what they were made of.</summary>
public static class StepTestQuestion
{
    /// <param name="given">Lamp, emulsion, mesh, coat and detail, typed.</param>
    /// <param name="strips">The strips.</param>
    /// <param name="counts">What their amounts count.</param>
    /// <exception cref="InputProblemException">Something typed is wrong; carries every fault.</exception>
    public static StepTestReading Answer(GivenTexts given, IReadOnlyList<StepTest> strips, ExposureCount counts)
    {
        var exposure = ExposureQuestion.Read(given, strips, out var assumed);
        given.ThrowIfAny();
        return Answer(exposure! with { Lamp = exposure.Lamp with { Counts = counts } }, assumed);
    }

    /// <exception cref="InputProblemException">No strip to read.</exception>
    /// <param name="exposure">The case with its strips.</param>
    /// <param name="assumed">What was taken as usual.</param>
    public static StepTestReading Answer(ExposureCase exposure, IReadOnlyList<Note> assumed)
    {
        if (exposure.Tests.Count == 0)
            throw new InputProblemException(new Problem("There is no strip to read.", "tests", "Give each strip with its exposure and what was read on it."));
        var reading = StepTestReading.Of(exposure);
        return reading with { Window = reading.Window with { Notes = [.. assumed, .. reading.Window.Notes] } };
    }
}
