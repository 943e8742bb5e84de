using System.Globalization;
using Silkwright.Light;
using Spectre.Console;

namespace Silkwright.Cli.Commands.Light;

/// <summary>Where light ends in layers, for people.</summary>
internal static class SlabTable
{
    private const int Characters = 60;

    public static void Print(SlabCase slab, SlabResult result, IAnsiConsole console)
    {
        var back = result.SpecularReflectance + result.DiffuseReflectance;
        console.WriteLine($"  {Bar('░', back)}{Bar('▓', result.Absorbed)}{Bar('█', result.TotalTransmittance)}");
        console.WriteLine("  ░ thrown back   ▓ absorbed   █ let through");
        var table = new Table { Border = TableBorder.Simple }.AddColumns("", "share of the beam", "standard error");
        Row("Thrown back by the surface", result.SpecularReflectance, null);
        Row("Thrown back from within", result.DiffuseReflectance, result.DiffuseReflectanceError);
        Row("Let through", result.TotalTransmittance, result.TotalTransmittanceError);
        Row("  of it not scattered", result.UnscatteredTransmittance, result.UnscatteredTransmittanceError);
        Row("Absorbed", result.Absorbed, result.AbsorbedError);
        if (slab.Layers.Count > 1)
        {
            for (var layer = 0; layer < slab.Layers.Count; layer++)
                Row($"  in layer {layer + 1}", result.AbsorbedByLayer[layer], null);
        }

        console.Write(table);
        console.WriteLine(string.Create(
            CultureInfo.InvariantCulture, $"{result.Photons:#,0} photons, seed {slab.Seed}; computed from the coefficients given, exact but for the standard errors."));

        void Row(string what, double share, double? error) => table.AddRow(new[]
        {
            what, share.ToString("0.00000", CultureInfo.InvariantCulture), error?.ToString("0.00000", CultureInfo.InvariantCulture) ?? "",
        }.Select(cell => new Text(cell)));
    }

    private static string Bar(char with, double share) => new(with, (int)Math.Round(Math.Clamp(share, 0, 1) * Characters));
}
