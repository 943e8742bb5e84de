using Silkwright.Estimates;

namespace Silkwright.Exposure;

/// <summary>How deep one dose cures.</summary>
/// <param name="DoseMjPerCm2">[mJ/cm²]</param>
/// <param name="DepthUm">[µm]</param>
public sealed record CurePoint(double DoseMjPerCm2, Estimate DepthUm);
