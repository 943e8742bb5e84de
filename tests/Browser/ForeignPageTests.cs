using System.Net.Http.Json;
using System.Text;
using System.Text.Json.Nodes;
using Microsoft.Playwright;

namespace Silkwright.Browser.Tests;

/// <summary>A page from elsewhere, open in the browser that also knows this program: what it has the browser send is refused, and what a page here sends is not.</summary>
public sealed class ForeignPageTests(RunningProgram program) : IClassFixture<RunningProgram>
{
    private static readonly CancellationToken Cancel = TestContext.Current.CancellationToken;

    [Fact]
    public async Task A_page_from_elsewhere_takes_nothing_back_and_a_page_here_does()
    {
        using var script = new HttpClient { BaseAddress = new Uri(program.Address) };
        using var reading = new StringContent("screen,operator,emulsion,eom (um)\nS-1,Ines,Wren 47,12.5\n", Encoding.UTF8, "text/csv");
        _ = (await script.PostAsync("/api/gauge/readings?by=Ines", reading, Cancel)).EnsureSuccessStatusCode();
        var address = $"{program.Address}/api/gauge/readings/{(int)(await EntryAsync(script))["number"]!}/withdraw?by=Mallory&why=forged";

        var page = await program.VisitAsync();
        await page.RouteAsync("http://elsewhere.localhost/", route => route.FulfillAsync(new() { ContentType = "text/html", Body = $"<form method=post action=\"{address}\"><button>Win</button></form>" }));
        _ = await page.GotoAsync("http://elsewhere.localhost/");
        var answer = await page.RunAndWaitForResponseAsync(() => page.GetByRole(AriaRole.Button).ClickAsync(), response => response.Url == address);
        Assert.Equal(403, answer.Status);
        Assert.Null((await EntryAsync(script))["withdrawnBecause"]);

        _ = await page.GotoAsync("/gauge");
        Assert.Equal(200, await page.EvaluateAsync<int>("async address => (await fetch(address, { method: 'POST' })).status", address));
        Assert.Equal("forged", (string?)(await EntryAsync(script))["withdrawnBecause"]);
    }

    private static async Task<JsonNode> EntryAsync(HttpClient script) =>
        (await script.GetFromJsonAsync<JsonNode>("/api/gauge/readings", Cancel))!["entries"]!.AsArray().Single()!;
}
