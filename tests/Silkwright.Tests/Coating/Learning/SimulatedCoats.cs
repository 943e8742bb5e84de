using Silkwright.Coating;
using Silkwright.Coating.Learning;
using Silkwright.Emulsion;
using Silkwright.Mesh;

namespace Silkwright.Tests.Coating.Learning;

/// <summary>
/// Coats of invented shops, laid by rules of their own that share nothing with the engine: other constants than it believes in, and three effects it lacks (hands
/// that tire over the day, emulsions that thicken as they age, an edge that lays more the stiffer the emulsion).
/// </summary>
internal sealed class SimulatedCoats
{
    private static readonly (double Count, double Thread)[] Fabrics = [(34, 100), (43, 80), (49, 70), (61, 64), (77, 48), (90, 48), (120, 34)];
    private readonly Random random;
    private readonly (StencilEmulsion Emulsion, double Kind, double Stiffness)[] emulsions;
    private readonly Dictionary<double, double> meshLuck = [];

    public SimulatedCoats(int seed)
    {
        random = new Random(seed);
        emulsions =
        [
            .. Enumerable.Range(0, 12).Select(i => (
                new StencilEmulsion { Id = $"invented {i}", Family = (EmulsionFamily)random.Next(3), SolidsPercent = Math.Round(28 + (22 * random.NextDouble())) },
                0.08 * Normal(),
                Normal())),
        ];
        foreach (var (count, _) in Fabrics)
            meshLuck[count] = 0.06 * Normal();
    }

    /// <summary>One shop's readings in the order they were taken.</summary>
    public IReadOnlyList<CoatRead> Shop(string name, int readings)
    {
        var shop = 0.1 * Normal();
        var people = Enumerable.Range(0, 1 + random.Next(3)).Select(i => (Name: $"person {i}", Hand: 0.12 * Normal(), Tires: 0.05 * Normal())).ToArray();
        var troughs = Enumerable.Range(0, 1 + random.Next(2)).Select(i => (Trough: new Trough($"trough {i}", Math.Round(0.5 + (1.3 * random.NextDouble()), 1)), Luck: 0.07 * Normal())).ToArray();
        var kept = Enumerable.Range(0, 1 + random.Next(3)).Select(_ => emulsions[random.Next(emulsions.Length)]).ToArray();
        var meshes = Enumerable.Range(0, 1 + random.Next(3)).Select(_ => Fabrics[random.Next(Fabrics.Length)]).ToArray();
        var recipes = new Dictionary<(string, double, int, int), double>();
        var reads = new List<CoatRead>();
        for (var i = 0; i < readings; i++)
        {
            var (person, trough, kind, mesh) = (people[random.Next(people.Length)], troughs[random.Next(troughs.Length)], kept[random.Next(kept.Length)], meshes[random.Next(meshes.Length)]);
            var (print, squeegee) = (1 + random.Next(3), 1 + random.Next(2));
            var key = (kind.Emulsion.Id, mesh.Count, print, squeegee);
            if (!recipes.TryGetValue(key, out var recipe))
                recipes[key] = recipe = 0.07 * Normal();
            var share = 1 + shop + person.Hand + (person.Tires * (random.NextDouble() - 0.5)) + trough.Luck + kind.Kind + recipe + meshLuck[mesh.Count]
                + (0.03 * kind.Stiffness * (trough.Trough.EdgeRadiusMm - 1)) + (0.04 * random.NextDouble()) + (0.11 * Normal());
            var eom = (Laid(mesh, kind.Emulsion.SolidsPercent!.Value, trough.Trough.EdgeRadiusMm, print, squeegee) * share) + (0.8 * Normal());
            reads.Add(new CoatRead(
                new CoatObservation
                {
                    Shop = name,
                    Operator = person.Name,
                    Trough = trough.Trough,
                    Emulsion = kind.Emulsion,
                    Mesh = WovenMesh.Of(new MeshFabric(mesh.Count, mesh.Thread)),
                    Strokes = [.. Enumerable.Repeat(new Stroke(StrokeSide.Print), print), .. Enumerable.Repeat(new Stroke(StrokeSide.Squeegee), squeegee)],
                },
                Math.Round(Math.Max(0, eom), 1)));
        }

        return reads;
    }

    /// <summary>A wet film a stroke of 0.25 of what the mesh holds (0.31 with a squeegee stroke after it), dried to its volume solids, less a tenth of the hollow.</summary>
    private static double Laid((double Count, double Thread) mesh, double solidsPercent, double edgeMm, int print, int squeegee)
    {
        var threads = mesh.Count / 10_000;
        var holds = (1.5 * mesh.Thread) - (Math.PI / 2 * mesh.Thread * mesh.Thread * threads * 1.04);
        var volumeSolids = solidsPercent / (solidsPercent + ((100 - solidsPercent) * 1.22));
        var wet = holds * ((0.25 * print) + (0.31 * (squeegee - 0.2))) * Math.Pow(edgeMm / 1.5, 0.42);
        return Math.Max(0.5, (volumeSolids * wet) - (0.1 * holds * (1 - volumeSolids)));
    }

    private double Normal() => Math.Sqrt(-2 * Math.Log(1 - random.NextDouble())) * Math.Cos(2 * Math.PI * random.NextDouble());
}
