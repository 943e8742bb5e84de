namespace Silkwright.Contracts;

/// <summary>An answer typed as a word.</summary>
public enum YesNo
{
    No,
    Yes,
}
