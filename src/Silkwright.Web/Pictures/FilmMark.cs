using Silkwright.Artwork;

namespace Silkwright.Web.Pictures;

/// <summary>Where marks fall on a film's preview.</summary>
/// <param name="Number">As the list beside the picture numbers it, from 1.</param>
/// <param name="X">From the left, in picture units.</param>
/// <param name="Y">From the top, in picture units.</param>
/// <param name="Place">The spot itself.</param>
public sealed record FilmMark(int Number, double X, double Y, FilmPlace Place)
{
    /// <summary>Marks for places on a film whose preview is <paramref name="widthPx"/> wide.</summary>
    public static IReadOnlyList<FilmMark> On(double filmWidthMm, double widthPx, IReadOnlyList<FilmPlace> places) =>
        [.. places.Select((place, i) => new FilmMark(i + 1, place.XMm * widthPx / filmWidthMm, place.YMm * widthPx / filmWidthMm, place))];
}
