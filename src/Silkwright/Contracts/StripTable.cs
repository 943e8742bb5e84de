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
        SeparatedText.RefuseLongRows(rows, where, problems);
        if (rows.Count < 2)
            problems.Add("There is no strip in it.", where, $"Give a header, seconds or units and any of {string.Join(',', Columns)}, then a row for each strip.");
        problems.ThrowIfAny();
        var inUnits = rows[0].Fields.Any(name => string.Equals(name.Trim(), "units", StringComparison.OrdinalIgnoreCase));
        var amount = inUnits ? "units" : "seconds";
        var header = SeparatedText.Header(rows[0], [amount], where, problems, [.. Columns, "seconds", "units"]);
        if (inUnits && header.ContainsKey("seconds"))
            problems.Add("There are seconds and units.", where, "Keep the one that this machine counts; one is never the other.");
        if (rows.Count - 1 > ShopReader.MostReadings)
            problems.Add($"It has {rows.Count - 1} strips.", where, $"Keep the latest {ShopReader.MostReadings}.");
        problems.ThrowIfAny();
        var strips = rows.Skip(1).Select(row => StripOf(new RowFields(row, header, where, problems), amount, inUnits)).ToArray();
        problems.ThrowIfAny();
        return (strips, inUnits ? ExposureCount.Units : ExposureCount.Seconds);
    }

    private static StepTest StripOf(RowFields row, string amount, bool inUnits)
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
}
