using System.Globalization;
using Silkwright.Contracts;
using Silkwright.Estimates;
using Silkwright.Exposure;

namespace Silkwright.Web.Questions;

/// <summary>One strip as it stands in the form: what was typed and pressed, as texts.</summary>
/// <param name="Amount">What the strip was given; empty: the row is not used.</param>
/// <param name="Solid">Last solid step.</param>
/// <param name="Soft">1 where the squeegee side was soft, 0 where it was hard.</param>
/// <param name="Held">1 where the finest line was held, 0 where it was lost.</param>
/// <param name="Damp">1 where it may have been damp.</param>
public sealed record StripRow(string Amount, string Solid, string Soft, string Held, string Damp)
{
    /// <summary>Rows of the form: no test has more strips.</summary>
    public const int Rows = StepLadder.MostStrips;

    /// <summary>Steps that have a button; a wedge that shows others is told in a file.</summary>
    public const int ButtonSteps = 11;

    /// <summary>Something was read on it.</summary>
    public bool IsRead => Amount.Length > 0 && (Solid.Length > 0 || Soft.Length > 0 || Held.Length > 0);

    public static StripRow Of(IQueryCollection query, int row)
    {
        return new(Text("amount"), Text("solid"), Text("soft"), Text("held"), Text("damp"));

        string Text(string name) => query[$"{name}{row}"].ToString().Trim();
    }

    /// <summary>The strip; faults go to the list.</summary>
    /// <param name="row">Its number, from 1.</param>
    /// <param name="lineUm">The line that was held or lost. [µm]</param>
    /// <param name="on">The day of the test.</param>
    /// <param name="problems">Takes the faults.</param>
    public StepTest ToStrip(int row, double lineUm, DateOnly? on, ProblemList problems)
    {
        if (!double.TryParse(Amount, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var amount) || !(amount >= InputLimits.LeastExposure && amount <= InputLimits.MostExposureUnits))
            problems.Add($"'{(Amount.Length > 20 ? Amount[..20] : Amount)}' is no exposure.", $"strip {row}", "Write a plain number of seconds or units.");
        int? solid = int.TryParse(Solid, NumberStyles.None, CultureInfo.InvariantCulture, out var step) && step <= InputLimits.MostWedgeSteps ? step : null;
        if (solid is null && Solid.Length > 0)
            problems.Add("This is no step of a wedge.", $"strip {row}", $"Press the last step that stayed solid, 0 to {InputLimits.MostWedgeSteps}.");
        return new StepTest(amount >= InputLimits.LeastExposure ? amount : InputLimits.LeastExposure, solid, YesNo(Soft), YesNo(Held) switch { true => lineUm, false => 2 * lineUm, null => null }, null, Damp == "1") { On = on };
    }

    private static bool? YesNo(string text) => text switch { "1" => true, "0" => false, _ => null };
}
