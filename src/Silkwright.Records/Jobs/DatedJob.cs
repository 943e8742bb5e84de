using Silkwright.Contracts;

namespace Silkwright.Records.Jobs;

/// <summary>A job with the day it counts for.</summary>
/// <param name="Revision">As it stands now.</param>
/// <param name="Document">What it says.</param>
/// <param name="Day">Its date, or else the day it is due, or else the day it was first kept.</param>
public sealed record DatedJob(JobRevision Revision, JobDocument Document, DateOnly Day);
