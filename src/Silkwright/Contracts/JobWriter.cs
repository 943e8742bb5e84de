namespace Silkwright.Contracts;

/// <summary>Writes JOB.json.</summary>
public static class JobWriter
{
    public static string Write(JobDocument job) =>
        throw new NotImplementedException();
}
