using Silkwright.Light;

namespace Silkwright.Web.Pictures;

/// <summary>Where a stencil beside a film's edge lies in a picture; one factor across and down.</summary>
public sealed class EdgeGeometry
{
    private readonly StencilResult result;

    /// <param name="result">The dose.</param>
    /// <param name="left">Left edge of the drawing.</param>
    /// <param name="top">Print side of the coat.</param>
    /// <param name="widthPx">Width of the drawing.</param>
    public EdgeGeometry(StencilResult result, double left, double top, double widthPx)
    {
        this.result = result;
        var image = result.Case.Image;
        FarUm = Math.Max(40, (image.Kind == FilmImageKind.Edge ? 1.2 : 0.6) * result.Case.StencilUm);
        FromUm = -FarUm - (image.Kind == FilmImageKind.Gap ? image.WidthUm : 0);
        ToUm = FarUm + (image.Kind == FilmImageKind.Line ? image.WidthUm : 0);
        PxPerUm = widthPx / (ToUm - FromUm);
        (Left, Top, Right) = (left, top, left + widthPx);
    }

    public double FarUm { get; }

    public double FromUm { get; }

    public double ToUm { get; }

    public double PxPerUm { get; }

    public double Left { get; }

    public double Right { get; }

    public double Top { get; }

    public double Bottom => Y(result.Case.StencilUm);

    public double X(double um) => Left + ((Math.Clamp(um, FromUm, ToUm) - FromUm) * PxPerUm);

    public double Y(double depthUm) => Top + (depthUm * PxPerUm);

    /// <summary>Where the film is black.</summary>
    public IEnumerable<(double Left, double Right)> Black => result.Case.Image.Kind switch
    {
        FilmImageKind.Line => [(X(0), X(result.Case.Image.WidthUm))],
        FilmImageKind.Gap => [(Left, X(-result.Case.Image.WidthUm)), (X(0), Right)],
        _ => [(X(0), Right)],
    };

    /// <summary>The outline of a dose.</summary>
    public DoseOutline Outline(double dose) => DoseOutline.Of(result, dose, FarUm);

    /// <summary>A region as a closed path, a side at a time.</summary>
    public string Region(DoseOutline outline) => string.Concat(outline.SidesUm.Select((side, i) =>
        $"{Svg.Path([(X(outline.FromUm[i]), Top), .. Points(side), (X(outline.FromUm[i]), Bottom)])}Z"));

    /// <summary>Its boundary alone; where the sides of a line or a gap have met there is none.</summary>
    public string Boundary(DoseOutline outline) => string.Concat(outline.SidesUm
        .Select(side => Points(side).Where(point => !IsMiddle(point.X)).ToArray())
        .Where(points => points.Length > 1)
        .Select(Svg.Path));

    /// <summary>Whether a place is the middle of a line or a gap.</summary>
    public bool IsMiddle(double px) => result.Case.Image.Kind switch
    {
        FilmImageKind.Line => Math.Abs(px - X(result.Case.Image.WidthUm / 2)) < 0.01,
        FilmImageKind.Gap => Math.Abs(px - X(-result.Case.Image.WidthUm / 2)) < 0.01,
        _ => false,
    };

    /// <summary>Threads that run along the edge, cut across: centre and half widths.</summary>
    public IEnumerable<(double X, double Y, double HalfWidth, double HalfHeight)> Threads()
    {
        if (result.Case.Weave is not { } weave)
            yield break;
        // A thread at an angle to the edge is cut longer and comes less often; one at a right angle does not come at all.
        var cosine = Math.Max(0.2, Math.Abs(Math.Cos(weave.AngleDegrees * Math.PI / 180)));
        var (pitch, radius) = (weave.PitchUm / cosine, weave.ThreadUm / 2);
        var middle = result.Case.PrintSideUm + (weave.ThicknessUm / 2);
        var off = (weave.ThicknessUm - weave.ThreadUm) / 2;
        for (var i = (int)Math.Floor(FromUm / pitch) - 1; (i - 0.5) * pitch - radius < ToUm; i++)
        {
            var x = Left + ((((i + 0.5) * pitch) - FromUm) * PxPerUm);
            yield return (x, Y(middle + (i % 2 == 0 ? -off : off)), radius / cosine * PxPerUm, radius * PxPerUm);
        }
    }

    private IEnumerable<(double X, double Y)> Points(IReadOnlyList<double> side) =>
    [
        (X(side[0]), Top),
        .. side.Select((x, i) => (X(x), Y(result.DepthsUm[i]))),
        (X(side[^1]), Bottom),
    ];
}
