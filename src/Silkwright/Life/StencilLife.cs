namespace Silkwright.Life;

/// <summary>How many impressions a stencil lasts.</summary>
public static class StencilLife
{
    public static LifeResult Of(LifeCase life) =>
        throw new NotImplementedException();
}
