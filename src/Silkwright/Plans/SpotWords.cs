using Silkwright.Artwork;

namespace Silkwright.Plans;

/// <summary>What is at a spot of a film, in words.</summary>
public static class SpotWords
{
    /// <summary>One to three sentences.</summary>
    /// <param name="spot">The spot.</param>
    /// <param name="verdict">How it compares with mesh and stencil; none: neither is known.</param>
    /// <param name="length">Writes a width. [µm]</param>
    public static string Of(FilmSpot spot, SpotVerdict? verdict, Func<double, string> length)
    {
        ArgumentNullException.ThrowIfNull(spot);
        ArgumentNullException.ThrowIfNull(length);
        var kind = (spot.IsSpeck, spot.IsImage) switch
        {
            (true, true) => "A clear speck of four pixels or fewer, left out; about it the film prints",
            (true, false) => "A black speck of four pixels or fewer, left out; about it is gap",
            (false, true) => "Prints",
            _ => "Gap",
        };
        var wide = spot.IsWidest
            ? $"at least {length(spot.WidthUm)} wide"
            : $"{length(spot.WidthUm)} wide, {length(spot.LowUm)} to {length(spot.WidthUm + spot.PixelUm)} as a pixel either way may have it";
        return $"{kind}, {wide}. {(verdict is null ? "" : Verdict(spot, verdict, length))}".TrimEnd();
    }

    private static string Verdict(FilmSpot spot, SpotVerdict verdict, Func<double, string> length)
    {
        var part = (verdict.IsDotRule, spot.IsImage) switch
        {
            (true, true) => "dots",
            (true, false) => "holes",
            (false, true) => "lines",
            _ => "gaps",
        };
        var holder = verdict.IsStencils ? "The stencil at its aim" : "The mesh";
        var where = verdict.IsDotRule ? "This lies in a halftone. " : "";
        var end = verdict.Judgement switch
        {
            SpotJudgement.Finer when spot.IsImage => "this is finer and may be lost",
            SpotJudgement.Finer => "this is finer and may fill in",
            SpotJudgement.OnTheEdge => "this is within a pixel of that",
            _ => "this is wide enough",
        };
        return $"{where}{holder} holds {part} from {length(verdict.HeldUm)}: {end}.";
    }
}
