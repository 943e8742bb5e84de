namespace Silkwright.Gauging;

/// <summary>Nine places on a screen and what was read there, judged as a shop would.</summary>
/// <param name="EomUm">By place, 1 to 9, rows from the top left; a missing one is not read yet. [µm]</param>
public sealed record PlaceMap(IReadOnlyDictionary<int, double> EomUm)
{
    public const int Places = 9;

    /// <summary>A coat is even where its range stays below this share of its mean, or below the other figure. Common practice, no source. [1]</summary>
    public const double EvenShare = 0.2;

    /// <inheritdoc cref="EvenShare"/>
    public const double EvenUm = 3;

    /// <summary>The place to read next; none where all are read.</summary>
    public int? Next => Enumerable.Range(1, Places).Where(place => !EomUm.ContainsKey(place)).Select(place => (int?)place).FirstOrDefault();

    public double? MeanUm => EomUm.Count > 0 ? EomUm.Values.Average() : null;

    public double? RangeUm => EomUm.Count > 1 ? EomUm.Values.Max() - EomUm.Values.Min() : null;

    /// <summary>The range that still counts as even. [µm]</summary>
    public double? AllowedUm => MeanUm is { } mean ? Math.Max(EvenUm, EvenShare * mean) : null;

    /// <summary>Even, or not; none with fewer than two places read.</summary>
    public bool? IsEven => RangeUm is { } range ? range <= AllowedUm!.Value : null;

    /// <summary>The place furthest from the middle of all; none where the coat is even.</summary>
    public int? Odd
    {
        get
        {
            if (IsEven is not false)
                return null;
            double[] sorted = [.. EomUm.Values.Order()];
            var median = (sorted[(sorted.Length - 1) / 2] + sorted[sorted.Length / 2]) / 2;
            return EomUm.MaxBy(place => Math.Abs(place.Value - median)).Key;
        }
    }
}
