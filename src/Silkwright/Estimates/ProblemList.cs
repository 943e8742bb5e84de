namespace Silkwright.Estimates;

/// <summary>Collects the faults of one input so that all are told at once.</summary>
public sealed class ProblemList
{
    private readonly List<Problem> problems = [];
    private readonly HashSet<Problem> once = [];

    public IReadOnlyList<Problem> Problems => problems;

    public bool IsEmpty => problems.Count == 0;

    public void Add(string what, string where, string remedy) => problems.Add(new Problem(what, where, remedy));

    /// <summary>Adds a fault that may be met several times and is told once.</summary>
    public void AddOnce(string what, string where, string remedy)
    {
        var problem = new Problem(what, where, remedy);
        if (once.Add(problem))
            problems.Add(problem);
    }

    public void AddRange(IEnumerable<Problem> more) => problems.AddRange(more);

    /// <exception cref="InputProblemException">There is at least one fault.</exception>
    public void ThrowIfAny()
    {
        if (!IsEmpty)
            throw new InputProblemException(problems);
    }
}
