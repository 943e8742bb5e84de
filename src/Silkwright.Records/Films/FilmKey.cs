using System.Globalization;

namespace Silkwright.Records.Films;

/// <summary>A stored film as it is looked at: what it holds and, of a PDF, which page and how finely.</summary>
/// <param name="Hash">SHA-256 of the stored bytes, lower-case hex.</param>
/// <param name="Page">Page of a PDF, from 1; every other file has one film.</param>
/// <param name="Dpi">Resolution the page is drawn at, or that overrules the file's; none: the usual one, or the file's. [1/in]</param>
public sealed record FilmKey(string Hash, int Page = 1, double? Dpi = null)
{
    private const char Between = '.';

    /// <summary>In an address: the hash alone where nothing else is said, else <c>hash.p2.600dpi</c>.</summary>
    public string Address => string.Create(
        CultureInfo.InvariantCulture, $"{Hash}{(Page > 1 ? $"{Between}p{Page}" : "")}{(Dpi is { } dpi ? $"{Between}{dpi.ToString("R", CultureInfo.InvariantCulture).Replace('.', '_')}dpi" : "")}");

    /// <summary>What an address means; none where it means nothing.</summary>
    public static FilmKey? Of(string address)
    {
        ArgumentNullException.ThrowIfNull(address);
        var parts = address.Split(Between);
        var key = new FilmKey(parts[0]);
        foreach (var part in parts.Skip(1))
        {
            if (part.StartsWith('p') && int.TryParse(part.AsSpan(1), NumberStyles.None, CultureInfo.InvariantCulture, out var page))
                key = key with { Page = page };
            else if (part.EndsWith("dpi", StringComparison.Ordinal) && double.TryParse(part[..^3].Replace('_', '.'), NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var dpi))
                key = key with { Dpi = dpi };
            else
                return null;
        }

        // One way to write each: an address is also what its pictures are kept under.
        return key.Page >= 1 && key.Dpi is null or (> 0 and < double.PositiveInfinity) && key.Address == address ? key : null;
    }

    /// <summary>What its measurement is kept under.</summary>
    /// <param name="measuringVersion">The way of measuring.</param>
    public MeasuringKey Measured(string measuringVersion) => new(Hash, Dpi, Negative: false, measuringVersion) { Page = Page };
}
