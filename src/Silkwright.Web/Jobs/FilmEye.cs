using Silkwright.Artwork;
using Silkwright.Contracts;
using Silkwright.Estimates;
using Silkwright.Records.Films;
using Silkwright.Web.Look;
using Silkwright.Web.Measuring;

namespace Silkwright.Web.Jobs;

/// <summary>Looks at a spot of a job's film for its page.</summary>
public sealed class FilmEye(FilmShelf shelf)
{
    /// <summary>At a place the measuring has told.</summary>
    public Task<FilmLook> AtAsync(FilmKey film, FilmPlace place, IReadOnlyList<HalftoneZone> zones, CancellationToken cancel) =>
        LookAsync(film, new FilmLook("", "", null, []), (place.XMm, place.YMm), zones, cancel);

    /// <summary>At a typed spot; none where neither field is filled in.</summary>
    /// <param name="film">The film.</param>
    /// <param name="x">From the left: a length, or a bare number in the unit the form names.</param>
    /// <param name="y">From the top, likewise.</param>
    /// <param name="zones">The film's halftones.</param>
    /// <param name="read">Which unit the form names.</param>
    /// <param name="cancel">Stops the work.</param>
    public async Task<FilmLook> AtAsync(FilmKey film, string? x, string? y, IReadOnlyList<HalftoneZone> zones, UnitSystem read, CancellationToken cancel)
    {
        var typed = new FilmLook(x?.Trim() ?? "", y?.Trim() ?? "", null, []);
        if (typed.X.Length == 0 && typed.Y.Length == 0)
            return FilmLook.None;
        var problems = new ProblemList();
        var (left, top) = (Read(typed.X, "from the left"), Read(typed.Y, "from the top"));
        return left is { } xMm && top is { } yMm
            ? await LookAsync(film, typed, (xMm, yMm), zones, cancel)
            : typed with { Problems = problems.Problems };

        double? Read(string text, string where) =>
            QuantityText.Read(text.Length > 0 && char.IsAsciiDigit(text[^1]) ? text + Units.SizeUnit(read) : text, QuantityKind.Length, where, problems);
    }

    private async Task<FilmLook> LookAsync(FilmKey film, FilmLook typed, (double XMm, double YMm) at, IReadOnlyList<HalftoneZone> zones, CancellationToken cancel)
    {
        if (await shelf.OfAsync(film, cancel) is not { } tiles)
            return FilmLook.None;
        try
        {
            return typed with { Spot = await Task.Run(() => tiles.At(at.XMm, at.YMm, zones, cancel), cancel) };
        }
        catch (InputProblemException fault)
        {
            return typed with { Problems = fault.Problems };
        }
    }
}
