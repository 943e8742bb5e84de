namespace Silkwright.Catalogue;

/// <summary>What a source says: a number in the property's unit, or one of its words.</summary>
public readonly record struct CatalogueValue
{
    private CatalogueValue(double? number, string? word) => (Number, Word) = (number, word);

    public double? Number { get; }

    public string? Word { get; }

    public static CatalogueValue Of(double number) => new(number, null);

    /// <param name="word">As <see cref="CatalogueProperty.Words"/> spells it.</param>
    public static CatalogueValue Of(string word) => new(null, word);
}
