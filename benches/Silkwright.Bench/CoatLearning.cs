using System.Diagnostics;
using System.Globalization;
using Silkwright.Coating;
using Silkwright.Coating.Learning;
using Silkwright.Emulsion;
using Silkwright.Mesh;

namespace Silkwright.Bench;

/// <summary>How fast all coats of many shops are learnt, and one reading more is taken in.</summary>
internal static class CoatLearning
{
    private const int Shops = 2_000, Each = 50;

    /// <summary>Seconds, MiB, and milliseconds for a reading more with a coat expected.</summary>
    public static void Run()
    {
        var (reads, more) = Drawn(new Random(31));
        var (best, learnt) = (double.PositiveInfinity, CoatHierarchy.Of([]));
        for (var i = 0; i < 4; i++)
        {
            // What an earlier time left behind is not this one's.
            learnt = CoatHierarchy.Of([]);
            GC.Collect();
            var watch = Stopwatch.StartNew();
            learnt = CoatHierarchy.Of(reads);
            best = i == 0 ? best : Math.Min(best, watch.Elapsed.TotalSeconds);
        }

        using var self = Process.GetCurrentProcess();
        var peak = self.PeakWorkingSet64 / 1048576.0;
        var worst = 0.0;
        foreach (var (read, i) in more.Select((read, i) => (read, i)))
        {
            var watch = Stopwatch.StartNew();
            learnt = learnt.With(read);
            _ = learnt.Expect(read.Coat);
            worst = i == 0 ? 0 : Math.Max(worst, watch.Elapsed.TotalMilliseconds);
        }

        Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{best:0.00} {peak:0} {worst:0.00}"));
    }

    /// <summary>Shops with two people, two troughs, two emulsions of twenty and two meshes of eight, three readings a screen.</summary>
    private static (CoatRead[] Reads, CoatRead[] More) Drawn(Random random)
    {
        StencilEmulsion[] emulsions = [.. Enumerable.Range(0, 20).Select(i => new StencilEmulsion { Id = $"kind {i}", Family = EmulsionFamily.DualCure, SolidsPercent = 28 + i })];
        WovenMesh[] meshes = [.. new (double Count, double Thread)[] { (34, 100), (43, 80), (49, 70), (55, 64), (61, 64), (77, 48), (90, 48), (120, 34) }.Select(mesh => WovenMesh.Of(new MeshFabric(mesh.Count, mesh.Thread)))];
        Stroke[][] strokes = [.. Enumerable.Range(1, 3).Select(print => (Stroke[])[.. Enumerable.Repeat(new Stroke(StrokeSide.Print), print), new Stroke(StrokeSide.Squeegee)])];
        Trough[] troughs = [new Trough("round", 1.5), new Trough("sharp", 0.6)];
        var hand = Enumerable.Range(0, Shops * 2).Select(_ => 1 + (0.15 * Normal(random))).ToArray();
        var reads = new List<CoatRead>(Shops * Each);
        for (var shop = 0; shop < Shops; shop++)
        {
            var name = $"shop {shop}";
            var (kinds, fabrics) = (new[] { random.Next(20), random.Next(20) }, new[] { random.Next(8), random.Next(8) });
            CoatObservation coat = null!;
            var um = 0.0;
            for (var i = 0; i < Each; i++)
            {
                if (i % 3 == 0)
                {
                    var (person, trough, print) = (random.Next(2), random.Next(2), random.Next(3));
                    coat = new CoatObservation { Shop = name, Operator = $"hand {person}", Trough = troughs[trough], Emulsion = emulsions[kinds[random.Next(2)]], Mesh = meshes[fabrics[random.Next(2)]], Strokes = strokes[print], Screen = $"screen {i / 3}" };
                    um = (4 + (5 * print)) * (1.2 - (0.4 * trough)) * hand[(shop * 2) + person] * (1 + (0.1 * Normal(random)));
                }

                reads.Add(new CoatRead(coat, Math.Round(Math.Max(0, um + (0.9 * Normal(random))), 1)));
            }
        }

        return ([.. reads], [.. Enumerable.Range(0, 21).Select(i => new CoatRead(reads[i * 997].Coat with { Screen = $"new {i}" }, reads[i * 997].EomUm))]);
    }

    private static double Normal(Random random) => Math.Sqrt(-2 * Math.Log(1 - random.NextDouble())) * Math.Cos(2 * Math.PI * random.NextDouble());
}
