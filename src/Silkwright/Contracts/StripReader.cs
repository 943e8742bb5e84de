using Silkwright.Estimates;
using Silkwright.Exposure;

namespace Silkwright.Contracts;

/// <summary>Reads one strip of a step test: of SHOP.json's readings and of an exposure case.</summary>
internal static class StripReader
{
    internal static StepTest Read(DocumentField field, ProblemList problems)
    {
        var seconds = field["seconds"].Number("s", InputLimits.LeastExposure, InputLimits.MostExposureSeconds);
        var units = field["units"].Number("units", InputLimits.LeastExposure, InputLimits.MostExposureUnits);
        if (!field["seconds"].IsThere && !field["units"].IsThere)
            field["seconds"].Missing("the exposure in seconds, or in the machine's own units as \"units\"");
        if (field["seconds"].IsThere && field["units"].IsThere)
            problems.Add("The exposure is given twice, in seconds and in units.", field["units"].Path, "Give the one that this lamp counts.");
        return new StepTest(
            seconds ?? units ?? 1,
            field["solidStep"].Count(0, InputLimits.MostWedgeSteps),
            field["squeegeeSideSoft"].YesNo(),
            field["finestLineUm"].Number("µm", InputLimits.LeastDetailUm, InputLimits.MostDetailUm),
            field["finestGapUm"].Number("µm", InputLimits.LeastDetailUm, InputLimits.MostDetailUm),
            field["damp"].YesNo() ?? false)
        {
            On = field["on"].Date(),
            LampHours = field["lampHours"].Number("h", 0, InputLimits.MostLampHours),
            EomUm = field["eomUm"].Number("µm", 0, InputLimits.MostEomUm),
            CuredDepthUm = field["curedDepthUm"].Number("µm", 0, InputLimits.MostEomUm),
            Batch = field["batch"].Text(),
            SensitiserDays = field["sensitiserDays"].Number("d", 0, InputLimits.MostSensitiserDays),
            HumidityPercent = field["humidityPercent"].Number("%", 0, 100),
        };
    }

    /// <summary>A strip in seconds under a lamp that counts units, or the other way round: one is never the other.</summary>
    internal static void Counted(DocumentField field, ExposureCount counts, string lamp, ProblemList problems)
    {
        var given = counts == ExposureCount.Seconds ? "units" : "seconds";
        if (field[given].IsThere)
        {
            problems.Add(
                $"This lamp counts {Names.Of(counts)}, and the reading is in {given}.", field[given].Path,
                $"Give the reading in {Names.Of(counts)}, or say in {lamp} that the lamp counts {given}.");
        }
    }
}
