using Silkwright.Contracts;
using Silkwright.Emulsion;
using Silkwright.Plans;
using Silkwright.Records.Jobs;
using Silkwright.Records.Store;

namespace Silkwright.Records.Screens;

/// <summary>What the record of screens says of stencil lives: every screen that printed, as far as it printed.</summary>
public static class CountedScreens
{
    /// <summary>The counted stencils of a shop, for <see cref="Shop.RunReadings"/>; the latest where there are more than plans learn from.</summary>
    /// <remarks>
    /// A screen that has not broken counts as sound so far. Left out are screens without impressions, without a coat on record, without a job, and
    /// those that printed jobs in different inks: nobody could say which ink wore them.
    /// </remarks>
    /// <param name="store">The shop's records.</param>
    /// <param name="shopKey">The shop.</param>
    /// <param name="cancel">Stops the work.</param>
    public static async Task<IReadOnlyList<RunReading>> OfShopAsync(SilkwrightStore store, string shopKey, CancellationToken cancel = default)
    {
        var screens = (await store.Screens.ListAsync(shopKey, cancel)).Where(record => record.Story is { Impressions: > 0, Coat: not null }).ToArray();
        if (screens.Length == 0)
            return [];
        var jobs = (await store.Jobs.ListAsync(cancel: cancel)).ToDictionary(job => job.JobId);
        return
        [
            .. screens.Select(record => ReadingOf(record, jobs)).OfType<RunReading>().OrderByDescending(reading => reading.On).Take(ShopReader.MostReadings),
        ];
    }

    private static RunReading? ReadingOf(ScreenRecord record, Dictionary<string, JobRevision> jobs)
    {
        var facts = record.Story.Entries.Select(entry => entry.Entry.Fact).ToArray();
        var assigned = facts.OfType<JobAssigned>().ToArray();
        var elsewhere = facts.OfType<ScreenPrinted>().Select(printed => printed.JobId).OfType<string>().Except(assigned.Select(job => job.JobId));
        if (elsewhere.Any() || assigned.Select(job => InkOf(job, jobs)).Distinct().ToArray() is not [{ } ink])
            return null;
        return new RunReading
        {
            EmulsionId = record.Story.Coat!.EmulsionId,
            Ink = ink,
            Impressions = record.Story.Impressions,
            Broke = record.Story.End?.Reason == EndReason.Broke,
            EomUm = record.Story.Check?.EomUm,
            On = DateOnly.FromDateTime(record.Story.Entries[^1].Entry.At.UtcDateTime),
        };
    }

    /// <summary>The ink of the colour it is for; of the whole job where no colour is named and all have one ink.</summary>
    private static InkKind? InkOf(JobAssigned assigned, Dictionary<string, JobRevision> jobs)
    {
        if (!jobs.TryGetValue(assigned.JobId, out var job))
            return null;
        var inks = JobReader.Read(job.Text, job.Name).Colours
            .Where(colour => assigned.Colour is null || string.Equals(colour.Name, assigned.Colour, StringComparison.OrdinalIgnoreCase))
            .Select(colour => colour.Ink)
            .Distinct()
            .ToArray();
        return inks is [var ink] ? ink : null;
    }
}
