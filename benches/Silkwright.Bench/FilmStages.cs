using System.Diagnostics;
using System.Globalization;
using Silkwright.Film.Measuring;
using Silkwright.Film.Measuring.Halftones;
using Silkwright.Film.Readers;

namespace Silkwright.Bench;

/// <summary>One film in this process: how long its stages take.</summary>
internal static class FilmStages
{
    private const double BytesPerMiB = 1024 * 1024;

    /// <summary>The first runs compile.</summary>
    private const int OpeningRuns = 8;

    /// <summary>Coverage and components in one reading.</summary>
    public static void Count(string path)
    {
        var clock = Stopwatch.StartNew();
        var count = FilmMeasurer.Count(path, new FilmOptions(), null, CancellationToken.None);
        Tell(clock, Say($"{count.Components.Image + count.Specks.Image} {count.Components.Gap + count.Specks.Gap}"));
    }

    /// <summary>Everything.</summary>
    public static void Measure(string path)
    {
        var clock = Stopwatch.StartNew();
        var film = FilmMeasurer.Measure(path, new FilmOptions(), null, TimeProvider.System, CancellationToken.None).Measurement;
        Tell(clock, Say($"{film.Components.Image + film.Specks.Image} {film.Components.Gap + film.Specks.Gap}"));
    }

    /// <summary>Seconds of counting and of everything, and MiB at most, once a small film of the same kind has had all compiled.</summary>
    public static void Warm(string small, string path)
    {
        var options = new FilmOptions();
        _ = FilmMeasurer.Count(small, options, null, CancellationToken.None);
        _ = FilmMeasurer.Measure(small, options, null, TimeProvider.System, CancellationToken.None);
        var count = Quickest(() => FilmMeasurer.Count(path, options, null, CancellationToken.None));
        var whole = Quickest(() => FilmMeasurer.Measure(path, options, null, TimeProvider.System, CancellationToken.None));
        using var self = Process.GetCurrentProcess();
        Console.WriteLine(Say($"{count:0.000} {whole:0.000} {self.PeakWorkingSet64 / BytesPerMiB:0}"));
    }

    /// <summary>Seconds of the quickest of two runs, or of as many as a second has room for.</summary>
    private static double Quickest(Action run)
    {
        var (quickest, all) = (double.MaxValue, Stopwatch.StartNew());
        for (var runs = 0; runs < 2 || all.Elapsed.TotalSeconds < 1; runs++)
        {
            var clock = Stopwatch.StartNew();
            run();
            quickest = Math.Min(quickest, clock.Elapsed.TotalSeconds);
        }

        return quickest;
    }

    /// <summary>What takes the time, once a small film of the same kind has had all compiled: reading with components, zones, finest parts, widths. [s]</summary>
    public static void Stages(string small, string path)
    {
        _ = FilmMeasurer.Measure(small, new FilmOptions(), null, TimeProvider.System, CancellationToken.None);
        using var film = FilmFile.Open(path, new FilmOptions());
        using var scratch = new ScratchFile();
        var bits = new FilmBitmap(film.Header.WidthPx, film.Header.HeightPx, scratch);
        var clock = Stopwatch.StartNew();
        var (_, image, gap) = FilmComponents.Read(film, bits, null, CancellationToken.None);
        var read = clock.Elapsed.TotalSeconds;
        clock.Restart();
        var (zones, mask) = HalftoneFinder.Find(bits, image, gap, film.Header.Dpi, CancellationToken.None);
        var found = clock.Elapsed.TotalSeconds;
        clock.Restart();
        var cells = new FilmCells(bits);
        _ = Parallel.For(0, 2, i => new FinestSearch(bits, cells, i == 1, mask, film.Header.Dpi, CancellationToken.None).Find());
        var finest = clock.Elapsed.TotalSeconds;
        clock.Restart();
        _ = WidthShares.Of(bits, cells, film.Header.Dpi, null, CancellationToken.None);
        Console.WriteLine(Say($"{read:0.00} {found:0.00} {finest:0.00} {clock.Elapsed.TotalSeconds:0.00} {zones.Count}"));
    }

    /// <summary>Openings of the image by discs, the quickest of a few runs: seconds, processor seconds and pixels removed a line; at the end MiB with the film in it.</summary>
    public static void Open(string path, IReadOnlyList<string> diameters)
    {
        using var film = FilmFile.Open(path, new FilmOptions());
        var bits = FilmBitmap.Of(FilmFile.ReadBits(film, null, CancellationToken.None));
        var cells = new FilmCells(bits);
        using var self = Process.GetCurrentProcess();
        foreach (var diameter in diameters.Select(d => int.Parse(d, CultureInfo.InvariantCulture)))
        {
            var (seconds, processor, removed) = (double.MaxValue, 0.0, 0L);
            for (var run = 0; run < OpeningRuns; run++)
            {
                self.Refresh();
                var worked = self.TotalProcessorTime;
                var clock = Stopwatch.StartNew();
                removed = new OpeningTiles(bits, cells, false, CancellationToken.None).Area(diameter);
                var took = clock.Elapsed.TotalSeconds;
                self.Refresh();
                if (took < seconds)
                    (seconds, processor) = (took, (self.TotalProcessorTime - worked).TotalSeconds);
            }

            Console.WriteLine(Say($"{seconds:0.0000} {processor:0.000} {removed}"));
        }

        Console.WriteLine(Say($"{self.PeakWorkingSet64 / BytesPerMiB:0}"));
    }

    /// <summary>Seconds from the process's start, seconds of the work alone, processor seconds, MiB at most.</summary>
    private static void Tell(Stopwatch clock, string what)
    {
        var alone = clock.Elapsed.TotalSeconds;
        using var self = Process.GetCurrentProcess();
        var whole = (TimeProvider.System.GetLocalNow() - self.StartTime).TotalSeconds;
        Console.WriteLine(Say($"{whole:0.00} {alone:0.000} {self.TotalProcessorTime.TotalSeconds:0.00} {self.PeakWorkingSet64 / BytesPerMiB:0} {what}"));
    }

    private static string Say(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}
