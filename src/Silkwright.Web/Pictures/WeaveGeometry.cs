namespace Silkwright.Web.Pictures;

/// <summary>A plain weave from above, to scale.</summary>
public sealed record WeaveGeometry
{
    public required double PxPerUm { get; init; }

    public required double ThreadPx { get; init; }

    public required double PitchPx { get; init; }

    public required double WidthPx { get; init; }

    public required double HeightPx { get; init; }

    /// <summary>Centres of the threads that run down.</summary>
    public required IReadOnlyList<double> Down { get; init; }

    /// <summary>Centres of the threads that run across.</summary>
    public required IReadOnlyList<double> Across { get; init; }

    /// <summary>Where an across thread lies on top.</summary>
    public required IReadOnlyList<(double X, double Y)> Over { get; init; }

    public static WeaveGeometry Of(double pitchUm, double threadUm, double widthPx, double heightPx, double pitchesAcross)
    {
        var scale = widthPx / (pitchesAcross * pitchUm);
        var pitch = pitchUm * scale;
        var down = Centres(widthPx, pitch);
        var across = Centres(heightPx, pitch);
        return new WeaveGeometry
        {
            PxPerUm = scale,
            ThreadPx = threadUm * scale,
            PitchPx = pitch,
            WidthPx = widthPx,
            HeightPx = heightPx,
            Down = down,
            Across = across,
            Over = [.. across.SelectMany((y, j) => down.Select((x, i) => (X: x, Y: y, On: (i + j) % 2 == 0))).Where(c => c.On).Select(c => (c.X, c.Y))],
        };
    }

    private static double[] Centres(double length, double pitch)
    {
        var count = (int)Math.Ceiling(length / pitch) + 1;
        var first = (length / 2) - ((count - 1) / 2 * pitch) - (pitch / 2);
        return [.. Enumerable.Range(0, count + 1).Select(i => first + (i * pitch)).Where(c => c > -pitch && c < length + pitch)];
    }
}
