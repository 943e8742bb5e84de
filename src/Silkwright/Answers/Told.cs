using Silkwright.Emulsion;
using Silkwright.Estimates;
using Silkwright.Plans;

namespace Silkwright.Answers;

/// <summary>What was told with a question, in plain words.</summary>
internal static class Told
{
    /// <summary>Emulsions told by name; of a long catalogue the rest are counted.</summary>
    private const int MostNamed = 12;

    public static IReadOnlyList<string> Of(Job job, JobColour colour, Shop shop)
    {
        var facts = new List<string>
        {
            $"{Capital(InkWords.Of(colour.Ink))} ink",
            $"a run of {Number(job.Run)} {(job.Run == 1 ? "piece" : "pieces")}",
        };
        if (colour.ImpressionsPerGarment > 1)
            facts.Add($"{colour.ImpressionsPerGarment} impressions on each");
        if (colour.Film is { } film)
            facts.Add($"the film {film.File}, measured");
        if (colour.Kind is { } kind)
            facts.Add(TypicalNeeds.Words(kind));
        if (colour.Needs?.FinestLineUm is { } line)
            facts.Add($"finest line {Number(line / 1000)} mm ({Number(line / 25.4)} mil)");
        if (colour.Needs?.RulingLpi is { } ruling)
            facts.Add($"a halftone of {Number(ruling)} lpi");
        if (job.Garment.Colour is { } garment)
            facts.Add($"on {garment}");
        if (shop.ScreensPerDay is { } pace)
            facts.Add($"{Number(pace)} screens a day");
        if (shop.Room.Celsius is { } celsius)
            facts.Add($"{Number(Math.Round(celsius, 1))} °C ({Number(Math.Round((celsius * 1.8) + 32, 1))} °F) in the room");
        if (shop.Room.HumidityPercent is { } humidity)
            facts.Add($"{Number(humidity)} % relative humidity");
        if (shop.Room.Light is { } light)
            facts.Add($"{Words(light)} light");
        if (shop.Room.Lux is { } lux)
            facts.Add($"{Number(lux)} lux there");
        if (shop.PressWash is { } wash)
            facts.Add(wash == PressWash.None ? "screens not wiped on press" : $"screens wiped with {Names(wash)} on press");
        if (shop.Emulsions.Count > 0)
            facts.Add($"emulsions weighed: {Some([.. shop.Emulsions.Select(emulsion => emulsion.Id)])}");
        return facts;
    }

    private static string Words(RoomLight light) => light switch
    {
        RoomLight.Yellow => "yellow",
        RoomLight.Filtered => "filtered",
        RoomLight.White => "white",
        _ => throw new ArgumentOutOfRangeException(nameof(light)),
    };

    private static string Names(PressWash wash) => wash == PressWash.Water ? "water" : "solvents";

    private static string Some(string[] names) => names.Length <= MostNamed
        ? string.Join(", ", names)
        : $"{string.Join(", ", names.Take(MostNamed))} and {Number(names.Length - MostNamed)} others";

    private static string Number(double value) => Figures.Plain(value, 2);

    private static string Capital(string text) => char.ToUpperInvariant(text[0]) + text[1..];
}
