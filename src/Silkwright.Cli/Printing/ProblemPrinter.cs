using Silkwright.Estimates;

namespace Silkwright.Cli.Printing;

/// <summary>Faults in words: what, where, and what to do.</summary>
internal static class ProblemPrinter
{
    public static void Print(IReadOnlyList<Problem> problems, TextWriter error)
    {
        error.WriteLine(problems.Count == 1 ? "This can't be done as asked:" : $"This can't be done as asked, for {problems.Count} reasons:");
        foreach (var problem in problems)
        {
            error.WriteLine();
            error.WriteLine($"  {problem.What}");
            error.WriteLine($"    where:  {problem.Where}");
            error.WriteLine($"    remedy: {problem.Remedy}");
        }
    }

    /// <summary>A failure of ours: one line, and how to report it.</summary>
    public static void PrintFailure(Exception failure, Surroundings surroundings)
    {
        var what = failure.Message.ReplaceLineEndings(" ");
        surroundings.Error.WriteLine(
            $"Silkwright failed: {what} ({failure.GetType().Name}). Please report this line with the command you ran; SILKWRIGHT_TRACE=1 adds where it happened.");
        if (surroundings.Trace)
            surroundings.Error.WriteLine(failure.ToString());
    }
}
