using System.Net;
using System.Text;
using System.Text.Json.Nodes;

namespace Silkwright.Web.Tests.Api;

/// <summary>Who takes an entry back and why is taken from a JSON body as from the address, of gauge readings and of coat experience alike.</summary>
public sealed class WithdrawalTests(RunningWeb web) : IClassFixture<RunningWeb>
{
    private static readonly CancellationToken Cancel = TestContext.Current.CancellationToken;

    [Fact]
    public async Task Experience_is_taken_back_by_a_body()
    {
        var taken = await SendAsync("/api/coat/experience/kept?by=Ines&source=theirs", await File.ReadAllTextAsync(Demo("coat-experience.json"), Cancel));
        await FaultsAndThenBackAsync($"/api/coat/experience/kept/{taken.Document["entries"]!.AsArray()[^1]!["number"]}/withdraw");
    }

    [Fact]
    public async Task A_gauge_reading_is_taken_back_by_a_body()
    {
        _ = await SendAsync("/api/gauge/readings?by=Ines", "screen,operator,emulsion,eom (um)\nS-body,Ines,Wren 47,12.5\n", "text/csv");
        var kept = JsonNode.Parse(await web.Browser.GetStringAsync("/api/gauge/readings", Cancel))!;
        await FaultsAndThenBackAsync($"/api/gauge/readings/{kept["entries"]!.AsArray().Single(entry => (string?)entry!["screen"] == "S-body")!["number"]}/withdraw");
    }

    private async Task FaultsAndThenBackAsync(string address)
    {
        foreach (var (asked, body, type, where) in new[]
        {
            (address, """{"by": "Bram"}""", "application/json", "why"),
            (address, """{"why": "slip"}""", "application/json", "by"),
            (address, """{"by": "Bram", "reason": "slip"}""", "application/json", "body"),
            (address, """{"by": "Bram", "why": 5}""", "application/json", "why"),
            ($"{address}?by=Ines", """{"by": "Bram", "why": "slip"}""", "application/json", "by"),
            ($"{address}?by=Ines&because=slip", "", "application/json", "because"),
            (address, "by=Bram&why=slip", "application/x-www-form-urlencoded", "body"),
        })
        {
            var fault = await SendAsync(asked, body, type);
            Assert.Equal(HttpStatusCode.BadRequest, fault.Status);
            Assert.Equal(where, (string?)Assert.Single(fault.Document["problems"]!.AsArray())!["where"]);
        }

        var back = await SendAsync($"{address}?by=Bram", """{"why": "a body's own reason"}""");
        Assert.Equal(HttpStatusCode.OK, back.Status);
        Assert.Contains(back.Document["entries"]!.AsArray(), entry => (string?)entry!["withdrawnBecause"] == "a body's own reason");
    }

    private async Task<(HttpStatusCode Status, JsonNode Document)> SendAsync(string address, string body, string type = "application/json")
    {
        using var content = new StringContent(body, Encoding.UTF8, type);
        var answer = await web.Browser.PostAsync(address, content, Cancel);
        return (answer.StatusCode, JsonNode.Parse(await answer.Content.ReadAsStringAsync(Cancel))!);
    }

    private static string Demo(string name)
    {
        var root = AppContext.BaseDirectory;
        while (!File.Exists(Path.Combine(root, "Silkwright.slnx")))
            root = Path.GetDirectoryName(root)!;
        return Path.Combine(root, "demo", name);
    }
}
