using System.Globalization;
using System.Security.Cryptography;
using System.Text;

namespace Silkwright.Coating.Learning;

/// <summary>Marks by which readings are known again, in whatever order and by whatever names: docs/engines/coating.md, "Experience".</summary>
public static class CoatMarks
{
    private const int HexDigits = 32;

    /// <summary>One of each shop with <see cref="CoatExperience.LeastReadings"/> or more, and one of all other shops' together where they have as many: fewer could be guessed from a mark.</summary>
    public static IReadOnlyList<string> Of(IReadOnlyList<CoatRead> reads)
    {
        ArgumentNullException.ThrowIfNull(reads);
        var many = reads.GroupBy(read => read.Coat.Shop).ToLookup(shop => shop.Count() >= CoatExperience.LeastReadings);
        CoatRead[] others = [.. many[false].SelectMany(shop => shop)];
        return
        [
            .. many[true].Select(Mark).Concat(others.Length >= CoatExperience.LeastReadings ? [Mark(others)] : [])
                .Distinct().Order(StringComparer.Ordinal),
        ];
    }

    private static string Mark(IEnumerable<CoatRead> reads) =>
        Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes(string.Join('\n', reads.Select(Line).Order(StringComparer.Ordinal)))))[..HexDigits];

    /// <summary>What a reading teaches of all shops hangs on this; no name of a shop, person, trough or screen is asked.</summary>
    private static string Line(CoatRead read) => string.Create(
        CultureInfo.InvariantCulture,
        $"{read.Coat.Emulsion.Id}|{read.Coat.Mesh.Fabric.Name}|{CoatLevels.StrokesKey(read.Coat)}|{read.EomUm:0.000}");
}
