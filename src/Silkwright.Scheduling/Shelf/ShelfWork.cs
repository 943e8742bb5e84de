using Silkwright.Plans;

namespace Silkwright.Scheduling.Shelf;

/// <summary>A job that comes again.</summary>
/// <param name="Job">The job.</param>
/// <param name="TimesPerMonth">How often such a job comes. [1/month], above 0</param>
public sealed record ShelfWork(Job Job, double TimesPerMonth);
