using Silkwright.Emulsion;

namespace Silkwright.Stock;

/// <summary>How long a lot keeps.</summary>
public static class PotLife
{
    public static LotState Of(StencilEmulsion emulsion, DateOnly on) =>
        throw new NotImplementedException();
}
