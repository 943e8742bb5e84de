using Silkwright.Estimates;

namespace Silkwright.Emulsion;

/// <summary>What a family of emulsions is like where nobody has measured the emulsion itself.</summary>
public static class FamilyValues
{
    public static Estimate SolidsPercent(StencilEmulsion emulsion) =>
        throw new NotImplementedException();

    public static Estimate DensityGPerCm3(StencilEmulsion emulsion) =>
        throw new NotImplementedException();

    public static Estimate PotLifeDaysAt21(StencilEmulsion emulsion) =>
        throw new NotImplementedException();

    public static Estimate ShelfLifeMonths(StencilEmulsion emulsion) =>
        throw new NotImplementedException();

    public static Estimate RelativeExposure(StencilEmulsion emulsion) =>
        throw new NotImplementedException();

    public static Estimate PricePerKg(StencilEmulsion emulsion) =>
        throw new NotImplementedException();

    public static bool NeedsSensitiser(EmulsionFamily family) =>
        throw new NotImplementedException();
}
