using Silkwright.Answers;
using Silkwright.Emulsion;
using Silkwright.Plans;
using Silkwright.Scheduling.Shelf;

namespace Silkwright.Bench;

/// <summary>Shelf cases whose every cost comes from the engines: invented emulsions and jobs from a seed.</summary>
internal static class EngineCases
{
    private const int Seed = 7;
    private const double LeastRun = 50;
    private const double MostRun = 20_000;

    private static readonly InkKind[] Inks = Enum.GetValues<InkKind>();
    private static readonly WorkKind[] Works = Enum.GetValues<WorkKind>();

    public static ShelfCase Of(int emulsions, int jobs)
    {
        var random = new Random(Seed);
        var shop = new Shop { Emulsions = [.. Enumerable.Range(0, emulsions).Select(i => Emulsion(i, random))] };
        var made = new List<ShelfJob>();
        while (made.Count < jobs)
        {
            var colour = new JobColour { Name = "colour", Ink = random.Next(2) == 0 ? InkKind.Plastisol : Inks[random.Next(Inks.Length)], Kind = Works[random.Next(Works.Length)] };
            var job = new Job { Name = "job", Date = new DateOnly(2026, 11, 25), Run = (long)(LeastRun * Math.Pow(MostRun / LeastRun, random.NextDouble())), Colours = [colour] };
            var costs = ColourCosts.Of(job, colour, shop);
            if (costs.Count > 0)
                made.Add(new ShelfJob($"J{made.Count}", random.Next(1, 5), costs.ToDictionary(cost => cost.Emulsion, cost => cost.Cost)));
        }

        return new ShelfCase([.. shop.Emulsions.Select(emulsion => new ShelfEmulsion(emulsion.Id, Between(30, 50)))], made);

        double Between(double low, double high) => low + ((high - low) * random.NextDouble());
    }

    private static StencilEmulsion Emulsion(int index, Random random)
    {
        var family = (EmulsionFamily[])[EmulsionFamily.Diazo, EmulsionFamily.DualCure, EmulsionFamily.Photopolymer];
        var kind = family[random.Next(family.Length)];
        InkKind[] resists = [.. Inks.Where(_ => random.NextDouble() < 0.6)];
        var grams = random.Next(2) == 0 ? 900 : 4500;
        return new StencilEmulsion
        {
            Id = $"E{index}",
            Family = kind,
            Resists = resists.Length > 0 ? resists : [InkKind.Plastisol],
            SolidsPercent = Between(-4, 4) + kind switch { EmulsionFamily.Diazo => 27, EmulsionFamily.DualCure => 36, _ => 42 },
            RelativeExposure = Between(0.8, 1.25) * kind switch { EmulsionFamily.Diazo => 1, EmulsionFamily.DualCure => 0.5, _ => 0.2 },
            HumidityResistant = random.Next(2) == 0,
            Price = new ContainerPrice(grams, grams / 1000.0 * Between(15, 45)),
        };

        double Between(double low, double high) => low + ((high - low) * random.NextDouble());
    }
}
