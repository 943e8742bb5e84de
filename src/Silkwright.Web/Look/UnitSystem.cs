namespace Silkwright.Web.Look;

/// <summary>The units a person reads first; the other ones stand beside them where space allows.</summary>
public enum UnitSystem
{
    /// <summary>µm, threads per cm, °C, g.</summary>
    Metric,

    /// <summary>mil, threads per inch, °F, oz.</summary>
    Us,
}
