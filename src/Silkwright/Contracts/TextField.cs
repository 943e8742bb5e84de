namespace Silkwright.Contracts;

/// <summary>Words that a question asks for as they are: a name, a lot, a remark.</summary>
/// <param name="Name">Words joined by hyphens.</param>
/// <param name="Meaning">What it is, for people.</param>
/// <param name="Sample">One right way to write it.</param>
public sealed record TextField(string Name, string Meaning, string Sample) : QuestionField(Name, Meaning)
{
    public override string Example => Sample;

    public override string Taken => "text";
}
