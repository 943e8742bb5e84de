namespace Silkwright.Scheduling.Shelf;

/// <summary>
/// A bound from below. Every point is promised a price for being served; the emulsions that pay at these prices are kept, whether or not
/// that serves each point just once. Prices rise where nobody serves and fall where several do. docs/engines/shelf.md, equations 7 to 10.
/// </summary>
internal sealed class LagrangianBound
{
    /// <summary>Share of the former direction kept in the next: the prices swing less.</summary>
    private const double Memory = 0.3;

    /// <summary>Weight of the newest choice in the running averages: they look back over some ten steps.</summary>
    private const double Newest = 0.1;

    private readonly ShelfProblem problem;
    private readonly MarginChoice choice;
    private readonly double[] least;
    private readonly double[] margins;
    private readonly double[] bestMargins;
    private readonly double[] direction;

    public LagrangianBound(ShelfProblem problem, ShelfRules rules)
    {
        this.problem = problem;
        least = LeastCosts(problem);
        Prices = new double[problem.Points];
        BestPrices = new double[problem.Points];
        States = new Fixed[problem.Choices];
        Averages = new double[problem.Choices];
        margins = new double[problem.Choices];
        bestMargins = new double[problem.Choices];
        direction = new double[problem.Points];
        choice = new MarginChoice(problem, rules, States, margins);
    }

    /// <summary>By choice: what is known of every shelf cheaper than the limit of the last <see cref="Fix"/>.</summary>
    public Fixed[] States { get; }

    /// <summary>The set that pays at the present prices.</summary>
    public bool[] Selected => choice.Selected;

    public double[] Prices { get; }

    /// <summary>By choice: how often it paid of late, near its share in the relaxed optimum. [1], 0 to 1.</summary>
    public double[] Averages { get; }

    /// <summary>Costs looked at since the beginning.</summary>
    public long Looks { get; private set; }

    /// <summary>The prices of the highest bound.</summary>
    public double[] BestPrices { get; }

    /// <summary>The highest bound so far. [money/month]</summary>
    public double Best { get; private set; } = double.NegativeInfinity;

    /// <summary>Begins anew.</summary>
    /// <param name="states">What is known or supposed of each choice.</param>
    /// <param name="prices">By point. [money/month]</param>
    /// <param name="averages">By choice.</param>
    public void Begin(ReadOnlySpan<Fixed> states, ReadOnlySpan<double> prices, ReadOnlySpan<double> averages)
    {
        states.CopyTo(States);
        averages.CopyTo(Averages);
        for (var j = 0; j < Prices.Length; j++)
            Prices[j] = BestPrices[j] = Math.Max(prices[j], least[j]);
        Array.Clear(direction);
        Best = double.NegativeInfinity;
    }

    /// <summary>Bounds by the present prices; a new best is kept.</summary>
    public double Evaluate()
    {
        Looks += (long)States.Count(state => state != Fixed.Dropped) * problem.Points;
        Work.ForEachEmulsion(problem, i => margins[i] = States[i] == Fixed.Dropped ? double.PositiveInfinity : problem.FixedCosts[i] + Margins.Of(problem.Costs[i], Prices));
        var bound = problem.Constant + Prices.Sum() + choice.Choose();
        for (var i = 0; i < Averages.Length; i++)
            Averages[i] += Newest * ((Selected[i] ? 1 : 0) - Averages[i]);
        if (bound > Best)
        {
            Best = bound;
            Prices.CopyTo(BestPrices, 0);
            margins.CopyTo(bestMargins, 0);
        }

        return bound;
    }

    /// <summary>Moves the prices along the deflected subgradient by Polyak's step.</summary>
    /// <param name="gap">How far the bound should rise. [money/month], 0 or more.</param>
    /// <param name="scale">Share of the full step. Above 0, at most 2.</param>
    public void Step(double gap, double scale)
    {
        var length = 0.0;
        for (var j = 0; j < direction.Length; j++)
            direction[j] = (Memory * direction[j]) + 1 - Memory;
        for (var i = 0; i < margins.Length; i++)
        {
            if (Selected[i])
                Margins.TakeServed(problem.Costs[i], Prices, direction, 1 - Memory);
        }

        foreach (var part in direction)
            length += part * part;
        if (length <= 0)
            return;
        var step = scale * gap / length;
        for (var j = 0; j < direction.Length; j++)
            Prices[j] = Math.Max(least[j], Prices[j] + (step * direction[j]));
    }

    /// <summary>Goes on from the best prices.</summary>
    public void Return()
    {
        BestPrices.CopyTo(Prices, 0);
        Array.Clear(direction);
    }

    /// <summary>Fixes every choice whose other state would cost the limit or more, and says what services the rest may use.</summary>
    public ShelfFixing Fix(double limit)
    {
        bestMargins.CopyTo(margins, 0);
        var bound = problem.Constant + BestPrices.Sum() + choice.ChooseFreely();
        var room = new double[States.Length];
        var states = new Fixed[States.Length];
        for (var i = 0; i < States.Length; i++)
        {
            states[i] = States[i];
            if (States[i] == Fixed.Free && bound + choice.Turning(i) >= limit)
                states[i] = Selected[i] ? Fixed.Kept : Fixed.Dropped;
            room[i] = limit - bound - (Selected[i] ? 0 : choice.Turning(i));
        }

        states.CopyTo(States, 0);
        return new ShelfFixing(states) { Prices = BestPrices, Room = room };
    }

    /// <summary>No price below the cheapest service can help.</summary>
    private static double[] LeastCosts(ShelfProblem problem)
    {
        var least = new double[problem.Points];
        Array.Fill(least, double.PositiveInfinity);
        foreach (var costs in problem.Costs)
        {
            for (var j = 0; j < least.Length; j++)
                least[j] = Math.Min(least[j], costs[j]);
        }

        return least;
    }
}
