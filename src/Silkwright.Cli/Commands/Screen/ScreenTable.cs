using System.Globalization;
using System.Text.Json.Nodes;
using Silkwright.Cli.Printing;
using Silkwright.Contracts;
using Silkwright.Estimates;
using Silkwright.Records.Screens;
using Silkwright.Web.Look;
using Spectre.Console;

namespace Silkwright.Cli.Commands.Screen;

/// <summary>A screen's record for people.</summary>
internal static class ScreenTable
{
    public static void Print(ScreenRecord record, TimeZoneInfo zone, IAnsiConsole console)
    {
        var (screen, events, story) = record;
        var dyed = screen.MeshDyed ? ", dyed" : "";
        var tension = (story.TensionNPerCm ?? screen.TensionNPerCm) is { } read ? $", {Figures.Exact(read)} N/cm" : "";
        console.WriteLine($"{screen.Id}: frame {PlainText.Of(screen.Frame)}, mesh {screen.Mesh.Name}{dyed}{tension}; {Names.Of(story.Stage)}, {Figures.Whole(story.Impressions)} impressions");
        var holding = story.Entries.Select(entry => entry.Entry.Sequence).ToHashSet();
        var table = new Table { Border = TableBorder.Simple }.AddColumns("", "when", "what", "who", "");
        foreach (var entry in events)
        {
            table.AddRow(
                new Text(entry.Sequence.ToString(CultureInfo.InvariantCulture)),
                new Text(TimeZoneInfo.ConvertTime(entry.At, zone).ToString("yyyy-MM-dd HH:mm", CultureInfo.InvariantCulture)),
                new Text(PlainText.Of($"{Names.Of(entry.Kind)}{Facts(entry)}")),
                new Text(PlainText.Of(entry.Person)),
                new Text(PlainText.Of(Remark(entry, holding.Contains(entry.Sequence)))));
        }

        console.Write(table);
        foreach (var wait in story.LongWaits)
        {
            Prose.Write(
                console, "  - ",
                $"{(wait.Over ? "Lay" : "Lies")} {Figures.Minutes(wait.Minutes)} between {Names.Of(wait.After)} and {Names.Of(wait.Before)}; {Figures.Minutes(wait.LimitMinutes)} is usual at most ({Grounds.Words(wait.Ground)}).");
        }
    }

    /// <summary>What an entry says beyond its kind, as its document has it.</summary>
    private static string Facts(ScreenEvent entry)
    {
        var said = JsonNode.Parse(FactJson.Write(entry.Fact))!.AsObject().Where(field => field.Key != "kind").Select(field => $"{field.Key} {field.Value}");
        var facts = string.Join(", ", said);
        return facts.Length == 0 ? "" : $": {facts}";
    }

    private static string Remark(ScreenEvent entry, bool holds)
    {
        var corrects = entry.Corrects is { } place ? $"stands in for {place}: {entry.Why}" : "";
        var remark = string.Join("; ", new[] { entry.Note, corrects, holds ? "" : "no longer holds" }.Where(part => !string.IsNullOrEmpty(part)));
        return remark;
    }
}
