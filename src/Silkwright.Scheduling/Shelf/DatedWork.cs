using Silkwright.Plans;

namespace Silkwright.Scheduling.Shelf;

/// <summary>A job out of a shop's records.</summary>
/// <param name="Job">The job.</param>
/// <param name="Day">The day it was for.</param>
/// <param name="TimesPerMonth">How often such a job comes in every month, above 0; none: it came once, in the month of its day. [1/month]</param>
public sealed record DatedWork(Job Job, DateOnly Day, double? TimesPerMonth);
