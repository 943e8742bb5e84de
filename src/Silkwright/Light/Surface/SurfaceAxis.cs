namespace Silkwright.Light.Surface;

/// <summary>One of the values that a place of the surface is told by.</summary>
/// <param name="Name">What.</param>
/// <param name="Unit">As written.</param>
/// <param name="Low">From.</param>
/// <param name="High">To.</param>
/// <param name="Of">The value of a place.</param>
/// <param name="With">The place with another value.</param>
public sealed record SurfaceAxis(string Name, string Unit, double Low, double High, Func<SurfacePlace, double> Of, Func<SurfacePlace, double, SurfacePlace> With);
