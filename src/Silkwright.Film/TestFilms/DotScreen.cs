namespace Silkwright.Film.TestFilms;

/// <summary>Draws round halftone dots: every dot has the tone of its own centre.</summary>
internal sealed class DotScreen(HalftoneFill halftone, double dpi)
{
    private readonly double period = dpi / halftone.RulingLpi;
    private readonly double cos = Math.Cos(halftone.AngleDegrees * Math.PI / 180);
    private readonly double sin = Math.Sin(halftone.AngleDegrees * Math.PI / 180);

    /// <summary>Paints one row: <paramref name="inside"/> says where (255), <paramref name="value"/> what.</summary>
    public void Row(ReadOnlySpan<byte> inside, Span<byte> ink, int left, int y, byte value)
    {
        var (cellU, cellV) = (double.NaN, double.NaN);
        var radius2 = 0.0;
        for (var x = 0; x < inside.Length; x++)
        {
            if (inside[x] == 0)
                continue;
            var (px, py) = (left + x + 0.5, y + 0.5);

            // Counter-clockwise with y down: the first axis points to (cos, -sin).
            var (u, v) = (((px * cos) - (py * sin)) / period, ((px * sin) + (py * cos)) / period);
            var (ku, kv) = (Math.Floor(u) + 0.5, Math.Floor(v) + 0.5);
            if (ku != cellU || kv != cellV)
            {
                (cellU, cellV) = (ku, kv);
                var (cx, cy) = (((ku * cos) + (kv * sin)) * period, ((kv * cos) - (ku * sin)) * period);
                var r = RoundDot.Radius(halftone.Tone(cx * 25.4 / dpi, cy * 25.4 / dpi));
                radius2 = r * r;
            }

            var (du, dv) = (u - ku, v - kv);
            if ((du * du) + (dv * dv) < radius2)
                ink[x] = value;
        }
    }
}
