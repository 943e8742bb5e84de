namespace Silkwright.Drying;

/// <summary>How long a coat dries.</summary>
public static class DryingTime
{
    public static DryingResult Of(DryingCase drying) =>
        throw new NotImplementedException();
}
