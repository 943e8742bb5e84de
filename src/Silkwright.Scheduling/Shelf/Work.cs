namespace Silkwright.Scheduling.Shelf;

/// <summary>Decides in one place where two threads are worth their start. Each emulsion's result is its own: the order never shows.</summary>
internal static class Work
{
    /// <summary>Costs looked at in one go from which threads pay.</summary>
    private const int CostsForThreads = 1_000_000;

    public static void ForEachEmulsion(ShelfProblem problem, Action<int> work)
    {
        if ((long)problem.Choices * problem.Points >= CostsForThreads)
        {
            Parallel.For(0, problem.Choices, work);
            return;
        }

        for (var i = 0; i < problem.Choices; i++)
            work(i);
    }
}
