using Silkwright.Estimates;

namespace Silkwright.Stock;

/// <summary>Share of a container thrown away.</summary>
public static class Waste
{
    /// <returns>[%], 0 to below 100.</returns>
    public static Estimate SharePercent(WasteCase waste) =>
        throw new NotImplementedException();
}
