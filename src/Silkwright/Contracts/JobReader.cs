namespace Silkwright.Contracts;

/// <summary>Reads JOB.json.</summary>
public static class JobReader
{
    public static JobDocument Read(string json, string where) =>
        throw new NotImplementedException();
}
