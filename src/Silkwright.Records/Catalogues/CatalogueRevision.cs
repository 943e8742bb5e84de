namespace Silkwright.Records.Catalogues;

/// <summary>The catalogue of emulsions as it stood from one moment on. Never changed: a change is the next revision.</summary>
public sealed record CatalogueRevision
{
    /// <summary>Counts from 1.</summary>
    public required int Revision { get; init; }

    /// <summary>Its values as they were checked, as <see cref="Contracts.CatalogueWriter"/> writes them and <see cref="Contracts.CatalogueReader"/> reads them.</summary>
    public required string Text { get; init; }

    public required DateTimeOffset SavedAt { get; init; }

    /// <summary>The person, as they are called; there are no accounts.</summary>
    public required string SavedBy { get; init; }
}
