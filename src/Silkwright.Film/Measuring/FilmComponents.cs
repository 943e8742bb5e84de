using Silkwright.Film.Readers;

namespace Silkwright.Film.Measuring;

/// <summary>8-connected components of image and gap: docs/engines/film.md, "Components".</summary>
internal static class FilmComponents
{
    /// <summary>Largest area of a speck. [px] The contract's definition.</summary>
    public const int SpeckArea = 4;

    /// <summary>Most dots kept of each kind; more is noise or a screen without a ruling.</summary>
    public const int MostDots = 6_000_000;

    private const int LeastBandRows = 64;
    private const int MostBands = 16;

    /// <summary>Counts the components and takes the specks out of the bitmap: those of the image become gap and the other way round.</summary>
    public static (ComponentSet Image, ComponentSet Gap) FindAndTakeOutSpecks(PackedBitmap bits, CancellationToken cancel) =>
        FindAndTakeOutSpecks(bits, Math.Max(LeastBandRows, (bits.Height + MostBands - 1) / MostBands), cancel);

    /// <summary>The same with bands of a chosen height, each scanned on its own; the answer does not depend on it.</summary>
    public static (ComponentSet Image, ComponentSet Gap) FindAndTakeOutSpecks(PackedBitmap bits, int bandRows, CancellationToken cancel)
    {
        var specks = new SpeckMarks(bits);
        var bands = new ComponentBand[(bits.Height + bandRows - 1) / bandRows];
        for (var b = 0; b < bands.Length; b++)
            bands[b] = new ComponentBand(bits, b * bandRows, Math.Min(bits.Height, (b + 1) * bandRows), specks);
        _ = Parallel.ForEach(bands, new ParallelOptions { CancellationToken = cancel }, band => band.Scan(cancel));
        var image = Gather([.. bands.Select(b => b.Image)], [.. bands.Select(b => b.ImageTally)], specks);
        var gap = Gather([.. bands.Select(b => b.Gap)], [.. bands.Select(b => b.GapTally)], specks);
        specks.Apply();
        return (image, gap);
    }

    private static ComponentSet Gather(BandComponents[] bands, ComponentTally[] tallies, SpeckMarks specks)
    {
        var seams = new ComponentTally(specks);
        foreach (var blob in ComponentSeams.Join(bands))
            seams.Close(blob);
        var dots = new List<DotShape>(Math.Min(MostDots, seams.Dots.Count + tallies.Sum(t => t.Dots.Count)));
        foreach (var tally in tallies.Append(seams))
        {
            dots.AddRange(tally.Dots.Take(MostDots - dots.Count));
            tally.Dots.Clear();
            tally.Dots.TrimExcess();
        }

        return new ComponentSet(
            seams.Count + tallies.Sum(t => t.Count), seams.SpeckCount + tallies.Sum(t => t.SpeckCount), dots);
    }
}
