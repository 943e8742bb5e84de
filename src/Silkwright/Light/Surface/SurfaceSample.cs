namespace Silkwright.Light.Surface;

/// <summary>A place whose photons were followed.</summary>
/// <param name="Place">The place.</param>
/// <param name="Logs">Its figures, as they are fitted.</param>
/// <param name="Errors">What chance adds to each.</param>
internal sealed record SurfaceSample(SurfacePlace Place, double[] Logs, double[] Errors);
