using System.Globalization;
using Silkwright.Cli.Printing;
using Silkwright.Contracts;
using Silkwright.Estimates;
using Silkwright.Light;
using Spectre.Console;

namespace Silkwright.Cli.Commands.Light;

/// <summary>Light beside a film's edge, for people.</summary>
internal static class EdgeTable
{
    private const int SideCharacters = 33;

    /// <summary>Darker for more dose; each is the share of the clear film's dose on the print side from which it stands.</summary>
    private static readonly (double Share, char Mark)[] Shades = [(0.75, '█'), (0.5, '▓'), (0.25, '▒'), (0.05, '░'), (0, ' ')];

    public static void Print(EdgeAnswer answer, IAnsiConsole console)
    {
        var result = answer.Result;
        Cautions.Print([LampCaution.BeforeExposing], console);
        Draw(result, console);
        var figures = new Table { Border = TableBorder.Simple }.AddColumns("", "", "90 % interval");
        Length("Undercut of a coat exposed well, print side", answer.UndercutUm);
        Length("  at the depth where it goes farthest", answer.FarthestUm);
        Length("  saw-tooth along the edge", answer.SawtoothUm);
        Length("Falls by e over, print side", answer.LineSpreadUm);
        Length("  squeegee side", answer.LineSpreadSqueegeeSideUm);
        Dose("Dose on the squeegee side, mean", answer.ThroughAverage);
        Dose("  in the place that gets least", answer.ThroughWorst);
        console.Write(figures);
        var undercuts = new Table { Border = TableBorder.Simple }.AddColumns("dose, of clear film's", "undercut", "farthest", "saw-tooth");
        foreach (var undercut in result.Undercuts)
            undercuts.AddRow($"{undercut.Share * 100:0} %", Chance(undercut.UndercutUm), Chance(undercut.FarthestUm), Chance(undercut.SawtoothUm));
        console.Write(undercuts);
        console.WriteLine($"Lengths in µm, ± one standard error of {answer.PhotonsFollowed.ToString("#,0", CultureInfo.InvariantCulture)} photons, seed {result.Case.Seed}. Dose over the light on clear film.");
        if (answer.Drivers is [var first, ..])
            console.WriteLine($"What the dose behind the threads hangs on most: {first.Name}.");
        Notes.Print(answer.Asked.Notes, console);

        void Length(string what, Estimate um) => figures.AddRow($"{GroundMark.Mark(um.Ground)} {what}", $"{Figures.Value(um)} um", Figures.Interval(um) is { Length: > 0 } interval ? $"{interval} um" : "");
        void Dose(string what, Estimate dose) => figures.AddRow($"{GroundMark.Mark(dose.Ground)} {what}", Figures.Value(dose), Figures.Interval(dose));
    }

    /// <summary>A row a twelfth of the stencil, the print side above; black film over the right half.</summary>
    private static void Draw(StencilResult result, IAnsiConsole console)
    {
        var step = Math.Max(1, result.Case.StencilUm / SideCharacters);
        var (from, middle) = (-SideCharacters * step, result.Case.Image.Kind switch
        {
            FilmImageKind.Line => result.Case.Image.WidthUm / 2,
            FilmImageKind.Gap => -result.Case.Image.WidthUm / 2,
            _ => 0,
        });
        console.WriteLine("  " + string.Concat(Columns().Select(x => IsBlack(result.Case.Image, x) ? '▀' : ' ')) + " film");
        for (var depth = 0; depth < result.DepthsUm.Count; depth += 2)
        {
            var side = depth == 0 ? " print side" : depth == result.DepthsUm.Count - 2 ? " squeegee side" : "";
            console.WriteLine("  " + string.Concat(Columns().Select(x => Shades.First(shade => result.DoseAt(depth, x) >= shade.Share * result.ClearDose[0].Value).Mark)) + side);
        }

        console.WriteLine($"  {2 * SideCharacters * step:0} um across, {result.Case.StencilUm:0} um deep; █ from 75, ▓ 50, ▒ 25, ░ 5 % of the dose on the print side");

        IEnumerable<double> Columns() => Enumerable.Range(0, 2 * SideCharacters).Select(i => from + middle + ((i + 0.5) * step));
    }

    private static bool IsBlack(FilmImage image, double x) => image.Kind switch
    {
        FilmImageKind.Line => x >= 0 && x < image.WidthUm,
        FilmImageKind.Gap => x < -image.WidthUm || x >= 0,
        _ => x >= 0,
    };

    private static string Chance(Sampled um) => $"{Plain(um.Value)} ± {um.StandardError.ToString("0.0", CultureInfo.InvariantCulture)}";

    private static string Plain(double um) => (Math.Abs(um) < 0.05 ? 0 : um).ToString(Math.Abs(um) < 10 ? "0.0" : "0", CultureInfo.InvariantCulture);
}
