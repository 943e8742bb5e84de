using Silkwright.Estimates;

namespace Silkwright.Choosing;

/// <summary>Many possible worlds: every input of every choice drawn from its interval, shared ones once for all.</summary>
internal sealed class CostDraws
{
    private readonly IReadOnlyList<Contender> contenders;
    private readonly Dictionary<(int Contender, CostInput Input), double[]> amounts = [];

    /// <summary>Total cost by choice, then by draw. [currency]</summary>
    private readonly double[][] totals;

    public CostDraws(IReadOnlyList<Contender> contenders, int count, int seed)
    {
        (this.contenders, Count) = (contenders, count);
        var random = new Random(seed);
        for (var i = 0; i < contenders.Count; i++)
        {
            foreach (var input in CostInputs.All)
            {
                var estimate = CostInputs.Of(contenders[i].Cost.Case, input);
                amounts[(i, input)] = i > 0 && CostInputs.IsShared(input) && estimate == CostInputs.Of(contenders[0].Cost.Case, input)
                    ? amounts[(0, input)]
                    : Draw(estimate, count, random);
            }
        }

        totals = [.. contenders.Select((_, i) => Totals(i))];
    }

    public int Count { get; }

    public double Total(int contender, int draw) => totals[contender][draw];

    /// <summary>Least cost of a draw. [currency]</summary>
    public double Least(int draw) => totals.Min(total => total[draw]);

    /// <summary>Inputs that vary, each with whose it is; shared ones once.</summary>
    public IEnumerable<(int? Contender, CostInput Input, double[] Amounts)> Varying()
    {
        foreach (var ((contender, input), drawn) in amounts)
        {
            var shared = CostInputs.IsShared(input);
            if (drawn[0] != drawn[^1] && !(shared && contender > 0))
                yield return (shared ? null : contender, input, drawn);
        }
    }

    private double[] Totals(int contender)
    {
        var byInput = CostInputs.All.Select(input => amounts[(contender, input)]).ToArray();
        var here = new double[byInput.Length];
        var result = new double[Count];
        for (var draw = 0; draw < Count; draw++)
        {
            for (var input = 0; input < here.Length; input++)
                here[input] = byInput[input][draw];
            result[draw] = new CostPoint(contenders[contender].Cost.Case.Screens, here).Total;
        }

        return result;
    }

    private static double[] Draw(Estimate estimate, int count, Random random)
    {
        var drawn = new double[count];
        if (estimate.High <= estimate.Low)
        {
            Array.Fill(drawn, estimate.Value);
            return drawn;
        }

        for (var i = 0; i < count; i++)
            drawn[i] = TriangularLaw.At(estimate, random.NextDouble());
        return drawn;
    }
}
