namespace Silkwright.Records.Gauging;

/// <summary>Readings that came together, as they are kept.</summary>
/// <param name="Readings">Their entries.</param>
/// <param name="New">How many of them were written now; the others were kept before.</param>
public sealed record KeptBatch(IReadOnlyList<KeptReading> Readings, int New)
{
    public int Before => Readings.Count - New;

    /// <summary>What was kept, in words.</summary>
    public string Said => $"{New} new, {Before} kept before{(New == 0 ? ": these very readings are in the records already" : "")}.";
}
