using System.ComponentModel;
using System.Diagnostics;
using System.Globalization;
using Silkwright.Statistics.Mixed;

namespace Silkwright.Bench;

/// <summary>How fast a mixed model of gauge readings is fitted, beside R's lme4 on the same rows in the same run.</summary>
internal static class CoatBench
{
    private static readonly string Folder = Path.Combine(AppContext.BaseDirectory, "coat");

    public static async Task RunAsync()
    {
        _ = Directory.CreateDirectory(Folder);
        var file = Path.Combine(Folder, "readings.csv");
        var readings = Drawn(10_000, 200);
        await File.WriteAllLinesAsync(file, ["y,x,shop,operator", .. readings.Lines()]);
        var own = (await ProgramRun.OfAsync(Environment.ProcessPath!, "coat-fit", file)).Output.Trim().Split(' ');
        Console.WriteLine("10,000 readings of 200 shops, a height and a slope by shop, a height by operator; the fit alone, best of three");
        Console.WriteLine($"{"",-12}{"s",10}{"criterion",16}{"residual",12}{"shop",10}{"slope",10}{"operator",10}");
        Console.WriteLine(Line("ours", own));
        if (await PeerAsync(file) is { } peer)
        {
            Console.WriteLine(Line("lme4", peer));
            Console.WriteLine(Say($"lme4 takes {Number(peer[0]) / Number(own[0]):0} times as long."));
        }
        else
        {
            Console.WriteLine("R with lme4 (Debian's r-cran-lme4) is not here: nothing to compare with.");
        }

        Console.WriteLine();
        var large = (await ProgramRun.OfAsync(Environment.ProcessPath!, "coat-large")).Output.Trim().Split(' ');
        Console.WriteLine(Say($"100,000 readings of 2,000 shops, by shop (height and slope), operator, trough, emulsion and mesh class: {large[0]} s, {large[1]} MiB for the whole process."));
        Console.WriteLine(Say($"One reading more: {large[2]} ms, the worst of twenty."));

        Console.WriteLine();
        var learnt = (await ProgramRun.OfAsync(Environment.ProcessPath!, "coat-learn")).Output.Trim().Split(' ');
        Console.WriteLine(Say($"100,000 readings of 2,000 shops learnt as coats (shop, operator, trough, recipe, screen, emulsion, mesh and the balance's constants): {learnt[0]} s, {learnt[1]} MiB for the whole process."));
        Console.WriteLine(Say($"One reading more, with a coat expected of it: {learnt[2]} ms, the worst of twenty."));
    }

    /// <summary>One fit of a file's readings: seconds, criterion and variances.</summary>
    public static void Fit(string file)
    {
        var rows = File.ReadLines(file).Skip(1).Select(line => line.Split(',').Select(Number).ToArray()).ToArray();
        var model = Model(rows.Select(r => r[0]), rows.Select(r => r[1]), ("shop", [.. rows.Select(r => (int)r[2])], true), ("operator", [.. rows.Select(r => (int)r[3])], false));
        var seconds = Best(() => MixedFit.Of(model), out var fit);
        Console.WriteLine(Say($"{seconds:0.000} {fit.Criterion:0.0000} {fit.ResidualVariance:0.00000} {fit.Covariance(0, 0, 0):0.00000} {fit.Covariance(0, 1, 1):0.000000} {fit.Covariance(1, 0, 0):0.00000}"));
    }

    /// <summary>The large fit: seconds, MiB, and milliseconds for a reading more with an expectation out of it.</summary>
    public static void Large()
    {
        var r = Drawn(100_000, 2_000);
        var model = Model(r.Y, r.X, ("shop", r.Shop, true), ("operator", r.Operator, false), ("trough", r.Trough, false), ("emulsion", r.Emulsion, false), ("mesh class", r.MeshClass, false));
        var seconds = Best(() => MixedFit.Of(model), out var fit);
        using var self = Process.GetCurrentProcess();
        var peak = self.PeakWorkingSet64 / 1048576.0;
        var worst = 0.0;
        for (var i = 0; i <= 20; i++)
        {
            var watch = Stopwatch.StartNew();
            fit = fit.With(new MixedRow(r.Y[i], [1, r.X[i]], [(r.Shop[i], [1, r.X[i]]), (r.Operator[i], [1]), (r.Trough[i], [1]), (r.Emulsion[i], [1]), (r.MeshClass[i], [1])]));
            _ = fit.Expect([1, r.X[i]], [(r.Shop[i], [1, r.X[i]]), (r.Operator[i], [1]), (r.Trough[i], [1]), (r.Emulsion[i], [1]), (r.MeshClass[i], [1])]);
            worst = i == 0 ? 0 : Math.Max(worst, watch.Elapsed.TotalMilliseconds);
        }

        Console.WriteLine(Say($"{seconds:0.00} {peak:0} {worst:0.00}"));
    }

