namespace Silkwright.Life;

/// <summary>What is done to the developed stencil to make it last.</summary>
public enum StencilFinish
{
    /// <summary>Dried and used.</summary>
    None,

    /// <summary>Exposed a second time once dry.</summary>
    PostExposed,

    /// <summary>Brushed with a chemical hardener; usually never reclaimed again.</summary>
    Hardened,
}
