namespace Silkwright.Scheduling.Shelf;

/// <summary>An emulsion that stays, to be bought in another size than today.</summary>
/// <param name="Emulsion">Its id.</param>
/// <param name="FromGrams">Bought today. [g]</param>
/// <param name="ToGrams">To be bought. [g]</param>
public sealed record ShelfResize(string Emulsion, double FromGrams, double ToGrams);
