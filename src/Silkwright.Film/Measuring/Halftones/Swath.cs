namespace Silkwright.Film.Measuring.Halftones;

/// <summary>Rows of a film whose dots are looked at together to find lattices; each reaches into the next.</summary>
/// <remarks>To find which dots stand among their neighbours as on a lattice takes several times the memory of the dots, so a film of many is gone through in swaths.</remarks>
/// <param name="From">[px]</param>
/// <param name="To">The row after the last. [px]</param>
internal readonly record struct Swath(double From, double To)
{
    /// <summary>Dots that are looked at together.</summary>
    public const int DotsTogether = 250_000;

    /// <summary>Periods of the coarsest ruling that two swaths have in common: a zone of the fewest dots lies whole in one of them.</summary>
    private const double CommonPeriods = 20;

    /// <summary>Rows of a swath, at least so many times those it has in common with the next.</summary>
    private const int LeastRows = 2;

    /// <summary>The swaths of a film, from the top down; one where it has few dots.</summary>
    /// <param name="height">The film's. [px]</param>
    /// <param name="dots">How many it has.</param>
    /// <param name="dpi">[1/in]</param>
    /// <param name="together">Dots that are looked at together.</param>
    public static IReadOnlyList<Swath> Of(int height, int dots, double dpi, int together = DotsTogether)
    {
        var common = CommonPeriods * dpi / LatticeGroups.LeastLpi;
        var count = Math.Max(1, Math.Min((dots + together - 1) / together, (int)(height / (LeastRows * common))));
        return [.. Enumerable.Range(0, count).Select(k => new Swath(((double)height * k / count) - (common / 2), ((double)height * (k + 1) / count) + (common / 2)))];
    }
}
