using Silkwright.Statistics.Mixed;

namespace Silkwright.Tests.Statistics.Mixed;

/// <summary>Restricted maximum likelihood against R's lme4, whose figures are stored beside the script that printed them.</summary>
public sealed class MixedFitTests
{
    /// <summary>lme4's own search ends some 1e-5 from the best place.</summary>
    private const double Relative = 1e-4;

    public static TheoryData<string, bool, string> Cases => new()
    {
        { "balanced", false, "shop+x" },
        { "nested", false, "shop+x operator" },
        { "crossed", false, "shop operator emulsion" },
        { "weighted", true, "shop operator emulsion" },
        { "slopes", false, "x|shop x|operator x|emulsion" },
        { "singular", false, "shop operator emulsion" },
        { "few", false, "shop operator" },
    };

    [Theory]
    [MemberData(nameof(Cases))]
    public void Estimates_are_those_of_lme4(string name, bool weights, string terms)
    {
        var named = terms.Split(' ').Select(Term).ToArray();
        var fit = MixedFit.Of(ReferenceFits.Model(name, weights, named), TestContext.Current.CancellationToken);
        Near(name, "criterion", fit.Criterion);
        Near(name, "residual", fit.ResidualVariance);
        for (var i = 0; i < 2; i++)
        {
            Near(name, $"fixed{i + 1}", fit.Fixed[i]);
            Near(name, $"error{i + 1}", Math.Sqrt(fit.FixedCovariance(i, i)));
        }

        for (var t = 0; t < named.Length; t++)
        {
            var width = named[t].Height && named[t].Slope ? 2 : 1;
            for (var i = 0; i < width; i++)
            {
                for (var j = 0; j <= i; j++)
                    Near(name, $"{named[t].Name}{i + 1}{j + 1}", fit.Covariance(t, i, j));
                Near(name, $"{named[t].Name}-first{i + 1}", fit.Effects(t, 0)[i]);
            }
        }
    }

    /// <summary>"shop": a height a level; "shop+x": height and slope; "x|shop": a slope alone.</summary>
    private static (string Name, bool Height, bool Slope) Term(string term) =>
        term.StartsWith("x|", StringComparison.Ordinal) ? (term[2..], false, true)
        : term.EndsWith("+x", StringComparison.Ordinal) ? (term[..^2], true, true)
        : (term, true, false);

    private static void Near(string name, string what, double found)
    {
        var expected = ReferenceFits.Figure(name, what);
        Assert.True(Math.Abs(found - expected) <= Math.Max(Relative * Math.Abs(expected), 2e-6), $"{name} {what}: {found:g9}, lme4 {expected:g9}");
    }
}
