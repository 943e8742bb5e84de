namespace Silkwright.Scheduling.Shelf;

/// <summary>The set of emulsions of least total margin that the rules allow, and what turning one of them in or out adds.</summary>
/// <param name="rules">How many may be kept, and which set may not.</param>
/// <param name="states">What is known already.</param>
/// <param name="margins">By emulsion: fixed cost less what the points pay it. [money/month]</param>
internal sealed class MarginChoice(ShelfRules rules, Fixed[] states, double[] margins)
{
    private readonly List<int> order = new(margins.Length);
    private int count;
    private int lastIn = -1;
    private int nextOut = -1;

    public bool[] Selected { get; } = new bool[margins.Length];

    /// <summary>Chooses among all sets of an allowed size, whether or not that set is asked for.</summary>
    /// <returns>The total margin; infinite where no set is left.</returns>
    public double ChooseFreely()
    {
        order.Clear();
        (count, lastIn, nextOut) = (0, -1, -1);
        var total = 0.0;
        for (var i = 0; i < margins.Length; i++)
        {
            Selected[i] = states[i] == Fixed.Kept;
            if (states[i] == Fixed.Free)
                order.Add(i);
            if (!Selected[i])
                continue;
            total += margins[i];
            count++;
        }

        order.Sort((a, b) => margins[a] != margins[b] ? margins[a].CompareTo(margins[b]) : a.CompareTo(b));
        foreach (var i in order)
        {
            if (count >= rules.Most || (margins[i] >= 0 && count >= rules.Least))
            {
                nextOut = i;
                break;
            }

            (Selected[i], lastIn) = (true, i);
            total += margins[i];
            count++;
        }

        return count < rules.Least || count > rules.Most ? double.PositiveInfinity : total;
    }

    /// <summary>Chooses among the sets asked for.</summary>
    /// <returns>The total margin; infinite where no set is left.</returns>
    public double Choose()
    {
        var total = ChooseFreely();
        if (rules.Not is not { } not || !Selected.AsSpan().SequenceEqual(not))
            return total;
        // One turn away from the best set of all lies the best of all others.
        var (turned, least) = (-1, double.PositiveInfinity);
        foreach (var i in order)
        {
            if (Turning(i) is var adds && adds < least)
                (turned, least) = (i, adds);
        }

        if (turned >= 0)
            Turn(turned);
        return total + least;
    }

    /// <summary>What the total margin grows by where an emulsion's state is turned and the others follow as suits best. 0 or more.</summary>
    public double Turning(int i)
    {
        if (!Selected[i])
        {
            if (count + 1 > rules.Most)
                return lastIn < 0 ? double.PositiveInfinity : margins[i] - margins[lastIn];
            return lastIn < 0 ? margins[i] : margins[i] - Math.Max(0, margins[lastIn]);
        }

        if (count - 1 < rules.Least)
            return nextOut < 0 ? double.PositiveInfinity : margins[nextOut] - margins[i];
        return -margins[i] + (nextOut < 0 ? 0 : Math.Min(0, margins[nextOut]));
    }

    private void Turn(int i)
    {
        var other = Selected[i] switch
        {
            false when lastIn >= 0 && (count + 1 > rules.Most || margins[lastIn] > 0) => lastIn,
            true when nextOut >= 0 && (count - 1 < rules.Least || margins[nextOut] < 0) => nextOut,
            _ => -1,
        };
        Selected[i] = !Selected[i];
        if (other >= 0)
            Selected[other] = !Selected[other];
    }
}
