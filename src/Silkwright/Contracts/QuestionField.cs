namespace Silkwright.Contracts;

/// <summary>One thing that a question asks for: an option of the shell and a name in a query string.</summary>
/// <param name="Name">Words joined by hyphens: <c>fabric-thickness</c>.</param>
/// <param name="Meaning">What it is, for people.</param>
public abstract record QuestionField(string Name, string Meaning)
{
    /// <summary>The question can't be answered without it.</summary>
    public bool Required { get; init; }

    /// <summary>One right way to write it.</summary>
    public abstract string Example { get; }

    /// <summary>What is taken, for people: the units, or the words.</summary>
    public abstract string Taken { get; }
}
