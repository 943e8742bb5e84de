using System.Buffers.Binary;
using Silkwright.Film.Readers;
using SkiaSharp;

namespace Silkwright.Film.TestFilms;

/// <summary>Paints strips of a film: shapes as bytes for the strip alone, then packed.</summary>
internal sealed class StripPainter : IDisposable
{
    private readonly FilmRecipe recipe;
    private readonly double pxPerMm;
    private readonly (FilmShape Shape, SKPath Path, SKRect Bounds)[] shapes;
    private SKBitmap? ink;
    private SKBitmap? mask;

    public StripPainter(FilmRecipe recipe)
    {
        this.recipe = recipe;
        pxPerMm = recipe.Dpi / 25.4;
        shapes = [.. recipe.Shapes.Select(s => Prepared(s))];
    }

    /// <summary>Paints rows <paramref name="top"/> onwards into a bitmap whose row 0 is the first of them.</summary>
    public void Paint(int top, int rows, PackedBitmap strip)
    {
        var canvasSize = (recipe.WidthPx, strip.Height);
        ink ??= new SKBitmap(canvasSize.WidthPx, canvasSize.Height, SKColorType.Gray8, SKAlphaType.Opaque);
        using var canvas = new SKCanvas(ink);
        canvas.Clear(SKColors.Black);
        canvas.Translate(0, -top);
        using var paint = new SKPaint();
        paint.IsAntialias = false;
        foreach (var (shape, path, bounds) in shapes)
        {
            if (bounds.Bottom < top || bounds.Top > top + rows)
                continue;
            paint.Color = shape.Clear ? SKColors.Black : SKColors.White;
            if (shape.Halftone is { } halftone)
                Screen(shape, halftone, path, bounds, top, rows);
            else
                canvas.DrawPath(path, paint);
        }

        for (var y = 0; y < rows; y++)
            Pack(ink.GetPixelSpan().Slice(y * ink.RowBytes, recipe.WidthPx), strip.Row(y), strip.LastMask);
    }

    public void Dispose()
    {
        ink?.Dispose();
        mask?.Dispose();
        foreach (var (_, path, _) in shapes)
            path.Dispose();
    }

    private static void Pack(ReadOnlySpan<byte> bytes, Span<ulong> row, ulong lastMask)
    {
        for (var x = 0; x + 8 <= bytes.Length; x += 8)
        {
            var high = (BinaryPrimitives.ReadUInt64LittleEndian(bytes[x..]) >> 7) & 0x0101010101010101;
            row[x >> 6] |= (high * 0x8040201008040201) >> 56 << (56 - (x & 63));
        }

        for (var x = bytes.Length & ~7; x < bytes.Length; x++)
            row[x >> 6] |= (ulong)(bytes[x] >> 7) << (63 - (x & 63));
        row[^1] &= lastMask;
    }

    private (FilmShape Shape, SKPath Path, SKRect Bounds) Prepared(FilmShape shape)
    {
        var path = ShapeOutline.InPixels(shape, pxPerMm);
        return (shape, path, path.Bounds);
    }

    private void Screen(FilmShape shape, HalftoneFill halftone, SKPath path, SKRect bounds, int top, int rows)
    {
        mask ??= new SKBitmap(ink!.Width, ink.Height, SKColorType.Gray8, SKAlphaType.Opaque);
        using (var canvas = new SKCanvas(mask))
        using (var paint = new SKPaint())
        {
            paint.IsAntialias = false;
            paint.Color = SKColors.White;
            canvas.Clear(SKColors.Black);
            canvas.Translate(0, -top);
            canvas.DrawPath(path, paint);
        }

        var left = Math.Clamp((int)Math.Floor(bounds.Left) - 1, 0, recipe.WidthPx);
        var right = Math.Clamp((int)Math.Ceiling(bounds.Right) + 1, left, recipe.WidthPx);
        var dots = new DotScreen(halftone, recipe.Dpi);
        for (var y = 0; y < rows; y++)
        {
            var inside = mask!.GetPixelSpan().Slice((y * mask.RowBytes) + left, right - left);
            if (inside.IndexOf((byte)255) < 0)
                continue;
            dots.Row(inside, ink!.GetPixelSpan().Slice((y * ink.RowBytes) + left, right - left), left, top + y, shape.Clear ? (byte)0 : (byte)255);
        }
    }
}
