namespace Silkwright.Film.Measuring;

/// <summary>Adds up how far the parts of a work are that are done side by side, so that the whole never goes back.</summary>
/// <param name="whole">Told the share of the whole that is done, 0 to 1; none: nobody asks.</param>
/// <param name="weights">Each part's share of the whole; together 1 or less.</param>
internal sealed class WorkParts(IProgress<double>? whole, params double[] weights)
{
    private readonly double[] done = new double[weights.Length];
    private readonly Lock adding = new();

    /// <summary>Takes the share done of one part; none where nobody asks.</summary>
    public IProgress<double>? Part(int number) => whole is null ? null : new One(this, number);

    private void Report(int number, double share)
    {
        lock (adding)
        {
            done[number] = Math.Max(done[number], Math.Clamp(share, 0, 1));
            whole!.Report(weights.Zip(done, (weight, part) => weight * part).Sum());
        }
    }

    private sealed class One(WorkParts parts, int number) : IProgress<double>
    {
        public void Report(double value) => parts.Report(number, value);
    }
}
