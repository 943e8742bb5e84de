namespace Silkwright.Answers;

/// <summary>Where the choice turns: below, one emulsion is cheapest; above, another.</summary>
/// <param name="Axis">The circumstance that turns it.</param>
/// <param name="At">Its value there.</param>
/// <param name="Below">The choice below; none where nothing may be used.</param>
/// <param name="Above">The choice above; none where nothing may be used.</param>
public sealed record TurningPoint(TurningAxis Axis, double At, string? Below, string? Above);
