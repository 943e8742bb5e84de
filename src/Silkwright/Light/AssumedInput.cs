using Silkwright.Estimates;

namespace Silkwright.Light;

/// <summary>Something nobody has measured that a stencil's light hangs on.</summary>
/// <param name="Input">What, and how far it may lie off.</param>
/// <param name="With">The case with another value of it.</param>
public sealed record AssumedInput(Uncertain Input, Func<StencilCase, double, StencilCase> With);
