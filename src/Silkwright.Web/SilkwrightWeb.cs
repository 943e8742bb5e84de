using Microsoft.AspNetCore.DataProtection;
using Microsoft.AspNetCore.Http.Features;
using Silkwright.Records.Store;
using Silkwright.Web.Api;
using Silkwright.Web.Jobs;
using Silkwright.Web.Look;
using Silkwright.Web.Measuring;
using Silkwright.Web.Pictures;

namespace Silkwright.Web;

/// <summary>The web program: pages for people, documents for programs, over one store.</summary>
public static class SilkwrightWeb
{
    /// <summary>The largest upload taken. [bytes]; a 60 by 80 cm film at 1200 dpi is 135 MB even uncompressed</summary>
    public const long MostUploadBytes = 512L * 1024 * 1024;

    private const string FirstShop = """{ "name": "This shop" }""";

    /// <summary>Opens the store, brings it up to date and makes the program ready to run.</summary>
    /// <exception cref="Estimates.InputProblemException">The data folder cannot be used.</exception>
    public static async Task<WebApplication> BuildAsync(WebOptions options, CancellationToken cancel = default)
    {
        var folder = DataFolder.Open(options.DataFolder);
        var store = await SilkwrightStore.OpenAsync(folder, options.Time, cancel);
        if (await store.Shops.DefaultKeyAsync(cancel) is null)
        {
            if (options.FillEmptyStore is { } fill)
                await fill(store, cancel);
            else
                _ = await store.Shops.SaveAsync("shop", FirstShop, "Silkwright", "first start", cancel: cancel);
        }

        var builder = WebApplication.CreateBuilder(new WebApplicationOptions
        {
            ApplicationName = typeof(SilkwrightWeb).Assembly.GetName().Name,
            ContentRootPath = AppContext.BaseDirectory,
        });
        // The keys that guard forms lie in the shop's own folder, beside its records: nothing to warn of at every start.
        // Whoever starts the program tells of a failed start in one line; the host would add its stack of calls.
        _ = builder.Logging.SetMinimumLevel(LogLevel.Warning)
            .AddFilter("Microsoft.AspNetCore.DataProtection", LogLevel.Error)
            .AddFilter("Microsoft.Extensions.Hosting.Internal.Host", LogLevel.None);
        _ = builder.WebHost.UseUrls(options.Urls).ConfigureKestrel(kestrel =>
        {
            kestrel.AddServerHeader = false;
            kestrel.Limits.MaxRequestBodySize = MostUploadBytes;
        });
        AddServices(builder.Services, store);
        var app = builder.Build();
        KnownHosts.Use(app, options.Urls);
        Use(app);
        return app;
    }

    private static void AddServices(IServiceCollection services, SilkwrightStore store)
    {
        _ = services.AddSingleton(store.Time).AddSilkwrightRecords(store);
        _ = services.Configure<FormOptions>(form => form.MultipartBodyLengthLimit = MostUploadBytes);
        _ = services.AddDataProtection().SetApplicationName("Silkwright")
            .PersistKeysToFileSystem(Directory.CreateDirectory(Path.Combine(store.Folder.Path, "keys")));
        _ = services.AddAntiforgery(form => form.Cookie.Name = "form");
        _ = services.AddRazorComponents();
        _ = services.AddHttpContextAccessor().AddScoped<Viewer>();
        _ = services.AddSingleton<FilmBench>().AddHostedService(s => s.GetRequiredService<FilmBench>());
        _ = services.AddHostedService<TilesSweep>();
        _ = services.AddSingleton<FilmDoor>().AddSingleton<FilmShelf>().AddSingleton<FilmEye>().AddSingleton<JobDesk>().AddSingleton<JobUpload>();
        _ = services.AddOutputCache();
        _ = services.AddOpenApi();
    }

    private static void Use(WebApplication app)
    {
        _ = app.UseMiddleware<Faults>();
        _ = app.Use((context, next) =>
        {
            PageHeaders.Set(context.Response.Headers);
            return next(context);
        });
        _ = app.UseWhen(
            context => !context.Request.Path.StartsWithSegments("/api", StringComparison.Ordinal),
            pages => pages.UseStatusCodePagesWithReExecute("/not-found", createScopeForStatusCodePages: true));
        _ = app.UseWhen(
            context => context.Request.Path.StartsWithSegments("/api", StringComparison.Ordinal),
            api => api.UseStatusCodePages(context => ProblemDocument.WriteBareAsync(context.HttpContext)));
        _ = app.UseRouting();
        _ = app.UseOutputCache();
        _ = app.UseAntiforgery();
        LookEndpoints.Map(app);
        FilmPictures.Map(app);
        MoirePictures.Map(app);
        MeasuringEndpoints.Map(app);
        ApiEndpoints.Map(app);
        _ = app.MapOpenApi();
        _ = app.MapGet("/health/ready", async (SilkwrightStore records, CancellationToken cancel) =>
            await records.Shops.DefaultKeyAsync(cancel) is null ? Results.StatusCode(503) : Results.Text("ready")).ExcludeFromDescription();
        _ = app.MapRazorComponents<App>();
    }
}
