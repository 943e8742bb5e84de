using System.Globalization;
using Silkwright.Artwork;

namespace Silkwright.Plans;

/// <summary>Whether what a film prints lies inside a frame with room for squeegee and flow-bar.</summary>
internal static class FrameFit
{
    /// <summary>The image without its register marks, which may be covered with tape; the whole film where the image is not known.</summary>
    public static (bool Fits, string? Remark) Of(FilmMeasurement film, Frame frame)
    {
        var (width, height) = film.Layout is { } layout
            ? (layout.Artwork?.WidthMm ?? 0, layout.Artwork?.HeightMm ?? 0)
            : (film.WidthMm, film.HeightMm);
        var (beside, above) = ((frame.InsideWidthMm - width) / 2, (frame.InsideHeightMm - height) / 2);
        if (Math.Min(beside, above) < FrameChoice.MarginMm)
        {
            return (false, Say($"The image of {film.File}, {width:0} x {height:0} mm, leaves {Math.Max(0, beside):0} mm beside and {Math.Max(0, above):0} mm above it in a frame of {frame.InsideWidthMm:0} x {frame.InsideHeightMm:0} mm inside; squeegee and flow-bar want {FrameChoice.MarginMm:0} mm on every side. Take a larger frame."));
        }

        return film.WidthMm > frame.InsideWidthMm || film.HeightMm > frame.InsideHeightMm
            ? (true, Say($"The film {film.File} is larger than the frame of {frame.InsideWidthMm:0} x {frame.InsideHeightMm:0} mm inside; its image fits. Trim the film."))
            : (true, null);
    }

    private static string Say(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}
