using System.Globalization;
using Silkwright.Scheduling.Shelf;

namespace Silkwright.Scheduling.Tests.Published;

/// <summary>
/// A file of the published facility-location collection: warehouses and customers, capacity and fixed cost of each warehouse, then for each
/// customer its demand and what serving all of it costs from each. Read without the capacities: emulsions and jobs of one screen.
/// </summary>
internal static class FacilityLocationFile
{
    public static ShelfCase Read(string name)
    {
        var numbers = File.ReadAllText(Path.Combine(AppContext.BaseDirectory, "Published", name))
            .Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries)
            .Select(number => double.Parse(number, CultureInfo.InvariantCulture))
            .GetEnumerator();
        var (warehouses, customers) = ((int)Next(), (int)Next());
        var emulsions = new List<ShelfEmulsion>();
        for (var i = 0; i < warehouses; i++)
        {
            _ = Next(); // capacity
            emulsions.Add(new ShelfEmulsion($"W{i + 1}", Next()));
        }

        var jobs = new List<ShelfJob>();
        for (var j = 0; j < customers; j++)
        {
            _ = Next(); // demand: the costs are for all of it
            jobs.Add(new ShelfJob($"C{j + 1}", 1, emulsions.ToDictionary(emulsion => emulsion.Id, _ => Next())));
        }

        return new ShelfCase(emulsions, jobs);

        double Next() => numbers.MoveNext() ? numbers.Current : throw new InvalidDataException($"{name} ends early.");
    }
}
