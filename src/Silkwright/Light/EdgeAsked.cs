using Silkwright.Estimates;

namespace Silkwright.Light;

/// <summary>A stencil beside a film's edge, and what of it is assumed.</summary>
/// <param name="Case">The case at the best values.</param>
/// <param name="Assumed">What moves the answer's intervals.</param>
/// <param name="Notes">What was assumed, in words.</param>
public sealed record EdgeAsked(StencilCase Case, IReadOnlyList<AssumedInput> Assumed, IReadOnlyList<Note> Notes);
