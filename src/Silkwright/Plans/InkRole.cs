namespace Silkwright.Plans;

/// <summary>What a colour does in the print.</summary>
public enum InkRole
{
    Underbase,
    Colour,
    Highlight,
}
