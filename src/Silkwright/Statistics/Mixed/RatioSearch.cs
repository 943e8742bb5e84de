namespace Silkwright.Statistics.Mixed;

/// <summary>The variables that a fit searches over: the entries of the relative factors that are not known, each stretched.</summary>
/// <remarks>
/// An entry is stretched by the root of the levels that tell of it, so that the criterion bends about as much along all. The levels' own spread is positive
/// where anything is believed of it; elsewhere its sign means nothing.
/// </remarks>
internal sealed class RatioSearch
{
    private readonly IReadOnlyList<int> widths;
    private readonly List<double> all = [];
    private readonly List<int> free = [];
    private readonly List<double> stretch = [];
    private readonly List<(int Free, double Ratio, double Spread)> beliefs = [];
    private readonly double[][] sizes;
    private readonly IReadOnlyList<RandomTerm> terms;

    /// <param name="terms">As they were given.</param>
    /// <param name="sizes">What each column was divided by; a ratio is multiplied by it.</param>
    public RatioSearch(IReadOnlyList<RandomTerm> terms, double[][] sizes)
    {
        (this.terms, this.sizes) = (terms, sizes);
        widths = [.. terms.Select(term => term.Width)];
        for (var t = 0; t < terms.Count; t++)
        {
            for (var c = 0; c < terms[t].Width; c++)
            {
                for (var r = c; r < terms[t].Width; r++)
                    Add(terms[t], r == c, sizes[t][c]);
            }
        }

        Start = [.. free.Select((entry, i) => all[entry] * stretch[i])];
    }

    /// <summary>Where to begin.</summary>
    public IReadOnlyList<double> Start { get; }

    /// <summary>The factors of a place.</summary>
    public RelativeFactors Factors(double[] at)
    {
        var packed = all.ToArray();
        for (var i = 0; i < free.Count; i++)
            packed[free[i]] = at[i] / stretch[i];
        return new RelativeFactors(widths, packed);
    }

    /// <summary>What the beliefs add to the criterion at a place; none where a spread that something is believed of is not positive.</summary>
    public double? Belief(double[] at)
    {
        var sum = 0.0;
        foreach (var (i, ratio, spread) in beliefs)
        {
            if (at[i] <= 0)
                return null;
            var off = Math.Log(at[i] / stretch[i] / ratio) / spread;
            sum += off * off;
        }

        return sum;
    }

    /// <summary>The criterion's slope along the variables, beliefs included.</summary>
    /// <param name="slope">Along all entries of the factors.</param>
    /// <param name="at">The place.</param>
    public double[] Slope(double[] slope, double[] at)
    {
        double[] along = [.. free.Select((entry, i) => slope[entry] / stretch[i])];
        foreach (var (i, ratio, spread) in beliefs)
            along[i] += 2 * Math.Log(at[i] / stretch[i] / ratio) / (spread * spread * at[i]);
        return along;
    }

    /// <summary>The place of some factors.</summary>
    public double[] At(RelativeFactors factors)
    {
        var packed = (from t in Enumerable.Range(0, widths.Count) from c in Enumerable.Range(0, widths[t]) from r in Enumerable.Range(c, widths[t] - c) select factors[t, r, c]).ToArray();
        return [.. free.Select((entry, i) => packed[entry] * stretch[i])];
    }

    /// <summary>What is told of each term's ratio beyond what was believed of it.</summary>
    /// <param name="at">Where the criterion is least.</param>
    /// <param name="variances">Of the variables' logarithms there; none: it does not bend, and nothing is told.</param>
    public IReadOnlyList<RatioTold> Told(double[] at, double[]? variances)
    {
        var told = new RatioTold[terms.Count];
        var next = 0;
        for (var t = 0; t < terms.Count && variances is not null; t++)
        {
            if (terms[t].Prior is not { Spread: { } spread } belief)
                continue;
            var i = beliefs[next++].Free;
            // A spread told less surely than it was believed tells nothing of its width, though it may tell where it lies.
            var precision = Math.Max(1 / variances[i], 1 / (spread * spread));
            told[t] = new RatioTold(precision - (1 / (spread * spread)), (Math.Log(at[i] / stretch[i] / sizes[t][0]) * precision) - (Math.Log(belief.Ratio) / (spread * spread)));
        }

        return told;
    }

    private void Add(RandomTerm term, bool diagonal, double size)
    {
        if (term.Prior is { } prior)
            all.Add(prior.Ratio * size);
        else
            all.Add(diagonal ? 1 : 0);
        if (term.Prior is { Spread: null })
            return;
        if (term.Prior is { Spread: { } spread } belief)
            beliefs.Add((free.Count, belief.Ratio * size, spread));
        free.Add(all.Count - 1);
        stretch.Add(Math.Sqrt(2.0 * term.Levels));
    }
}
