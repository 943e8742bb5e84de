using System.Net;

namespace Silkwright.Web.Tests.Pages;

/// <summary>Cured depth by dose on its page.</summary>
public sealed class CurvePageTests(RunningWeb web) : IClassFixture<RunningWeb>
{
    private static readonly CancellationToken Cancel = TestContext.Current.CancellationToken;

    /// <summary>Seven pairs, the fifth misread: rlm of MASS in R, as in RobustLinearModelTests, gives 52.73 µm and 9.93 mJ/cm².</summary>
    [Fact]
    public async Task Measured_depths_are_drawn_with_the_line_through_them_and_the_misread_one_beside_it()
    {
        var page = WebUtility.HtmlDecode(await web.Browser.GetStringAsync($"/expose/curve?table={Uri.EscapeDataString("15,22.1\n25,48.9\n40,72.4\n65,98.8\n100,151.6\n160,146.9\n250,170.2")}", Cancel));
        Assert.Contains("Light falls by e over 52.7 µm; 9.9 mJ/cm² just cure", page, StringComparison.Ordinal);
        Assert.Equal(6, page.Split("class=\"dot\"").Length - 1);
        Assert.Equal(1, page.Split("class=\"out\"").Length - 1);
        Assert.Contains("Row 5 lies off the line", page, StringComparison.Ordinal);
    }

    /// <summary>8·exp(57/70) = 18.06 mJ/cm², by hand.</summary>
    [Fact]
    public async Task A_coats_own_figures_are_drawn_with_the_depth_asked_about()
    {
        var page = WebUtility.HtmlDecode(await web.Browser.GetStringAsync("/expose/curve?penetration-depth=70&critical-dose=8&depth=57", Cancel));
        Assert.Contains("18.1 mJ/cm² cure 57 µm", page, StringComparison.Ordinal);
        Assert.Contains("class=\"asked\"", page, StringComparison.Ordinal);
        Assert.Contains("reciprocity", page, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("table=15,22", "three pairs")]
    [InlineData("table=a", "doseMjPerCm2")]
    [InlineData("penetration-depth=70", "critical-dose")]
    [InlineData("penetration-depth=70&critical-dose=8&bleaching=140", "bleaching")]
    public async Task Faults_are_told(string typed, string told)
    {
        var answer = await web.Browser.GetAsync($"/expose/curve?{typed}", Cancel);
        Assert.Equal(HttpStatusCode.BadRequest, answer.StatusCode);
        Assert.Contains(told, await answer.Content.ReadAsStringAsync(Cancel), StringComparison.Ordinal);
    }
}
