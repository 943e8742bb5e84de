namespace Silkwright.Estimates;

/// <summary>A caution that stands before the step it belongs to.</summary>
/// <param name="Step">The step it comes before, in plain words ("Before exposing").</param>
/// <param name="Text">Hazard, consequence and how to avoid it; who decides.</param>
/// <param name="Level">How bad it gets.</param>
public sealed record Caution(string Step, string Text, CautionLevel Level)
{
    /// <summary>The hazard alone: the first sentence of the text.</summary>
    public string Hazard => Text.IndexOf(". ", StringComparison.Ordinal) is > 0 and var end ? Text[..(end + 1)] : Text;
}
