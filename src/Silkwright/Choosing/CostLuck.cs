namespace Silkwright.Choosing;

/// <summary>
/// How it falls out in many possible worlds: for every input of a cost, where in its interval it lies. What a shop has one of (its labour rate)
/// falls out alike whatever the emulsion, the rest for each emulsion by itself, and alike for all jobs made with it.
/// </summary>
public sealed class CostLuck
{
    private readonly double[][] shared;
    private readonly Dictionary<string, double[][]> own = [];
    private readonly Dictionary<string, double[]> waste = [];

    /// <param name="emulsions">Their ids.</param>
    /// <param name="count">Worlds. 1 or more.</param>
    /// <param name="seed">Of the draws; the same seed gives the same worlds.</param>
    public CostLuck(IReadOnlyList<string> emulsions, int count, int seed)
    {
        Count = count;
        var random = new Random(seed);
        shared = Draw();
        foreach (var emulsion in emulsions)
        {
            own[emulsion] = Draw();
            waste[emulsion] = One();
        }

        double[][] Draw() => [.. CostInputs.All.Select(_ => One())];
        double[] One() => [.. Enumerable.Range(0, count).Select(_ => random.NextDouble())];
    }

    /// <summary>How many worlds.</summary>
    public int Count { get; }

    /// <summary>Share of an input's draws that lie below the one of this world. [1], 0 to 1</summary>
    public double Of(string emulsion, CostInput input, int world) => (CostInputs.IsShared(input) ? shared : own[emulsion])[(int)input][world];

    /// <summary>The same for how long an emulsion lasts beside its use. [1], 0 to 1</summary>
    public double OfWaste(string emulsion, int world) => waste[emulsion][world];
}
