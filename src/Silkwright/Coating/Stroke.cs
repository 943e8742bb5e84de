namespace Silkwright.Coating;

/// <summary>One stroke of the scoop coater.</summary>
/// <param name="Side">The side it is made on.</param>
/// <param name="Scrape">An empty edge drawn over the coat: takes emulsion off instead of laying it.</param>
/// <param name="AfterDrying">The coat was dried before this stroke (a face coat when on the print side).</param>
public sealed record Stroke(StrokeSide Side, bool Scrape = false, bool AfterDrying = false);
