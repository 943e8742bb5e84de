using Silkwright.Estimates;

namespace Silkwright.Web.Pictures;

/// <summary>A shelf in a picture.</summary>
/// <param name="Name">What it is beside the others.</param>
/// <param name="Keep">The emulsions on it.</param>
/// <param name="MonthlyCost">[currency/month]</param>
public sealed record ShelfOption(string Name, IReadOnlyList<string> Keep, double MonthlyCost)
{
    /// <summary>Where the cost may lie; of a shelf held against another, where the difference may put it. None: not known. [currency/month]</summary>
    public Estimate? Range { get; init; }
}
