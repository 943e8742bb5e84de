using System.Globalization;
using Silkwright.Estimates;
using Silkwright.Exposure;

namespace Silkwright.Contracts;

/// <summary>Reads a table of strips: <c>seconds</c> or <c>units</c>, and what was read on each; an empty field says nothing.</summary>
public static class StripTable
{
    /// <summary>Columns known beside the amount.</summary>
    public static readonly IReadOnlyList<string> Columns =
        ["solidStep", "squeegeeSideSoft", "finestLineUm", "finestGapUm", "eomUm", "curedDepthUm", "humidityPercent", "damp", "on", "lampHours", "batch", "sensitiserDays"];

    /// <param name="text">The table, with a header.</param>
    /// <param name="where">The file's name, for faults.</param>
    /// <exception cref="InputProblemException">Every fault of the table.</exception>
    public static (IReadOnlyList<StepTest> Strips, ExposureCount Counts) Read(string text, string where)
    {
        var problems = new ProblemList();
        var rows = SeparatedText.Read(text, where, problems);
        if (rows.Count < 2)
            problems.Add("There is no strip in it.", where, $"Give a header, seconds or units and any of {string.Join(',', Columns)}, then a row for each strip.");
        problems.ThrowIfAny();
        var inUnits = rows[0].Fields.Any(name => string.Equals(name.Trim(), "units", StringComparison.OrdinalIgnoreCase));
        var amount = inUnits ? "units" : "seconds";
        var header = SeparatedText.Header(rows[0], [amount], where, problems);
        if (inUnits && header.ContainsKey("seconds"))
            problems.Add("There are seconds and units.", where, "Keep the one that this machine counts; one is never the other.");
        if (rows.Count - 1 > ShopReader.MostReadings)
            problems.Add($"It has {rows.Count - 1} strips.", where, $"Keep the latest {ShopReader.MostReadings}.");
        problems.ThrowIfAny();
        var strips = rows.Skip(1).Select(row => StripOf(new Row(row, header, where, problems), amount, inUnits)).ToArray();
        problems.ThrowIfAny();
        return (strips, inUnits ? ExposureCount.Units : ExposureCount.Seconds);
    }

    private static StepTest StripOf(Row row, string amount, bool inUnits)
    {
        var given = row.Number(amount, InputLimits.LeastExposure, inUnits ? InputLimits.MostExposureUnits : InputLimits.MostExposureSeconds);
        if (given is null)
            row.Fault(amount, $"{amount} is missing.", "Give every strip what it was given.");
        var solid = row.Number("solidStep", 0, InputLimits.MostWedgeSteps);
        if (solid is { } step && step != Math.Floor(step))
            row.Fault("solidStep", "A solid step is a whole number.", "Give the last step that stayed fully hard, 0 where none did.");
        return new StepTest(
            given ?? 1, (int?)solid, row.YesNo("squeegeeSideSoft"),
            row.Number("finestLineUm", InputLimits.LeastDetailUm, InputLimits.MostDetailUm), row.Number("finestGapUm", InputLimits.LeastDetailUm, InputLimits.MostDetailUm),
            row.YesNo("damp") ?? false)
        {
            On = row.Date("on"),
            LampHours = row.Number("lampHours", 0, InputLimits.MostLampHours),
            EomUm = row.Number("eomUm", 0, InputLimits.MostEomUm),
            CuredDepthUm = row.Number("curedDepthUm", 0, InputLimits.MostEomUm),
            HumidityPercent = row.Number("humidityPercent", 0, 100),
            SensitiserDays = row.Number("sensitiserDays", 0, InputLimits.MostSensitiserDays),
            Batch = row.Text("batch"),
        };
    }

    private sealed class Row(SeparatedRow row, Dictionary<string, int> header, string where, ProblemList problems)
    {
        internal string? Text(string column) =>
            header.TryGetValue(column, out var at) && at < row.Fields.Count && row.Fields[at].Trim() is { Length: > 0 } text ? text : null;

        internal double? Number(string column, double least, double most)
        {
            if (Text(column) is not { } text)
                return null;
            if (double.TryParse(text, NumberStyles.Float, CultureInfo.InvariantCulture, out var number) && number >= least && number <= most)
                return number;
            Fault(column, string.Create(CultureInfo.InvariantCulture, $"'{Shown(text)}' is no number from {least} to {most}."), "Write a plain number with a point for decimals; the unit is in the column's name.");
            return null;
        }

        internal bool? YesNo(string column)
        {
            switch (Text(column)?.ToLowerInvariant())
            {
                case null:
                    return null;
                case "1" or "yes" or "true":
                    return true;
                case "0" or "no" or "false":
                    return false;
                case var text:
                    Fault(column, $"'{Shown(text)}' is neither 0 nor 1.", "Write 1 for yes and 0 for no, or leave it empty.");
                    return null;
            }
        }

        internal DateOnly? Date(string column)
        {
            if (Text(column) is not { } text)
                return null;
            if (DateOnly.TryParseExact(text, "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out var date))
                return date;
            Fault(column, $"'{Shown(text)}' is not a date.", "Write year-month-day, as in 2026-11-25.");
            return null;
        }

        internal void Fault(string column, string what, string remedy) =>
            problems.Add(what, SeparatedText.Place(where, row.Line, header.GetValueOrDefault(column, 0) + 1), remedy);

        private static string Shown(string text) => text.Length > 20 ? $"{text[..20]}…" : text;
    }
}
