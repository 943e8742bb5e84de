using System.CommandLine;
using Silkwright.Contracts;
using Silkwright.Estimates;

namespace Silkwright.Cli.Commands.Gauge;

/// <summary><c>silkwright gauge</c>: what a thickness gauge read, what it is worth, and whether the coat has changed.</summary>
internal static class GaugeCommand
{
    private static readonly QuantityField BareMesh = new("bare-mesh", QuantityKind.Thickness, "thickness of the bare mesh, where the file has no bare readings") { Least = InputLimits.LeastFabricUm, Most = InputLimits.MostFabricUm };

    public static Command Create(Surroundings surroundings) => new("gauge", "Thickness readings: what they are worth, and whether the coat has changed.")
    {
        GaugeReadVerb.Create(surroundings),
        GaugeStudyVerb.Create(surroundings),
        GaugeChartVerb.Create(surroundings),
        GaugeWithdrawVerb.Create(surroundings),
    };

    public static Argument<string> FileArgument() => new("FILE.csv")
    {
        Description = "readings of a gauge, separated by , or ;. Columns by their headers: coated, bare or eom with the unit, as in \"coated (um)\"; screen, place, operator, trough, emulsion, lot, mesh count, thread, strokes, date",
    };

    public static Option<string?> UnitOption()
    {
        var option = new Option<string?>("--unit") { Description = "unit of the thicknesses where the file tells none: um or mil", HelpName = "UNIT" };
        option.AcceptOnlyFromAmong("um", "mil");
        return option;
    }

    /// <summary>Bare mesh thickness, for files without bare readings.</summary>
    public static Option<string?> BareOption() => new($"--{BareMesh.Name}") { Description = BareMesh.Meaning, HelpName = "55um" };

    public static double? Bare(string? text)
    {
        if (text is null)
            return null;
        var given = new GivenTexts(new Dictionary<string, string> { [BareMesh.Name] = text }, "--");
        var bare = given.Read(BareMesh);
        given.ThrowIfAny();
        return bare;
    }

    /// <exception cref="InputProblemException">The file's faults.</exception>
    public static async Task<GaugeFile> ReadAsync(string path, string? unit, double? bareUm, CancellationToken cancel) =>
        GaugeReader.Read(await InputFile.ReadTextAsync(path, "a gauge's file", cancel), Path.GetFileName(path), unit, bareUm);
}
