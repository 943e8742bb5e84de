using System.Globalization;
using Silkwright.Estimates;
using Silkwright.Light;

namespace Silkwright.Contracts;

/// <summary>What <c>light slab</c> asks for: one layer typed, or several as a table.</summary>
public static class SlabQuestion
{
    /// <summary>More take hours.</summary>
    private const double MostPhotons = 1e10;

    /// <summary>Beyond any coat, paint or milk. [1/cm]</summary>
    private const double MostPerCm = 1e6;
    private const double MostAnisotropy = 0.9999;

    /// <summary>Standard errors of about one in ten thousand.</summary>
    private const double UsualPhotons = 1e7;

    public static readonly QuantityField Absorption = new("mua", QuantityKind.PerLength, "absorption coefficient of the layer") { Sample = "10/cm", Least = 0, Most = MostPerCm };

    public static readonly QuantityField Scattering = new("mus", QuantityKind.PerLength, "scattering coefficient of the layer") { Sample = "90/cm", Least = 0, Most = MostPerCm };

    public static readonly QuantityField Anisotropy = new("g", QuantityKind.Number, "mean cosine of scattering; 0 when not given") { Sample = "0.75", Least = -MostAnisotropy, Most = MostAnisotropy };

    public static readonly QuantityField Index = new("n", QuantityKind.Number, "refractive index of the layer, air above and below it; 1 when not given") { Sample = "1.5", Least = 1, Most = 3 };

    public static readonly QuantityField Thickness = new("thickness", QuantityKind.Thickness, "thickness of the layer") { Sample = "200um", Above = 0, Most = 1e6 };

    public static readonly QuantityField Photons = new("photons", QuantityKind.Number, "photons followed; 1e7 when not given") { Sample = "1e6", Least = 1, Most = MostPhotons, Whole = true };

    public static readonly QuantityField Seed = new("seed", QuantityKind.Number, "where the random numbers begin; 1 when not given") { Sample = "1", Least = 0, Most = int.MaxValue, Whole = true };

    public static IReadOnlyList<QuestionField> Fields => [Absorption, Scattering, Anisotropy, Index, Thickness, Photons, Seed];

    /// <summary>The columns of a table of layers; the first and the last row are what lies above and below, without a thickness.</summary>
    public static readonly IReadOnlyList<string> Columns = ["n", "muaPerCm", "musPerCm", "g", "thicknessUm"];

    /// <summary>The slab that was typed.</summary>
    /// <param name="given">What was typed.</param>
    /// <param name="layers">A table of layers in place of one layer; none: not given.</param>
    /// <param name="where">The table's name, for faults.</param>
    /// <exception cref="InputProblemException">Something typed is wrong or missing; carries every fault.</exception>
    public static SlabCase Read(GivenTexts given, string? layers = null, string where = "layers")
    {
        var photons = (long)(given.Read(Photons) is { } many and not double.NaN ? many : UsualPhotons);
        var seed = (ulong)(given.Read(Seed) is { } begin and not double.NaN ? begin : 1);
        if (layers is not null)
        {
            foreach (var field in Fields.Except([Photons, Seed]).Where(given.Has))
                given.Problems.Add($"{given.Where(field)} and a table of layers say the same thing in two ways.", given.Where(field), "Give one of the two.");
            var table = Table(layers, where, given.Problems);
            given.ThrowIfAny();
            return table! with { Photons = photons, Seed = seed };
        }

        var absorption = given.ReadRequired(Absorption);
        var scattering = given.ReadRequired(Scattering);
        var anisotropy = given.Read(Anisotropy) ?? 0;
        var index = given.Read(Index) ?? 1;
        var thickness = given.ReadRequired(Thickness);
        given.ThrowIfAny();
        return new SlabCase { Layers = [new LayerOptics(index, absorption, scattering, anisotropy, thickness)], Photons = photons, Seed = seed };
    }

    private static SlabCase? Table(string text, string where, ProblemList problems)
    {
        var rows = SeparatedText.Read(text, where, problems);
        if (rows.Count is < 4 or > SlabCase.MostLayers + 3)
        {
            problems.Add(
                $"It has {Math.Max(0, rows.Count - 1)} rows below its header.", where,
                $"Give the header {string.Join(',', Columns)}, then what lies above, 1 to {SlabCase.MostLayers} layers, and what lies below.");
            return null;
        }

        var header = SeparatedText.Header(rows[0], Columns, where, problems);
        if (!Columns.All(header.ContainsKey))
            return null;
        var above = Number(rows[1], 0, 1, 3);
        var below = Number(rows[^1], 0, 1, 3);
        LayerOptics[] layers =
        [
            .. rows.Skip(1).SkipLast(1).Skip(1).Select(row => new LayerOptics(
                Number(row, 0, 1, 3), Number(row, 1, 0, MostPerCm), Number(row, 2, 0, MostPerCm), Number(row, 3, -MostAnisotropy, MostAnisotropy), Number(row, 4, 1e-6, 1e6))),
        ];
        return new SlabCase { IndexAbove = above, Layers = layers, IndexBelow = below, Photons = 1, Seed = 1 };

        double Number(SeparatedRow row, int column, double least, double most)
        {
            var field = header[Columns[column]] < row.Fields.Count ? row.Fields[header[Columns[column]]].Trim() : "";
            if (row.TryNumber(field, out var number) && number >= least && number <= most)
                return number;
            problems.Add(
                field.Length == 0 ? $"{Columns[column]} is missing." : $"'{field}' is no number from {least.ToString(CultureInfo.InvariantCulture)} to {most.ToString(CultureInfo.InvariantCulture)}.",
                SeparatedText.Place(where, row.Line, header[Columns[column]] + 1), "Write a plain number with a point for decimals.");
            return least;
        }
    }
}
