namespace Silkwright.Scheduling.Shelf;

/// <summary>The set of least total margin that the rules allow, and what turning one choice in or out adds. An emulsion enters in its best size.</summary>
/// <param name="problem">What could be kept.</param>
/// <param name="rules">How many may be kept, and which set may not.</param>
/// <param name="states">By choice: what is known already.</param>
/// <param name="margins">By choice: fixed cost less what the points pay it. [money/month]</param>
internal sealed class MarginChoice(ShelfProblem problem, ShelfRules rules, Fixed[] states, double[] margins)
{
    /// <summary>By emulsion: its size of least margin, and of next to least; -1 where there is none.</summary>
    private readonly int[] first = new int[problem.Emulsions];
    private readonly int[] second = new int[problem.Emulsions];
    private readonly List<int> order = new(problem.Emulsions);
    private int count;
    private int lastIn = -1;
    private int nextOut = -1;

    public bool[] Selected { get; } = new bool[margins.Length];

    /// <summary>Chooses among all sets of an allowed size, whether or not that set is asked for.</summary>
    /// <returns>The total margin; infinite where no set is left.</returns>
    public double ChooseFreely()
    {
        Array.Clear(Selected);
        order.Clear();
        (count, lastIn, nextOut) = (0, -1, -1);
        RankSizes();
        var total = 0.0;
        for (var e = 0; e < first.Length; e++)
        {
            if (first[e] < 0)
                continue;
            if (states[first[e]] == Fixed.Free)
            {
                order.Add(e);
                continue;
            }

            Selected[first[e]] = true;
            total += Margin(e);
            count++;
        }

        order.Sort((a, b) => Margin(a) != Margin(b) ? Margin(a).CompareTo(Margin(b)) : a.CompareTo(b));
        foreach (var e in order)
        {
            if (count >= rules.Most || (Margin(e) >= 0 && count >= rules.Least))
            {
                nextOut = e;
                break;
            }

            (Selected[first[e]], lastIn) = (true, e);
            total += Margin(e);
            count++;
        }

        return count < rules.Least || count > rules.Most ? double.PositiveInfinity : total;
    }

    /// <summary>Chooses among the sets asked for.</summary>
    /// <returns>The total margin; infinite where no set is left.</returns>
    public double Choose()
    {
        var total = ChooseFreely();
        if (rules.Not is not { } not || !problem.EmulsionsOf(Selected).AsSpan().SequenceEqual(not))
            return total;
        // One turn away from the best set of all lies the best of all others.
        var (turned, least) = (-1, double.PositiveInfinity);
        foreach (var e in order)
        {
            if (TurningEmulsion(e) is var adds && adds < least)
                (turned, least) = (e, adds);
        }

        if (turned >= 0)
            Turn(turned);
        return total + least;
    }

    /// <summary>What the total margin grows by where a choice's state is turned and the others follow as suits best. 0 or more.</summary>
    public double Turning(int i)
    {
        if (states[i] == Fixed.Dropped)
            return double.PositiveInfinity;
        var e = problem.EmulsionOf[i];
        if (Selected[i])
            return Math.Min(TurningEmulsion(e), second[e] < 0 ? double.PositiveInfinity : margins[second[e]] - margins[i]);
        var dearer = i == first[e] ? 0 : margins[i] - Margin(e);
        return Selected[first[e]] ? dearer : TurningEmulsion(e) + dearer;
    }

    private double Margin(int emulsion) => margins[first[emulsion]];

    private void RankSizes()
    {
        Array.Fill(first, -1);
        Array.Fill(second, -1);
        for (var i = 0; i < margins.Length; i++)
        {
            ref var best = ref first[problem.EmulsionOf[i]];
            ref var next = ref second[problem.EmulsionOf[i]];
            if (states[i] == Fixed.Dropped || (best >= 0 && states[best] == Fixed.Kept))
                continue;
            if (states[i] == Fixed.Kept)
                (best, next) = (i, -1);
            else if (best < 0 || margins[i] < margins[best])
                (best, next) = (i, best);
            else if (next < 0 || margins[i] < margins[next])
                next = i;
        }
    }

    private double TurningEmulsion(int e)
    {
        if (!Selected[first[e]])
        {
            if (count + 1 > rules.Most)
                return lastIn < 0 ? double.PositiveInfinity : Margin(e) - Margin(lastIn);
            return lastIn < 0 ? Margin(e) : Margin(e) - Math.Max(0, Margin(lastIn));
        }

        if (count - 1 < rules.Least)
            return nextOut < 0 ? double.PositiveInfinity : Margin(nextOut) - Margin(e);
        return -Margin(e) + (nextOut < 0 ? 0 : Math.Min(0, Margin(nextOut)));
    }

    private void Turn(int e)
    {
        var other = Selected[first[e]] switch
        {
            false when lastIn >= 0 && (count + 1 > rules.Most || Margin(lastIn) > 0) => lastIn,
            true when nextOut >= 0 && (count - 1 < rules.Least || Margin(nextOut) < 0) => nextOut,
            _ => -1,
        };
        Selected[first[e]] = !Selected[first[e]];
        if (other >= 0)
            Selected[first[other]] = !Selected[first[other]];
    }
}
