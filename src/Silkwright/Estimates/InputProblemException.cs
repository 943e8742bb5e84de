namespace Silkwright.Estimates;

/// <summary>Bad input, with every fault found. Exit 2 in the shell, 4xx with problem details over HTTP.</summary>
public sealed class InputProblemException(IReadOnlyList<Problem> problems)
    : Exception(string.Join(Environment.NewLine, problems.Select(p => $"{p.Where}: {p.What} {p.Remedy}")))
{
    public InputProblemException(Problem problem)
        : this([problem])
    {
    }

    public IReadOnlyList<Problem> Problems { get; } = problems;
}
