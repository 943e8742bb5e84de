namespace Silkwright.Light;

/// <summary>Where the dose reaches a value: what is cured when that is the critical dose over the exposure.</summary>
public sealed record DoseOutline
{
    /// <summary>By side of the image, then by slice of depth: where the dose falls below the value. An edge has one side, a line and a gap have two, left and right.</summary>
    public required IReadOnlyList<IReadOnlyList<double>> SidesUm { get; init; }

    /// <summary>Where each side is looked at from: there the dose is greatest. [µm]</summary>
    public required IReadOnlyList<double> FromUm { get; init; }

    /// <summary>The image in question.</summary>
    public required FilmImage Image { get; init; }

    /// <param name="result">The dose.</param>
    /// <param name="dose">[1], above 0.</param>
    /// <param name="farUm">How far to look to each side of the image. [µm]</param>
    public static DoseOutline Of(StencilResult result, double dose, double farUm)
    {
        var image = result.Case.Image;
        var half = image.WidthUm / 2;
        (double From, double To)[] sides = image.Kind switch
        {
            FilmImageKind.Line => [(-farUm, half), (image.WidthUm + farUm, half)],
            FilmImageKind.Gap => [(-half, -image.WidthUm - farUm), (-half, farUm)],
            _ => [(-farUm, farUm)],
        };
        return new DoseOutline
        {
            SidesUm = [.. sides.Select(side => (IReadOnlyList<double>)[.. Enumerable.Range(0, result.DepthsUm.Count).Select(depth => Ends(result, depth, dose, side.From, side.To))])],
            FromUm = [.. sides.Select(side => side.From)],
            Image = image,
        };
    }

    /// <summary>
    /// An edge: how far under the black, at the depth where it is farthest, below 0 short of it. A line: what stays open of it at its narrowest, 0 where it has closed. A gap: the
    /// stencil that stands in it at its narrowest. [µm]
    /// </summary>
    public double SizeUm => Image.Kind switch
    {
        FilmImageKind.Line or FilmImageKind.Gap => SidesUm[0].Zip(SidesUm[1], (left, right) => Math.Max(0, right - left)).Min(),
        _ => SidesUm[0].Max(),
    };

    /// <summary>Along a side on which the dose falls: the place where it passes the value.</summary>
    private static double Ends(StencilResult result, int depth, double dose, double from, double to)
    {
        if (result.DoseAt(depth, from) < dose)
            return from;
        if (result.DoseAt(depth, to) >= dose)
            return to;
        for (var i = 0; i < 40; i++)
        {
            var middle = (from + to) / 2;
            if (result.DoseAt(depth, middle) >= dose)
                from = middle;
            else
                to = middle;
        }

        return (from + to) / 2;
    }
}
