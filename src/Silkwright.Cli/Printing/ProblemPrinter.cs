using Silkwright.Estimates;

namespace Silkwright.Cli.Printing;

/// <summary>Faults in words: what, where, and what to do.</summary>
internal static class ProblemPrinter
{
    /// <summary>More faults than a person mends before the next try.</summary>
    private const int MostShown = 50;

    public static void Print(IReadOnlyList<Problem> problems, TextWriter error)
    {
        var shown = problems.Take(MostShown).ToArray();
        error.WriteLine(problems.Count == 1 ? "This can't be done as asked:" : $"This can't be done as asked, for {problems.Count} reasons:");
        foreach (var problem in shown)
        {
            error.WriteLine();
            error.WriteLine($"  {PlainText.Of(problem.What)}");
            error.WriteLine($"    where:  {PlainText.Of(problem.Where)}");
            error.WriteLine($"    remedy: {PlainText.Of(problem.Remedy)}");
        }

        if (problems.Count > shown.Length)
            error.WriteLine($"{Environment.NewLine}  And {problems.Count - shown.Length} more. Mend these first.");
    }

    /// <summary>A failure of ours: one line, and how to report it.</summary>
    public static void PrintFailure(Exception failure, Surroundings surroundings)
    {
        var what = PlainText.Of(failure.Message.ReplaceLineEndings(" "));
        surroundings.Error.WriteLine(
            $"Silkwright failed: {what} ({failure.GetType().Name}). Please report this line with the command you ran; SILKWRIGHT_TRACE=1 adds where it happened.");
        if (surroundings.Trace)
            surroundings.Error.WriteLine(failure.ToString());
    }
}
