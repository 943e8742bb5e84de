using Silkwright.Emulsion;

namespace Silkwright.Stock;

/// <summary>How fast a shop uses an emulsion beside how long it lasts once opened or mixed.</summary>
/// <param name="Family">Ready to use or two-part.</param>
/// <param name="ContainerGrams">One container, mixed whole. [g]</param>
/// <param name="LifeDays">Days from mixing (two-part) or from receipt (ready to use). [d]</param>
/// <param name="GramsPerDay">Use of this emulsion. [g/d]</param>
public sealed record WasteCase(EmulsionFamily Family, double ContainerGrams, Estimates.Estimate LifeDays, Estimates.Estimate GramsPerDay);