    private static MixedModel Model(IEnumerable<double> y, IEnumerable<double> x, params (string Name, int[] Levels, bool Slope)[] terms)
    {
        double[] response = [.. y], slope = [.. x], ones = [.. Enumerable.Repeat(1.0, response.Length)];
        return new MixedModel
        {
            Response = response,
            Fixed = [ones, slope],
            Random = [.. terms.Select(t => new RandomTerm(t.Name, t.Levels, t.Levels.Max() + 1, t.Slope ? [ones, slope] : [ones]))],
        };
    }

    private static Readings Drawn(int rows, int shops)
    {
        const int operators = 4, troughs = 3, emulsions = 20, classes = 8;
        var random = new Random(31);
        double[] Effects(int count, double spread) => [.. Enumerable.Range(0, count).Select(_ => spread * Normal(random))];
        var (height, slope, hand) = (Effects(shops, 1.5), Effects(shops, 0.1), Effects(shops * operators, 1));
        var (trough, kind, mesh) = (Effects(shops * troughs, 0.6), Effects(emulsions, 0.8), Effects(classes, 0.7));
        var all = new Readings(new double[rows], new double[rows], new int[rows], new int[rows], new int[rows], new int[rows], new int[rows]);
        for (var i = 0; i < rows; i++)
        {
            var shop = all.Shop[i] = random.Next(shops);
            all.Operator[i] = (shop * operators) + random.Next(operators);
            all.Trough[i] = (shop * troughs) + random.Next(troughs);
            (all.Emulsion[i], all.MeshClass[i], all.X[i]) = (random.Next(emulsions), random.Next(classes), Math.Round(2 + (23 * random.NextDouble()), 3));
            all.Y[i] = Math.Round(
                1.5 + ((0.9 + slope[shop]) * all.X[i]) + height[shop] + hand[all.Operator[i]] + trough[all.Trough[i]] + kind[all.Emulsion[i]] + mesh[all.MeshClass[i]] + (1.2 * Normal(random)), 4);
        }

        return all;
    }

    private static double Normal(Random random) => Math.Sqrt(-2 * Math.Log(1 - random.NextDouble())) * Math.Cos(2 * Math.PI * random.NextDouble());

    private static double Best(Func<MixedFit> run, out MixedFit fit)
    {
        fit = run();
        var best = double.PositiveInfinity;
        for (var i = 0; i < 3; i++)
        {
            var watch = Stopwatch.StartNew();
            fit = run();
            best = Math.Min(best, watch.Elapsed.TotalSeconds);
        }

        return best;
    }

    private static async Task<string[]?> PeerAsync(string file)
    {
        try
        {
            return (await ProgramRun.OfAsync("Rscript", Path.Combine(AppContext.BaseDirectory, "peers", "mixed.R"), file)).Output.Trim().Split(' ');
        }
        catch (Exception failure) when (failure is InvalidOperationException or Win32Exception)
        {
            return null;
        }
    }

    private static string Line(string who, string[] figures) =>
        $"{who,-12}{figures[0],10}{figures[1],16}{figures[2],12}{figures[3],10}{figures[4],10}{figures[5],10}";

    private static double Number(string text) => double.Parse(text, CultureInfo.InvariantCulture);

    private static string Say(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);

    /// <summary>Readings drawn by chance, column by column.</summary>
    private sealed record Readings(double[] Y, double[] X, int[] Shop, int[] Operator, int[] Trough, int[] Emulsion, int[] MeshClass)
    {
        public IEnumerable<string> Lines() => Y.Select((y, i) => Say($"{y},{X[i]},{Shop[i]},{Operator[i]}"));
    }
}
