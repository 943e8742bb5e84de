using System.Diagnostics;
using System.Globalization;
using Silkwright.Artwork;
using Silkwright.Film.Measuring;
using Silkwright.Film.Pictures;
using Silkwright.Film.Places;
using Silkwright.Plans;

namespace Silkwright.Bench;

/// <summary>One film in this process: how long it takes until it can be looked at anywhere, and then to look.</summary>
internal static class TilesBench
{
    private const double BytesPerMiB = 1024 * 1024;

    /// <summary>Tiles of each level that are timed, and spots; all over the film.</summary>
    private const int Looks = 40;

    /// <summary>A coarse ruling of the trade: the finer it is, the less of the film is searched about a spot. [1/in]</summary>
    private const double RulingLpi = 45;

    /// <summary>The pass over the film [s], the slowest and the median tile and spot [ms], peak memory [MiB], bytes kept beside the film [MB].</summary>
    public static void Look(string path)
    {
        var folder = Directory.CreateTempSubdirectory("silkwright-tiles-");
        try
        {
            var clock = Stopwatch.StartNew();
            var tiles = FilmTiles.Of(path, new FilmOptions(), Path.Combine(folder.FullName, "film"), CancellationToken.None);
            var made = clock.Elapsed.TotalSeconds;
            var random = new Random(1);
            var (drawn, spots) = (new List<double>(), new List<double>());
            for (var level = 0; level <= tiles.Levels.Deepest; level++)
            {
                var (columns, rows) = tiles.Levels.Tiles(level);
                for (var look = 0; look < Looks; look++)
                    drawn.Add(Milliseconds(() => _ = tiles.Png(level, random.Next(columns), random.Next(rows), CancellationToken.None)));
            }

            using (var film = tiles.Open())
            {
                var (header, mmPerPx) = (film.Header, 25.4 / film.Header.Dpi);

                // As if the box about a halftone were the whole film: wherever it is narrow, its surroundings are searched for one.
                HalftoneZone everywhere = new()
                {
                    XMm = 0, YMm = 0, WidthMm = header.WidthPx * mmPerPx, HeightMm = header.HeightPx * mmPerPx, RulingLpi = RulingLpi, AngleDegrees = 0, TonePercentMin = 0, TonePercentMax = 100, CutDots = 0,
                };
                for (var look = 0; look < Looks; look++)
                    spots.Add(Milliseconds(() => _ = tiles.At(random.Next(header.WidthPx) * mmPerPx, random.Next(header.HeightPx) * mmPerPx, [everywhere], CancellationToken.None)));
            }

            using var self = Process.GetCurrentProcess();
            var kept = folder.EnumerateFiles().Sum(file => file.Length) / 1e6;
            Console.WriteLine(string.Create(
                CultureInfo.InvariantCulture,
                $"{made:0.00} {drawn.Max():0} {Median(drawn):0} {spots.Max():0} {Median(spots):0} {self.PeakWorkingSet64 / BytesPerMiB:0} {kept:0.0}"));
        }
        finally
        {
            folder.Delete(recursive: true);
        }
    }

    /// <summary>The film's heat against a mesh of 61 threads of 64 µm, drawn as its page draws it: seconds, peak memory [MiB].</summary>
    public static void Heat(string path)
    {
        var clock = Stopwatch.StartNew();
        _ = FilmHeat.Of(path, new FilmOptions(), HeldWidths.Of(192, 228), 1000, HeatColours.Day, CancellationToken.None);
        using var self = Process.GetCurrentProcess();
        Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{clock.Elapsed.TotalSeconds:0.00} {self.PeakWorkingSet64 / BytesPerMiB:0}"));
    }

    private static double Milliseconds(Action work)
    {
        var clock = Stopwatch.StartNew();
        work();
        return clock.Elapsed.TotalMilliseconds;
    }

    private static double Median(List<double> values) => values.Order().ElementAt(values.Count / 2);
}
