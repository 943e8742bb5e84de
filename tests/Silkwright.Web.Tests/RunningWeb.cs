using System.Net;
using System.Text.RegularExpressions;
using Microsoft.AspNetCore.Builder;
using Microsoft.Extensions.DependencyInjection;
using Silkwright.Records.Store;

namespace Silkwright.Web.Tests;

/// <summary>The real program on a free port over a fresh folder.</summary>
public sealed partial class RunningWeb : IAsyncLifetime
{
    private readonly string folder = Path.Combine(Path.GetTempPath(), $"silkwright-web-{Guid.NewGuid():N}");
    private WebApplication app = null!;

    public HttpClient Browser { get; private set; } = null!;

    public SilkwrightStore Store => app.Services.GetRequiredService<SilkwrightStore>();

    public string FilmsFolder => Path.Combine(folder, "films");

    public async ValueTask InitializeAsync()
    {
        app = await SilkwrightWeb.BuildAsync(new WebOptions { Urls = "http://127.0.0.1:0", DataFolder = folder });
        await app.StartAsync();
        Browser = new HttpClient(new HttpClientHandler { CookieContainer = new CookieContainer(), AllowAutoRedirect = true })
        {
            BaseAddress = new Uri(app.Urls.Single()),
        };
    }

    /// <summary>The fields of a page's form that its server needs back.</summary>
    public async Task<Dictionary<string, string>> HiddenFieldsAsync(string page, string formName) =>
        HiddenFieldsOf(await Browser.GetStringAsync(page), formName);

    /// <summary>The same of a page that was shown already.</summary>
    public static Dictionary<string, string> HiddenFieldsOf(string html, string formName)
    {
        var form = Forms().Matches(html).Select(m => m.Value).First(f => f.Contains($"value=\"{formName}\"", StringComparison.Ordinal));
        return Hidden().Matches(form)
            .Select(m => m.Value)
            .ToDictionary(i => Name().Match(i).Groups[1].Value, i => WebUtility.HtmlDecode(Value().Match(i).Groups[1].Value));
    }

    public async ValueTask DisposeAsync()
    {
        Browser.Dispose();
        await app.DisposeAsync();
        Microsoft.Data.Sqlite.SqliteConnection.ClearAllPools();
        Directory.Delete(folder, recursive: true);
    }

    [GeneratedRegex("<form.*?</form>", RegexOptions.Singleline)]
    private static partial Regex Forms();

    [GeneratedRegex("<input[^>]*type=\"hidden\"[^>]*>")]
    private static partial Regex Hidden();

    [GeneratedRegex(" name=\"([^\"]*)\"")]
    private static partial Regex Name();

    [GeneratedRegex(" value=\"([^\"]*)\"")]
    private static partial Regex Value();
}
