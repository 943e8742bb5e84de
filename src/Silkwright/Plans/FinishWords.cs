using Silkwright.Estimates;
using Silkwright.Life;

namespace Silkwright.Plans;

/// <summary>Finishes and their prices in words.</summary>
public static class FinishWords
{
    public static string Of(StencilFinish finish) => finish switch
    {
        StencilFinish.None => "dried and used",
        StencilFinish.PostExposed => "exposed a second time",
        StencilFinish.Hardened => "hardened",
        _ => throw new ArgumentOutOfRangeException(nameof(finish), finish, "Unknown finish."),
    };

    /// <summary>One option with its price: "hardened 61 EUR, 99 of 100 finish the run, its mesh is lost".</summary>
    public static string Of(FinishOption option, string currency)
    {
        var spares = option.Spares switch { 0 => "", 1 => ", with a spare", var more => $", with {more} spares" };
        var lost = option.MeshLost ? ", its mesh is lost" : "";
        return $"{Of(option.Finish)} {Figures.Value(option.Cost.Total)} {currency}{Figures.InBrackets(Figures.Interval(option.Cost.Total))}, {Figures.Chance(option.FinishPercent)} of 100 finish the run{spares}{lost}";
    }
}
