using Silkwright.Emulsion;

namespace Silkwright.Life;

/// <summary>The emulsion a capillary film is laid with, as far as the stencil's life goes.</summary>
/// <param name="Family">Its family.</param>
/// <param name="MadeForInk">It is made to stand the ink.</param>
public sealed record LayingEmulsion(EmulsionFamily Family, bool MadeForInk);
