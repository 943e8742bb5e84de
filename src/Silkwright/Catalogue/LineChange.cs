namespace Silkwright.Catalogue;

/// <summary>One property of an emulsion that two catalogues tell differently.</summary>
/// <param name="Emulsion">Its name.</param>
/// <param name="Before">What the earlier one tells; none where it is silent.</param>
/// <param name="After">What the later one tells; none where it is silent. Never both.</param>
public sealed record LineChange(string Emulsion, SheetLine? Before, SheetLine? After)
{
    public SheetLine Line => After ?? Before!;

    /// <summary>The value used is the same from the same source: only what stands beside it differs.</summary>
    public bool OnlyOthers => Before is not null && After is not null && Before.Used.SaysTheSameAs(After.Used);
}
