using System.Net;

namespace Silkwright.Web.Tests.Pages;

public sealed class CoatTests(RunningWeb web) : IClassFixture<RunningWeb>
{
    private static readonly CancellationToken Cancel = TestContext.Current.CancellationToken;

    [Fact]
    public async Task Before_anything_is_asked_there_is_a_form_and_no_fault()
    {
        var page = await web.Browser.GetStringAsync("/coat", Cancel);

        Assert.Contains("name=\"wanted\"", page, StringComparison.Ordinal);
        Assert.DoesNotContain("class=\"problems\"", page, StringComparison.Ordinal);
    }

    [Fact]
    public async Task The_answer_comes_first_with_its_reasons_and_the_section_to_scale()
    {
        var form = WebUtility.HtmlDecode(await web.Browser.GetStringAsync("/coat", Cancel));
        var from = form.IndexOf("<option value=\"", form.IndexOf("name=\"emulsion\"", StringComparison.Ordinal), StringComparison.Ordinal) + 15;
        var emulsion = form[from..form.IndexOf('"', from)];
        var page = WebUtility.HtmlDecode(await web.Browser.GetStringAsync($"/coat?wanted=14um&emulsion={Uri.EscapeDataString(emulsion)}&mesh=0", Cancel));

        Assert.Contains("lands in", page, StringComparison.Ordinal);
        Assert.Contains("cross-section", page, StringComparison.Ordinal);
        Assert.True(page.IndexOf("id=\"answer\"", StringComparison.Ordinal) < page.IndexOf("name=\"wanted\"", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("/coat?wanted=14&emulsion=x&mesh=0")]
    [InlineData("/coat?wanted=14um&emulsion=nobody's&mesh=99")]
    public async Task What_cannot_be_is_told_on_the_page(string address)
    {
        var answer = await web.Browser.GetAsync(address, Cancel);

        Assert.Equal(HttpStatusCode.BadRequest, answer.StatusCode);
        Assert.Contains("problems", await answer.Content.ReadAsStringAsync(Cancel), StringComparison.Ordinal);
    }
}
