using Silkwright.Emulsion;
using Silkwright.Estimates;

namespace Silkwright.Plans;

/// <summary>What a plan cannot start without; every fault at once.</summary>
internal static class PlanInput
{
    private const double HottestDryingRoomCelsius = 45;

    public static void Check(Job job, Shop shop)
    {
        var problems = new ProblemList();
        if (job.Colours.Count == 0)
            problems.Add("The job has no colours.", "job: colours", "List each colour with its ink.");
        if (job.Run <= 0)
            problems.Add("The run must be 1 piece or more.", "job: run", "Give the number of pieces.");
        foreach (var colour in job.Colours.Where(colour => colour.ImpressionsPerGarment < 1))
            problems.Add($"{colour.Name} has no impression on a garment.", "job: colours: impressionsPerGarment", "Give 1 or more.");
        foreach (var emulsion in shop.Emulsions)
            CheckDates(emulsion, job.Date, problems);
        foreach (var reading in shop.CoatReadings.Where(reading => reading.Strokes is not [{ Scrape: false, AfterDrying: false }, ..]))
            problems.Add($"A thickness reading of {reading.EmulsionId} begins with a stroke that lays nothing on bare mesh.", "shop: readings: strokes", "Begin with a filled stroke: P or S.");
        if (shop.Room.Celsius is < 0 or > HottestDryingRoomCelsius)
            problems.Add("Coats are dried between 0 and 45 °C; hotter air hardens them before they are exposed.", "shop: room: celsius", "Give the temperature where the coats dry.");
        problems.ThrowIfAny();
    }

    private static void CheckDates(StencilEmulsion emulsion, DateOnly on, ProblemList problems)
    {
        if (emulsion.SensitisedOn > on)
            problems.Add($"{emulsion.Id} would be sensitised after the day of the plan.", "shop: emulsions: sensitisedOn", "Check the year, or the job's date.");
        if (emulsion.ReceivedOn > on)
            problems.Add($"{emulsion.Id} would be received after the day of the plan.", "shop: emulsions: receivedOn", "Check the year, or the job's date.");
    }
}
