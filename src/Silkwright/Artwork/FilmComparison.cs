namespace Silkwright.Artwork;

/// <summary>Tells doubled and mirrored films of one job by their layouts. docs/engines/film.md, "Films of one job".</summary>
internal static class FilmComparison
{
    /// <summary>Images at least so alike are one image. Our own choice: drawn films of other colours stay below, copies above.</summary>
    private const double SameImage = 0.96;

    /// <summary>Coverages of one image differ by less than this share. Our own choice: what the pixel grid and a moved speck make.</summary>
    private const double SameCoverage = 0.02;

    /// <summary>A mirrored likeness counts where it is so much better than the plain one: an even image is its own mirror image.</summary>
    private const double Clearly = 0.03;

    /// <summary>A colour lies on another where so much of it does. Our own choice.</summary>
    private const double Covered = 0.9;

    /// <summary>A colour does not lie on another where at most so much of it does. Our own choice.</summary>
    private const double Astray = 0.6;

    private const int LeastMarks = 3;

    private static readonly FilmTurn[] Turns = [FilmTurn.Mirrored, FilmTurn.MirroredTopToBottom, FilmTurn.TurnedHalf];

    /// <summary>What two films have to do with each other; none where nothing speaks for a mistake.</summary>
    public static FilmResemblance? Of(FilmMeasurement first, FilmMeasurement second)
    {
        if (first.Layout is not { } a || second.Layout is not { } b)
            return null;
        var cell = Math.Max(a.CellMm, b.CellMm);
        var (one, other) = (CoverageMap.Of(a, cell), CoverageMap.Of(b, cell));
        return Copy(one, other) ?? Marks(first, second, a, b) ?? Cover(first, second, one, other);
    }

    private static FilmResemblance? Copy(CoverageMap one, CoverageMap other)
    {
        if (one.Sum <= 0 || other.Sum <= 0 || Math.Abs(one.Sum - other.Sum) > SameCoverage * Math.Max(one.Sum, other.Sum))
            return null;
        var plain = CoverageMap.Alike(one, other);
        var (turn, alike) = Turns.Select(turn => (Turn: turn, Alike: CoverageMap.Alike(one.Turned(turn), other))).MaxBy(pair => pair.Alike);
        return alike >= SameImage && alike > plain + Clearly ? new FilmResemblance(turn, ResemblanceGround.SameImage, 100 * alike)
            : plain >= SameImage ? new FilmResemblance(FilmTurn.None, ResemblanceGround.SameImage, 100 * plain)
            : null;
    }

    private static FilmResemblance? Marks(FilmMeasurement first, FilmMeasurement second, FilmLayout a, FilmLayout b)
    {
        var most = Math.Min(a.Marks.Count, b.Marks.Count);
        if (most < LeastMarks || a.Marks.Count != b.Marks.Count || Agreeing(a.Marks, b.Marks) == most)
            return null;
        foreach (var turn in Turns)
        {
            if (Agreeing([.. a.Marks.Select(mark => Turned(mark, turn, first))], b.Marks) == most)
                return new FilmResemblance(turn, ResemblanceGround.Marks, null);
        }

        return null;
    }

    private static FilmResemblance? Cover(FilmMeasurement first, FilmMeasurement second, CoverageMap one, CoverageMap other)
    {
        if (first.WidthPx != second.WidthPx || first.HeightPx != second.HeightPx || first.Dpi != second.Dpi)
            return null;
        var (less, more) = one.Sum <= other.Sum ? (one, other) : (other, one);
        if (less.ShareOn(more) > Astray)
            return null;
        var (turn, share) = Turns.Select(turn => (Turn: turn, Share: less.Turned(turn).ShareOn(more))).MaxBy(pair => pair.Share);
        return share >= Covered ? new FilmResemblance(turn, ResemblanceGround.Cover, 100 * share) : null;
    }

    private static int Agreeing(IReadOnlyList<RegisterMark> a, IReadOnlyList<RegisterMark> b) => RegisterFit.Of(a, b)?.Marks ?? 0;

    private static RegisterMark Turned(RegisterMark mark, FilmTurn turn, FilmMeasurement film) => mark with
    {
        XMm = turn == FilmTurn.MirroredTopToBottom ? mark.XMm : film.WidthMm - mark.XMm,
        YMm = turn == FilmTurn.Mirrored ? mark.YMm : film.HeightMm - mark.YMm,
    };
}
