using System.Diagnostics;
using System.Globalization;
using Silkwright.Estimates;
using Silkwright.Film.Measuring;
using Silkwright.Film.Readers;
using Silkwright.Film.TestFilms;

namespace Silkwright.Bench;

/// <summary>Spoilt films by the million: each is read or refused with a remedy, within 10 s and 1 GB.</summary>
internal static class FuzzBench
{
    private const double MostSeconds = 10;

    /// <summary>A case that takes so long hangs, however busy the machine.</summary>
    private const double MostSecondsBusy = 60;

    private const long MostBytes = 1L << 30;

    /// <summary>Every so many cases a film that can be read is measured wholly, not only read.</summary>
    private const int MeasuredEvery = 10;

    /// <summary>Every so many cases a PDF is spoilt: two programs are started for each.</summary>
    private const int PdfEvery = 100;

    private static readonly FilmOptions Options = new(600);

    /// <returns>Whether all went well.</returns>
    public static bool Run(string casesText, string firstText)
    {
        var (cases, first) = (int.Parse(casesText, CultureInfo.InvariantCulture), int.Parse(firstText, CultureInfo.InvariantCulture));
        var folder = Directory.CreateTempSubdirectory("silkwright-fuzz-");
        try
        {
            var tallies = new SortedDictionary<string, Tally>(StringComparer.Ordinal);
            var (done, started) = (0L, Stopwatch.GetTimestamp());
            var well = true;
            var work = Task.Run(() => well = All(cases, first, folder.FullName, tallies, ref done, ref started));
            while (!work.Wait(TimeSpan.FromSeconds(1)))
            {
                if (Stopwatch.GetElapsedTime(Volatile.Read(ref started)).TotalSeconds > MostSecondsBusy)
                {
                    Console.WriteLine($"case {first + Volatile.Read(ref done)} hangs: ./bench fuzz 1 {first + Volatile.Read(ref done)}");
                    return false;
                }

                Console.Error.Write($"\r{Volatile.Read(ref done)} of {cases}");
            }

            Console.Error.Write("\r");
            Console.WriteLine($"{"kind",-6}{"cases",10}{"read",10}{"refused",10}{"slowest ms",12}");
            foreach (var (kind, tally) in tallies)
                Console.WriteLine($"{kind,-6}{tally.Cases,10}{tally.Read,10}{tally.Refused,10}{1000 * tally.Slowest,12:0}");
            using var own = Process.GetCurrentProcess();
            Console.WriteLine($"largest memory {own.PeakWorkingSet64 >> 20} MiB; {(well ? "no fault" : "FAULTS, see above")}");
            return well && own.PeakWorkingSet64 <= MostBytes;
        }
        finally
        {
            folder.Delete(recursive: true);
        }
    }

    private static bool All(int cases, int first, string folder, SortedDictionary<string, Tally> tallies, ref long done, ref long started)
    {
        var films = SmallFilms.All(folder);
        var quick = films.Where(film => film.Kind != "PDF").ToArray();
        var slow = PdfFilmIsThere() ? films.Where(film => film.Kind == "PDF").ToArray() : [];
        if (slow.Length == 0)
            Console.WriteLine("pdftoppm is not installed: no PDF is tried.");
        var path = Path.Combine(folder, "case");
        var well = true;
        for (var i = 0; i < cases; i++)
        {
            var number = first + i;
            var (kind, film) = slow.Length > 0 && number % PdfEvery == 0 ? slow[number / PdfEvery % slow.Length] : quick[number % quick.Length];
            File.WriteAllBytes(path, FilmMutator.Spoil(film, new Random(number)));
            if (!tallies.TryGetValue(kind, out var tally))
                tallies[kind] = tally = new Tally();
            tally.Cases++;
            Volatile.Write(ref started, Stopwatch.GetTimestamp());
            try
            {
                Read(path, number % MeasuredEvery == 1);
                tally.Read++;
            }
            catch (InputProblemException problem) when (problem.Problems.All(one => one.What.Length > 0 && one.Remedy.Length > 0))
            {
                tally.Refused++;
            }
#pragma warning disable CA1031 // Any other exception is what is looked for.
            catch (Exception fault)
#pragma warning restore CA1031
            {
                well = false;
                Console.WriteLine($"case {number} ({kind}): {fault.GetType().Name}: {fault.Message}");
                Console.WriteLine(string.Join('\n', (fault.StackTrace ?? "").Split('\n').Take(4)));
            }

            var seconds = Stopwatch.GetElapsedTime(started).TotalSeconds;
            if (seconds > MostSeconds)
                seconds = Math.Min(seconds, OnceMore(path, number, ref started));
            tally.Slowest = Math.Max(tally.Slowest, seconds);
            if (seconds > MostSeconds)
            {
                well = false;
                Console.WriteLine($"case {number} ({kind}) took {seconds:0.0} s");
            }

            Volatile.Write(ref done, i + 1);
        }

        return well;
    }

    /// <summary>Seconds of the same case again: the machine may have been busy with something else.</summary>
    private static double OnceMore(string path, int number, ref long started)
    {
        Volatile.Write(ref started, Stopwatch.GetTimestamp());
        try
        {
            Read(path, number % MeasuredEvery == 1);
        }
        catch (InputProblemException)
        {
            // It was told the first time.
        }

        return Stopwatch.GetElapsedTime(started).TotalSeconds;
    }

    private static void Read(string path, bool whole)
    {
        if (whole)
        {
            _ = FilmMeasurer.Measure(path, Options, null, TimeProvider.System, CancellationToken.None);
            return;
        }

        using var film = FilmFile.Open(path, Options);
        film.ReadRows(0, film.Header.HeightPx, (_, _) => { }, CancellationToken.None);
    }

    private static bool PdfFilmIsThere() => PdfProgram.Find("pdftoppm", Environment.GetEnvironmentVariable("PATH") ?? "") is not null;

    private sealed class Tally
    {
        public int Cases { get; set; }

        public int Read { get; set; }

        public int Refused { get; set; }

        public double Slowest { get; set; }
    }
}
