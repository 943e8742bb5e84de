using Silkwright.Film.Measuring;
using Silkwright.Film.Measuring.Halftones;
using Silkwright.Film.Readers;
using Silkwright.Plans;

namespace Silkwright.Film.Pictures;

/// <summary>Where a film is narrower than is held, in what prints and in the gap: lines and gaps by opening, the dots and holes of halftones by their area.</summary>
internal sealed class HeatParts
{
    /// <summary>What is wider than held by less than this is near the edge of what prints. Our own judgement. [1]</summary>
    public const double NearFactor = 1.5;

    /// <summary>Dots, from the top down, after which memory is made small again.</summary>
    private const int DotsTogether = 16_384;

    private readonly double dpi;
    private readonly CancellationToken cancel;

    private HeatParts(FilmBitmap bits, double dpi, CancellationToken cancel) => (Film, this.dpi, this.cancel) = (bits, dpi, cancel);

    /// <summary>The film without its specks.</summary>
    public FilmBitmap Film { get; }

    /// <summary>Narrower image, or boxes about it: only what is image there counts.</summary>
    public required FilmBitmap Narrower { get; init; }

    /// <summary>The same and what is wider by less than half.</summary>
    public required FilmBitmap Near { get; init; }

    /// <summary>Narrower gap, or boxes about it: only what is gap there counts.</summary>
    public required FilmBitmap GapNarrower { get; init; }

    /// <summary>The same and what is wider by less than half.</summary>
    public required FilmBitmap GapNear { get; init; }

    public static HeatParts Of(IFilmSource film, HeldWidths held, ScratchFile scratch, CancellationToken cancel)
    {
        var bits = Blank();
        var (_, image, gap) = FilmComponents.Read(film, bits, null, cancel);
        var (_, mask) = HalftoneFinder.Find(bits, image, gap, film.Header.Dpi, cancel);
        var cells = new FilmCells(bits);
        var parts = new HeatParts(bits, film.Header.Dpi, cancel) { Narrower = Blank(), Near = Blank(), GapNarrower = Blank(), GapNear = Blank() };
        parts.Fill(new OpeningTiles(bits, cells, false, cancel), mask, image.Dots, held.LineUm, held.DotUm, parts.Narrower, parts.Near);
        parts.Fill(new OpeningTiles(bits, cells, true, cancel), mask, gap.Dots, held.GapUm, held.HoleUm, parts.GapNarrower, parts.GapNear);
        return parts;

        FilmBitmap Blank() => new(film.Header.WidthPx, film.Header.HeightPx, scratch);
    }

    private void Fill(OpeningTiles tiles, FilmBitmap? mask, DotShape[] dots, double lineUm, double dotUm, FilmBitmap narrower, FilmBitmap near)
    {
        tiles.Fill(Disc(lineUm), mask, narrower);
        narrower.Compact();
        tiles.Fill(Disc(lineUm * NearFactor), mask, near);
        near.Compact();
        foreach (var together in mask is null ? [] : dots.Chunk(DotsTogether))
        {
            cancel.ThrowIfCancellationRequested();
            foreach (var dot in together.Where(d => d.Diameter < Px(dotUm * NearFactor) && mask![(int)d.X, (int)d.Y]))
            {
                Frame(near, dot);
                if (dot.Diameter < Px(dotUm))
                    Frame(narrower, dot);
            }

            narrower.Compact();
            near.Compact();
        }
    }

    /// <summary>A dot's box; its centre of gravity is the box's middle to a pixel, which is why the box is a pixel larger all round.</summary>
    private static void Frame(FilmBitmap into, DotShape dot)
    {
        var (left, top) = ((int)(dot.X - (dot.Width / 2.0)) - 1, (int)(dot.Y - (dot.Height / 2.0)) - 1);
        into.Set(Math.Max(0, left), Math.Min(into.Width, left + dot.Width + 3), Math.Max(0, top), Math.Min(into.Height, top + dot.Height + 3));
    }

    private double Px(double um) => um * dpi / 25_400;

    private int Disc(double um) => Math.Clamp((int)Math.Ceiling(Px(um)), 2, DigitalDisc.MostDiameter);
}
