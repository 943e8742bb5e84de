using System.Globalization;
using Silkwright.Contracts;
using Silkwright.Records.Screens;

namespace Silkwright.Web.Pages.Gauge;

/// <summary>What a screen's record tells of its coat, as the gauge's page takes it.</summary>
internal static class ScreenGauging
{
    public static IReadOnlyDictionary<string, string> About(ScreenRecord record, TimeZoneInfo zone)
    {
        var coated = record.Story.Entries.LastOrDefault(entry => entry.Entry.Fact is ScreenCoated)?.Entry;
        var coat = coated?.Fact as ScreenCoated;
        return new (string Name, string? Value)[]
        {
            ("screen", record.Screen.Id),
            ("operator", coated?.Person),
            ("trough", coat?.TroughId),
            ("emulsion", coat?.EmulsionId),
            ("count", Number(record.Screen.MeshCountPerCm)),
            ("thread", Number(record.Screen.MeshThreadUm)),
            ("strokes", coat?.Strokes is { Count: > 0 } strokes ? StrokeText.Write(strokes) : null),
            ("on", coated is null ? null : TimeZoneInfo.ConvertTime(coated.At, zone).ToString("yyyy-MM-dd", CultureInfo.InvariantCulture)),
        }.Where(field => !string.IsNullOrEmpty(field.Value)).ToDictionary(field => field.Name, field => field.Value!);
    }

    private static string Number(double value) => value.ToString("0.##", CultureInfo.InvariantCulture);
}
