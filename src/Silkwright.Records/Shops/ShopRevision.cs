namespace Silkwright.Records.Shops;

/// <summary>SHOP.json as it stood from one moment on. Never changed: a change is the next revision.</summary>
public sealed record ShopRevision
{
    public required string ShopKey { get; init; }

    /// <summary>Counts from 1.</summary>
    public required int Revision { get; init; }

    /// <summary>The document, as <see cref="Contracts.ShopReader"/> reads it.</summary>
    public required string Text { get; init; }

    public required DateTimeOffset SavedAt { get; init; }

    /// <summary>The person, as they are called; there are no accounts.</summary>
    public required string SavedBy { get; init; }

    /// <summary>What changed and for what reason.</summary>
    public required string Why { get; init; }
}
