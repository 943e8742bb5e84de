using Silkwright.Statistics;

namespace Silkwright.Tests.Published;

/// <summary>NIST/SEMATECH e-Handbook of Statistical Methods, 6.3.2.4, "EWMA control charts": λ 0.3, centre 50, s 2.0539; the averages as printed there.</summary>
public class NistEwmaTests
{
    private static readonly double[] Data =
        [52.0, 47.0, 53.0, 49.3, 50.1, 47.0, 51.0, 50.1, 51.2, 50.5, 49.6, 47.6, 49.9, 51.3, 47.8, 51.2, 52.6, 52.4, 53.6, 52.1];

    private static readonly double[] Printed =
        [50.60, 49.52, 50.56, 50.18, 50.16, 49.21, 49.75, 49.85, 50.26, 50.33, 50.11, 49.36, 49.52, 50.05, 49.38, 49.92, 50.73, 51.23, 51.94, 51.99];

    /// <summary>The handbook prints 0.4201 for √(0.3/1.7), hence 1e-3 on the limits; the 20th limits have settled to 4e-4.</summary>
    [Fact]
    public void The_handbooks_example_comes_out()
    {
        var chart = EwmaChart.Of(Data, 50, 2.0539, weight: 0.3, limit: 3);
        for (var i = 0; i < Data.Length; i++)
            Assert.Equal(Printed[i], chart[i].Average, 0.00501);
        Assert.Equal(52.5884, chart[^1].High, 1e-3);
        Assert.Equal(47.4115, chart[^1].Low, 1e-3);
        Assert.DoesNotContain(chart, point => point.IsOut);
    }

    /// <summary>Lucas and Saccucci, Technometrics 32 (1990) 1, λ 0.25 and L 2.998, as textbooks reprint them, from memory: runs of 500, 48.2, 11.1 and 3.6 for shifts of 0, 0.5, 1 and 2.</summary>
    [Theory]
    [InlineData(0, 500, 0.1)]
    [InlineData(0.5, 48.2, 0.1)]
    [InlineData(1, 11.1, 0.12)]
    [InlineData(2, 3.6, 0.3)]
    public void Runs_are_as_long_as_published(double shift, double published, double within)
    {
        const int Runs = 1500, Longest = 4000;
        var random = new Random(20261129);
        var length = 0.0;
        for (var run = 0; run < Runs; run++)
        {
            var values = Enumerable.Range(0, Longest).Select(_ => shift + (Math.Sqrt(-2 * Math.Log(1 - random.NextDouble())) * Math.Cos(2 * Math.PI * random.NextDouble()))).ToArray();
            var chart = EwmaChart.Of(values, 0, 1);
            length += 1 + chart.TakeWhile(point => !point.IsOut).Count();
        }

        Assert.InRange(length / Runs, published * (1 - within), published * (1 + within));
    }
}
