namespace Silkwright.Records.Shops;

/// <summary>A shop that has records here.</summary>
public sealed record ShopEntry
{
    /// <summary>Short name in lower case, such as "marlowe-quay".</summary>
    public required string Key { get; init; }

    public required DateTimeOffset AddedAt { get; init; }
}
