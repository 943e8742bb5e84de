namespace Silkwright.Contracts;

/// <summary>One word of a few that a question asks for.</summary>
/// <param name="Name">Words joined by hyphens.</param>
/// <param name="Words">The words taken.</param>
/// <param name="Meaning">What it is, for people.</param>
public sealed record ChoiceField(string Name, IReadOnlyList<string> Words, string Meaning) : QuestionField(Name, Meaning)
{
    public override string Example => Words[0];

    public override string Taken => string.Join(", ", Words);

    /// <summary>A field that takes the members of an enumeration.</summary>
    public static ChoiceField Of<T>(string name, string meaning)
        where T : struct, Enum => new(name, Names.All<T>(), meaning);
}
