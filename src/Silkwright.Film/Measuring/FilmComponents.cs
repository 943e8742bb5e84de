using Silkwright.Film.Measuring.Layout;
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

    /// <summary>Reads a film once: its coverage and its components, in memory that grows with its width alone.</summary>
    public static (long ImageArea, ComponentSet Image, ComponentSet Gap) Count(IFilmSource film, IProgress<double>? progress, CancellationToken cancel)
    {
        var rows = BandRows(film);
        return Scan(film.Header.HeightPx, rows, film.Header.WidthPx, null, null, (first, count, _, sink) => film.ReadRuns(first, count, sink, cancel), progress, cancel);
    }

    /// <summary>Reads a film once into a blank bitmap of its size, finds its components and takes the specks out of the bitmap.</summary>
    /// <param name="film">The film.</param>
    /// <param name="bits">As large as the film.</param>
    /// <param name="progress">Told the share done, 0 to 1.</param>
    /// <param name="cancel">Stops the work.</param>
    /// <param name="mostBytes">A film that takes more memory is refused.</param>
    /// <exception cref="Silkwright.Estimates.InputProblemException">The film is damaged, or more of it is mixed than is kept in memory.</exception>
    public static (long ImageArea, ComponentSet Image, ComponentSet Gap) Read(
        IFilmSource film, FilmBitmap bits, IProgress<double>? progress, CancellationToken cancel, long mostBytes = FilmLimits.MostKeptBytes) =>
        Scan(
            bits.Height,
            BandRows(film),
            bits.Width,
            bits,
            film.Header.Dpi,
            (first, count, band, sink) =>
            {
                var writer = new CellRowWriter(bits);
                film.ReadRuns(
                    first,
                    count,
                    (y, edges) =>
                    {
                        RowRuns.Fill(writer.Row(y), edges);
                        if (writer.Written == y)
                        {
                            band.MarkSpecks();
                            if (bits.KeptBytes > mostBytes)
                                throw FilmProblems.TooMixed(film.Header.Name);
                        }

                        sink(y, edges);
                    },
                    cancel);
                writer.Flush();
            },
            progress,
            cancel);

    /// <summary>Counts the components and takes the specks out of the bitmap: those of the image become gap and the other way round.</summary>
    public static (ComponentSet Image, ComponentSet Gap) FindAndTakeOutSpecks(FilmBitmap bits, double? dpi, CancellationToken cancel) =>
        FindAndTakeOutSpecks(bits, dpi, EvenBands(bits.Height), cancel);

    /// <summary>The same with bands of a chosen height, each scanned on its own; the answer does not depend on it.</summary>
    public static (ComponentSet Image, ComponentSet Gap) FindAndTakeOutSpecks(FilmBitmap bits, double? dpi, int bandRows, CancellationToken cancel)
    {
        var (_, image, gap) = Scan(
            bits.Height,
            bandRows,
            bits.Width,
            bits,
            dpi,
            (first, count, _, sink) =>
            {
                var edges = new int[bits.Width + 2];
                for (var y = first; y < first + count; y++)
                {
                    if ((y & 255) == 0)
                        cancel.ThrowIfCancellationRequested();
                    sink(y, edges.AsSpan(0, bits.Edges(y, edges)));
                }
            },
            null,
            cancel);
        return (image, gap);
    }

    private static int EvenBands(int height) => Math.Max(LeastBandRows, (height + MostBands - 1) / MostBands);

    /// <summary>Bands that begin where reading can; one band where it can only begin at the top.</summary>
    private static int BandRows(IFilmSource film)
    {
        var together = film.RowsTogether;
        return together >= film.Header.HeightPx ? film.Header.HeightPx : (EvenBands(film.Header.HeightPx) + together - 1) / together * together;
    }

    private static (long ImageArea, ComponentSet Image, ComponentSet Gap) Scan(
        int height, int bandRows, int width, FilmBitmap? bits, double? dpi, Action<int, int, ComponentBand, RunSink> read, IProgress<double>? progress, CancellationToken cancel)
    {
        var specks = bits is null ? null : new SpeckMarks(bits);
        Predicate<Blob>? keeps = dpi is { } known ? blob => MarkShape.MayBe(blob, known) : null;
        var bands = new ComponentBand[(height + bandRows - 1) / bandRows];
        var done = 0;
        try
        {
            _ = Parallel.For(0, bands.Length, new ParallelOptions { CancellationToken = cancel, MaxDegreeOfParallelism = Environment.ProcessorCount }, b =>
            {
                var band = bands[b] = new ComponentBand(width, new ComponentTally(specks, keeps), new ComponentTally(specks));
                var first = b * bandRows;
                read(first, Math.Min(bandRows, height - first), band, (y, edges) =>
                {
                    band.AddRow(y, edges);
                    if ((y & 1023) == 0)
                        progress?.Report(1024.0 * Interlocked.Increment(ref done) / height);
                });
                band.MarkSpecks();
                band.ImageTally.PutDotsInOrder();
                band.GapTally.PutDotsInOrder();
            });
        }
        catch (AggregateException failures)
        {
            // A damaged film is told once, whoever of the readers met the damage first.
            System.Runtime.ExceptionServices.ExceptionDispatchInfo.Throw(failures.InnerExceptions[0]);
        }

        var image = Gather([.. bands.Select(b => b.Image)], [.. bands.Select(b => b.ImageTally)], specks, keeps);
        var gap = Gather([.. bands.Select(b => b.Gap)], [.. bands.Select(b => b.GapTally)], specks, null);
        specks?.Apply();
        return (bands.Sum(b => b.ImageArea), image, gap);
    }

    private static ComponentSet Gather(BandComponents[] bands, ComponentTally[] tallies, SpeckMarks? specks, Predicate<Blob>? keeps)
    {
        var seams = new ComponentTally(specks, keeps);
        foreach (var blob in ComponentSeams.Join(bands))
            seams.Close(blob);
        seams.MarkSpecks();
        seams.PutDotsInOrder();
        return new ComponentSet(
            seams.Count + tallies.Sum(t => t.Count), seams.SpeckCount + tallies.Sum(t => t.SpeckCount), InOrder(tallies, seams), [.. tallies.Append(seams).SelectMany(t => t.Kept).OrderBy(k => k.Top).ThenBy(k => k.Left)]);
    }

    /// <summary>The dots of all bands from the top down, and those across their seams between them; the tallies are emptied.</summary>
    /// <remarks>One order whatever the bands: lattices start from a dot, and a film's figures must not hang on how its strips were cut.</remarks>
    private static DotShape[] InOrder(ComponentTally[] bands, ComponentTally seams)
    {
        var across = seams.TakeDots();
        var dots = new DotShape[Math.Min(MostDots, across.Count + bands.Sum(b => b.DotCount))];
        var count = 0;
        foreach (var band in bands)
        {
            var own = band.TakeDots();
            var taken = Math.Min(own.Count, dots.Length - count);
            own.CopyTo(0, dots, count, taken);
            count += taken;
        }

        // What lies within a band is above all of the next, so only those across seams are to be put in: from the end, where there is room.
        var (at, left) = (count - 1, dots.Length - count - 1);
        for (var to = dots.Length - 1; left >= 0; to--)
            dots[to] = at >= 0 && dots[at].CompareTo(across[left]) > 0 ? dots[at--] : across[left--];
        return dots;
    }
}
