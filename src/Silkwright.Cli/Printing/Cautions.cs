using Silkwright.Estimates;
using Spectre.Console;

namespace Silkwright.Cli.Printing;

/// <summary>Cautions, each before the step it belongs to.</summary>
internal static class Cautions
{
    public static void Print(IEnumerable<Caution> cautions, IAnsiConsole console, string indent = "  ")
    {
        foreach (var caution in cautions)
            Prose.Write(console, $"{indent}! ", $"{Head(caution)}: {caution.Text}");
    }

    /// <summary>"WARNING before exposing".</summary>
    public static string Head(Caution caution)
    {
        var level = caution.Level switch
        {
            CautionLevel.Warning => "WARNING",
            CautionLevel.Caution => "CAUTION",
            _ => "NOTICE",
        };
        return $"{level} {char.ToLowerInvariant(caution.Step[0])}{caution.Step[1..]}";
    }
}
