namespace Silkwright.Records.Shops;

/// <summary>The shop that is meant where none is named: the latest choice holds.</summary>
public sealed record DefaultShop
{
    /// <summary>Counts from 1.</summary>
    public required int Choice { get; init; }

    public required string ShopKey { get; init; }

    public required DateTimeOffset ChosenAt { get; init; }

    public required string ChosenBy { get; init; }
}
