using System.Numerics;
using MathNet.Numerics.IntegralTransforms;
using Silkwright.Mesh;
using Silkwright.Moire;

namespace Silkwright.Tests.Moire;

/// <summary>
/// A halftone and a mesh drawn over each other point by point, and the drawing's two-dimensional Fourier transform: what is found there owes
/// nothing to overtones worked out on paper. The window is von Hann's, whose main lobe is two lines wide either way.
/// </summary>
public class DrawnAndTransformedTests
{
    private const int Side = 1024;
    private const int Points = 4;
    private const double FieldMm = 16;

    [Theory]
    [InlineData(61, 64, 45, 22.5, 30)]
    [InlineData(61, 64, 45, 15, 20)]
    [InlineData(43, 80, 45, 22.5, 45)]
    [InlineData(77, 55, 55, 5, 35)]
    [InlineData(90, 48, 65, 12, 70)]
    public void The_strongest_beat_of_the_drawing_is_the_one_told_as_long_and_as_strong(
        double count, double thread, double lpi, double degrees, double tone)
    {
        var asked = new MoireCase { Mesh = new MeshFabric(count, thread), RulingPerCm = lpi / 2.54, AngleDegrees = degrees, TonePercent = tone };
        var told = Beats.Of(asked);
        // Beats coarser than the dots and shorter than a quarter of the field, where the drawing can tell them apart.
        var strongest = told.Where(p => p.Vector.PerCm < asked.RulingPerCm * 0.8 && p.Vector.PeriodMm < FieldMm / 4).MaxBy(p => p.Contrast)!;

        var (peakX, peakY, amplitude) = StrongestPeak(Transform(Draw(asked)), 40 / FieldMm, asked.RulingPerCm * 0.8);
        var found = new GratingVector(peakX, peakY);
        var nearest = told.Where(p => p.Contrast > 0.95 * strongest.Contrast).Min(p => Math.Min(Apart(p.Vector, found), Apart(-1 * p.Vector, found)));
        var line = 10 / FieldMm;
        Assert.True(nearest < 0.2 * line, $"found {found.PeriodMm} mm at {found.AngleDegrees}, told {strongest.Vector.PeriodMm} mm at {strongest.Vector.AngleDegrees}");

        // Contrast is told against a middle tone and for the mean that passes; the drawing has the bare product.
        var open = 1 - (count * thread / 10_000);
        Assert.Equal(strongest.Contrast, amplitude / (open * open) / 0.5, 0.08 * strongest.Contrast);
    }

    private static double Apart(GratingVector one, GratingVector other) => (one - other).PerCm;

    /// <summary>Share of each little square that prints.</summary>
    private static double[,] Draw(MoireCase asked)
    {
        var drawn = new double[Side, Side];
        var step = FieldMm / Side / Points;
        var radius = Math.Sqrt(Math.Min(asked.TonePercent!.Value, 100 - asked.TonePercent.Value) / 100 / Math.PI) * 10 / asked.RulingPerCm;
        var (pitch, period) = (10 / asked.Mesh.CountPerCm, 10 / asked.RulingPerCm);
        var (sin, cos) = Math.SinCos(asked.AngleDegrees * Math.PI / 180);
        Parallel.For(0, Side, row =>
        {
            for (var column = 0; column < Side; column++)
            {
                for (var point = 0; point < Points * Points; point++)
                {
                    var x = ((column * Points) + (point % Points) + 0.5) * step;
                    var y = ((row * Points) + (point / Points) + 0.5) * step;
                    var onThread = FromMiddle(x, pitch) > (pitch - (asked.Mesh.ThreadUm / 1000)) / 2 || FromMiddle(y, pitch) > (pitch - (asked.Mesh.ThreadUm / 1000)) / 2;
                    var inRound = double.Hypot(FromMiddle((x * cos) + (y * sin), period), FromMiddle((y * cos) - (x * sin), period)) < radius;
                    if (!onThread && inRound == asked.TonePercent <= 50)
                        drawn[row, column] += 1.0 / (Points * Points);
                }
            }
        });
        return drawn;

        static double FromMiddle(double at, double period) => Math.Abs(at - (Math.Floor(at / period) * period) - (period / 2));
    }

    private static Complex[,] Transform(double[,] drawn)
    {
        var result = new Complex[Side, Side];
        var hann = Enumerable.Range(0, Side).Select(i => 0.5 - (0.5 * Math.Cos(2 * Math.PI * i / Side))).ToArray();
        Parallel.For(0, Side, row =>
        {
            var line = Enumerable.Range(0, Side).Select(column => new Complex(drawn[row, column] * hann[row] * hann[column], 0)).ToArray();
            Fourier.Forward(line, FourierOptions.NoScaling);
            for (var column = 0; column < Side; column++)
                result[row, column] = line[column];
        });
        Parallel.For(0, Side, column =>
        {
            var line = Enumerable.Range(0, Side).Select(row => result[row, column]).ToArray();
            Fourier.Forward(line, FourierOptions.NoScaling);
            for (var row = 0; row < Side; row++)
                result[row, column] = line[row];
        });
        return result;
    }

    /// <summary>
    /// The strongest line between two frequencies, in cycles a centimetre with y up as drawn, and its swing. Between lines by the centre of the
    /// main lobe; the swing by the lobe's energy, of which von Hann's window keeps (3/8)² of a wave's (Harris 1978, from memory).
    /// </summary>
    private static (double X, double Y, double Amplitude) StrongestPeak(Complex[,] transform, double fromPerCm, double toPerCm)
    {
        var line = 10 / FieldMm;
        var (bestU, bestV, best) = (0, 0, 0.0);
        for (var v = -Side / 4; v < Side / 4; v++)
        {
            for (var u = 0; u < Side / 4; u++)
            {
                if (double.Hypot(u, v) * line is var perCm && (perCm < fromPerCm || perCm > toPerCm))
                    continue;
                if (At(u, v).Magnitude > best)
                    (bestU, bestV, best) = (u, v, At(u, v).Magnitude);
            }
        }

        var (energy, sumU, sumV) = (0.0, 0.0, 0.0);
        for (var dv = -2; dv <= 2; dv++)
        {
            for (var du = -2; du <= 2; du++)
            {
                var power = Math.Pow(At(bestU + du, bestV + dv).Magnitude, 2);
                energy += power;
                sumU += power * (bestU + du);
                sumV += power * (bestV + dv);
            }
        }

        var kept = Math.Pow(3.0 / 8, 2) * Math.Pow(Side, 4);
        return (sumU / energy * line, sumV / energy * line, 2 * Math.Sqrt(energy / kept));

        Complex At(int u, int v) => transform[(v + Side) % Side, (u + Side) % Side];
    }
}
