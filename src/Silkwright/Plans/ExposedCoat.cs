using Silkwright.Coating;
using Silkwright.Emulsion;
using Silkwright.Exposure;

namespace Silkwright.Plans;

/// <summary>An emulsion's coat and exposure for one colour: what neither the run, the pace nor the air changes.</summary>
internal sealed record ExposedCoat(StencilEmulsion Emulsion, Trough Trough, CoatPrediction Coat, Lamp Lamp, string? LampBecause, ExposureWindow Window);
