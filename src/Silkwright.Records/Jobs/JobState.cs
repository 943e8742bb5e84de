namespace Silkwright.Records.Jobs;

/// <summary>Whether a job still asks for screens.</summary>
public enum JobState
{
    Open,
    Done,
}
