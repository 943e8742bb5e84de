namespace Silkwright.Moire;

/// <summary>The halftone laid on the mesh, to scale: what passes light where dots and openings meet.</summary>
/// <param name="WidthPx">[px]</param>
/// <param name="HeightPx">[px]</param>
/// <param name="MmPerPx">[mm]</param>
/// <param name="Grey">Row by row from the top left; 255 where nothing prints, 0 where all does.</param>
public sealed record MoirePicture(int WidthPx, int HeightPx, double MmPerPx, byte[] Grey)
{
    /// <summary>Periods of the plainest beat across the picture.</summary>
    private const double Periods = 10;

    private const double NarrowestMm = 20;

    /// <summary>Wider, a picture of this many pixels no longer shows the dots. [mm]</summary>
    private const double WidestMm = 80;

    /// <summary>Points looked at in a pixel, each way: dots and threads are finer than pixels, and no pixel may beat with them.</summary>
    private const int Points = 6;

    /// <summary>Tone drawn where none is named: the middle one, where most is to be seen. [%]</summary>
    private const double MiddleTonePercent = 40;

    public double WidthMm => WidthPx * MmPerPx;

    /// <summary>How wide a case is drawn. [mm]</summary>
    public static double WidthFor(MoireCase asked)
    {
        var plainest = Beats.Of(asked).FirstOrDefault(pattern => pattern is { Ruling: not null, Thread: not null });
        return Math.Clamp(Periods * (plainest?.Vector.PeriodMm ?? 0), NarrowestMm, WidestMm);
    }

    /// <summary>Draws a case from its geometry, point by point; wide enough for ten periods of its plainest beat.</summary>
    /// <param name="asked">Halftone and mesh; the knit is not drawn.</param>
    /// <param name="widthPx">[px], 1 or more.</param>
    /// <param name="heightPx">[px], 1 or more.</param>
    public static MoirePicture Of(MoireCase asked, int widthPx, int heightPx)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(widthPx);
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(heightPx);
        var widthMm = WidthFor(asked);
        var step = widthMm / widthPx / Points;
        var grey = new byte[widthPx * heightPx];
        var drawing = new Drawing(asked);
        Parallel.For(0, heightPx, row =>
        {
            for (var column = 0; column < widthPx; column++)
            {
                var printed = 0;
                for (var point = 0; point < Points * Points; point++)
                {
                    var x = ((column * Points) + (point % Points) + 0.5) * step;
                    var y = -((row * Points) + (point / Points) + 0.5) * step;
                    printed += drawing.Prints(x, y) ? 1 : 0;
                }

                grey[(row * widthPx) + column] = (byte)(255 - (255 * printed / (Points * Points)));
            }
        });
        return new MoirePicture(widthPx, heightPx, widthMm / widthPx, grey);
    }

    /// <summary>Whether a place prints. Lengths in mm, y upwards.</summary>
    private readonly struct Drawing
    {
        private readonly double dotX, dotY, meshX, meshY, radius, openHalf;
        private readonly bool holes;

        public Drawing(MoireCase asked)
        {
            var tone = asked.TonePercent ?? MiddleTonePercent;
            holes = tone > 50;
            radius = Math.Sqrt((holes ? 100 - tone : tone) / 100 / Math.PI);
            openHalf = (1 - (asked.Mesh.CountPerCm * asked.Mesh.ThreadUm / 10_000)) / 2;
            var dots = GratingVector.Of(asked.RulingPerCm, asked.AngleDegrees);
            var threads = GratingVector.Of(asked.Mesh.CountPerCm, asked.MeshAngleDegrees);
            (dotX, dotY, meshX, meshY) = (dots.XPerCm / 10, dots.YPerCm / 10, threads.XPerCm / 10, threads.YPerCm / 10);
        }

        public bool Prints(double x, double y)
        {
            var across = Part((x * meshX) + (y * meshY));
            var along = Part((y * meshX) - (x * meshY));
            if (Math.Abs(across) > openHalf || Math.Abs(along) > openHalf)
                return false;
            var u = Part((x * dotX) + (y * dotY));
            var v = Part((y * dotX) - (x * dotY));
            return (u * u) + (v * v) < radius * radius != holes;
        }

        /// <summary>How far from the nearest middle of a period. [periods], −0.5 to 0.5</summary>
        private static double Part(double periods) => periods - Math.Round(periods);
    }
}
