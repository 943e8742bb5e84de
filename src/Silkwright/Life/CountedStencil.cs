namespace Silkwright.Life;

/// <summary>A stencil whose impressions were counted to its end.</summary>
/// <param name="EmulsionId">The emulsion, as the shop calls it.</param>
/// <param name="Made">The stencil; its impressions are those counted.</param>
/// <param name="Broke">It failed there; otherwise it came off sound.</param>
public sealed record CountedStencil(string EmulsionId, LifeCase Made, bool Broke);
