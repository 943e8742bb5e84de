namespace Silkwright.Web.Pictures;

/// <summary>A cross-section of thread, stencil and ink, to scale: one factor for across and down.</summary>
/// <remarks>
/// Cut across the warp, halfway along a weft thread. The warp's centres alternate so that the threads fill the fabric's
/// thickness exactly; threads flatten where they cross, so weft and warp overlap in the drawing. The squeegee side is drawn
/// flush with the threads, since a stencil's thickness is mesh and emulsion over mesh together.
/// </remarks>
public sealed record SectionGeometry
{
    /// <summary>Picture units for one micrometre.</summary>
    public required double PxPerUm { get; init; }

    public required double LeftPx { get; init; }

    public required double WidthPx { get; init; }

    /// <summary>Squeegee side of the fabric.</summary>
    public required double FabricTopPx { get; init; }

    /// <summary>Print side of the fabric.</summary>
    public required double FabricBottomPx { get; init; }

    /// <summary>Print side of the stencil: the face that touches the garment.</summary>
    public required double StencilBottomPx { get; init; }

    public required double StencilLowPx { get; init; }

    public required double StencilHighPx { get; init; }

    public required double ThreadRadiusPx { get; init; }

    public required IReadOnlyList<(double X, double Y)> Threads { get; init; }

    /// <summary>The weft thread's centre line.</summary>
    public required IReadOnlyList<(double X, double Y)> Weft { get; init; }

    /// <summary>Left wall of the opening.</summary>
    public required double OpeningLeftPx { get; init; }

    /// <summary>Right wall; at the picture's edge when the line is wider than the view.</summary>
    public required double OpeningRightPx { get; init; }

    /// <summary>Whether the whole opening is in view.</summary>
    public required bool WholeOpening { get; init; }

    public required double GarmentPx { get; init; }

    public required double DepositPx { get; init; }

    public required double DepositLowPx { get; init; }

    public required double DepositHighPx { get; init; }

    public double RightPx => LeftPx + WidthPx;

    /// <param name="sizes">What to draw.</param>
    /// <param name="leftPx">Where the drawing begins.</param>
    /// <param name="topPx">Height of the squeegee side.</param>
    /// <param name="widthPx">Width of the drawing.</param>
    /// <param name="pitches">Threads in view. At least 3.</param>
    /// <param name="garmentGapPx">Space between the lifted stencil and the garment's ink.</param>
    public static SectionGeometry Of(SectionSizes sizes, double leftPx, double topPx, double widthPx, double pitches, double garmentGapPx)
    {
        var viewUm = pitches * sizes.PitchUm;
        var scale = widthPx / viewUm;
        var fabricBottom = topPx + (sizes.FabricUm * scale);
        var eom = sizes.Eom?.Value ?? 0;
        var swing = (sizes.FabricUm - sizes.ThreadUm) / 2 * scale;
        var middle = (topPx + fabricBottom) / 2;
        var firstUm = ((pitches % 1) + 1) / 2 * sizes.PitchUm;
        var threads = Enumerable.Range(-1, (int)pitches + 3)
            .Select(i => (X: leftPx + ((firstUm + (i * sizes.PitchUm)) * scale), Y: middle + (i % 2 == 0 ? -swing : swing)))
            .Where(t => t.X > leftPx - (sizes.ThreadUm * scale / 2) && t.X < leftPx + widthPx + (sizes.ThreadUm * scale / 2))
            .ToArray();
        var weft = Enumerable.Range(0, 97)
            .Select(i => viewUm * i / 96)
            .Select(um => (leftPx + (um * scale), middle + (swing * Math.Cos(Math.PI * (um - firstUm) / sizes.PitchUm))))
            .ToArray();

        var openingUm = sizes.OpeningUm ?? double.PositiveInfinity;
        var whole = openingUm <= viewUm - (1.6 * sizes.PitchUm);
        var openingLeft = whole ? leftPx + ((viewUm - openingUm) / 2 * scale) : leftPx + (widthPx * 0.42);
        var stencilBottom = fabricBottom + (eom * scale);
        var garment = stencilBottom + garmentGapPx + ((sizes.Deposit?.High ?? 0) * scale);
        return new SectionGeometry
        {
            PxPerUm = scale,
            LeftPx = leftPx,
            WidthPx = widthPx,
            FabricTopPx = topPx,
            FabricBottomPx = fabricBottom,
            StencilBottomPx = stencilBottom,
            StencilLowPx = fabricBottom + ((sizes.Eom?.Low ?? 0) * scale),
            StencilHighPx = fabricBottom + ((sizes.Eom?.High ?? 0) * scale),
            ThreadRadiusPx = sizes.ThreadUm / 2 * scale,
            Threads = threads,
            Weft = weft,
            OpeningLeftPx = openingLeft,
            OpeningRightPx = whole ? openingLeft + (openingUm * scale) : leftPx + widthPx,
            WholeOpening = whole,
            GarmentPx = garment,
            DepositPx = (sizes.Deposit?.Value ?? 0) * scale,
            DepositLowPx = (sizes.Deposit?.Low ?? 0) * scale,
            DepositHighPx = (sizes.Deposit?.High ?? 0) * scale,
        };
    }
}
