using Silkwright.Artwork;
using Silkwright.Film.Measuring.Halftones;
using Silkwright.Film.Measuring.Layout;
using Silkwright.Film.Readers;

namespace Silkwright.Film.Measuring;

/// <summary>Measures what a film demands.</summary>
public static class FilmMeasurer
{
    /// <summary>
    /// This way of measuring. Raise it whenever a film would get other figures than before, so that figures kept from the old way are never shown.
    /// </summary>
    public const string Version = "7";

    /// <summary>Parts of a measurement, and what share of the time each takes on a film of everything: printed by <c>./bench film</c>.</summary>
    private const int Reading = 0, Zones = 1, Widths = 2, Lines = 3, Gaps = 4;
    private static readonly double[] Shares = [0.08, 0.07, 0.35, 0.2, 0.3];

    private static readonly SemaphoreSlim Places = new(FilmLimits.FilmsAtOnce);

    /// <summary>Measures one film file.</summary>
    /// <param name="path">A 1-bit or 8-bit TIFF, or a PNG.</param>
    /// <param name="options">What the file cannot say.</param>
    /// <param name="progress">Told the share done, 0 to 1.</param>
    /// <param name="time">Clock for the speed.</param>
    /// <param name="cancel">Stops the work.</param>
    /// <exception cref="Silkwright.Estimates.InputProblemException">The file is missing, damaged or not a film.</exception>
    public static FilmReading Measure(
        string path, FilmOptions options, IProgress<double>? progress, TimeProvider time, CancellationToken cancel)
    {
        ArgumentNullException.ThrowIfNull(time);
        Places.Wait(cancel);
        try
        {
            return MeasureNow(path, options, progress, time, cancel);
        }
        finally
        {
            _ = Places.Release();
        }
    }

    /// <summary>Reads a film once for its coverage and its components, in memory that grows with its width alone.</summary>
    /// <exception cref="Silkwright.Estimates.InputProblemException">The file is missing, damaged or not a film.</exception>
    public static FilmCount Count(string path, FilmOptions options, IProgress<double>? progress, CancellationToken cancel)
    {
        using var film = FilmFile.Open(path, options);
        var (area, image, gap) = FilmComponents.Count(film, progress, cancel);
        return new FilmCount(
            Coverage(area, film.Header), new FilmCounts(image.Count, gap.Count), new FilmCounts(image.Specks, gap.Specks));
    }

    private static double Coverage(long imageArea, FilmHeader header) => 100.0 * imageArea / ((double)header.WidthPx * header.HeightPx);

    /// <summary>Measures a film that is already in memory; its specks are taken out of the bitmap on the way.</summary>
    internal static FilmMeasurement Measure(FilmBitmap bits, FilmHeader header, CancellationToken cancel)
    {
        var imageArea = bits.Count();
        var (image, gap) = FilmComponents.FindAndTakeOutSpecks(bits, header.Dpi, cancel);
        return Measure(bits, imageArea, image, gap, header, new WorkParts(null, Shares), cancel);
    }

    private static FilmMeasurement Measure(
        FilmBitmap bits, long imageArea, ComponentSet image, ComponentSet gap, FilmHeader header, WorkParts work, CancellationToken cancel)
    {
        var cells = new FilmCells(bits);
        IReadOnlyList<HalftoneZone> zones = [];
        FilmBitmap? mask = null;
        FinestFeature? finestImage = null, finestGap = null;
        IReadOnlyList<WidthShare> widths = [];
        FilmLayout? layout = null;

        // Each works on all cores, but not all the time: side by side they leave none idle. Only the searches wait for the halftones, where they do not look.
        var together = new ParallelOptions { CancellationToken = cancel };
        Parallel.Invoke(
            together,
            () =>
            {
                (zones, mask) = HalftoneFinder.Find(bits, image, gap, header.Dpi, cancel);
                work.Part(Zones)?.Report(1);
                Parallel.Invoke(together, () => finestGap = Finest(gap: true), () => finestImage = Finest(gap: false));
            },
            () => widths = WidthShares.Of(bits, cells, header.Dpi, work.Part(Widths), cancel),
            () => layout = LayoutFinder.Of(bits, image.Crosses, header.Dpi, cancel));
        return new FilmMeasurement
        {
            File = header.Name,
            WidthPx = header.WidthPx,
            HeightPx = header.HeightPx,
            Dpi = header.Dpi,
            CoveragePercent = Coverage(imageArea, header),
            Components = new FilmCounts(image.Count, gap.Count),
            Specks = new FilmCounts(image.Specks, gap.Specks),
            FinestImage = finestImage,
            FinestGap = finestGap,
            FinestDot = FinestDot(image, mask, header.Dpi),
            ImageWidths = widths,
            Halftones = zones,
            Layout = layout,
            Remarks = header.Remarks,
        };

        FinestFeature? Finest(bool gap) => new FinestSearch(bits, cells, gap, mask, header.Dpi, cancel).Find(work.Part(gap ? Gaps : Lines));
    }

    private static FilmReading MeasureNow(
        string path, FilmOptions options, IProgress<double>? progress, TimeProvider time, CancellationToken cancel)
    {
        var started = time.GetTimestamp();
        using var film = FilmFile.Open(path, options);
        var work = new WorkParts(progress, Shares);
        using var scratch = new ScratchFile();
        var bits = new FilmBitmap(film.Header.WidthPx, film.Header.HeightPx, scratch);
        var (imageArea, image, gap) = FilmComponents.Read(film, bits, work.Part(Reading), cancel);
        var measurement = Measure(bits, imageArea, image, gap, film.Header, work, cancel);
        progress?.Report(1);
        var seconds = time.GetElapsedTime(started).TotalSeconds;
        var megapixels = (double)film.Header.WidthPx * film.Header.HeightPx / 1e6;
        return new FilmReading(measurement, seconds > 0 ? megapixels / seconds : 0);
    }

    /// <summary>The smallest round part of the image outside the halftones.</summary>
    private static FilmDot? FinestDot(ComponentSet image, FilmBitmap? mask, double dpi)
    {
        var mm = 25.4 / dpi;
        DotShape? least = null;
        foreach (var dot in image.Dots)
        {
            if (dot.IsCompact && dot.Area < (least?.Area ?? int.MaxValue) && (mask is null || !mask[(int)dot.X, (int)dot.Y]))
                least = dot;
        }

        return least is { } found ? new FilmDot(found.Diameter * mm * 1000, found.X * mm, found.Y * mm) : null;
    }
}
