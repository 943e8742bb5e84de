namespace Silkwright.Web.Pictures;

/// <summary>A shelf in a picture.</summary>
/// <param name="Name">What it is beside the others.</param>
/// <param name="Keep">The emulsions on it.</param>
/// <param name="MonthlyCost">[currency/month]</param>
public sealed record ShelfOption(string Name, IReadOnlyList<string> Keep, double MonthlyCost);
