using System.CommandLine;
using Microsoft.Extensions.Hosting;
using Silkwright.Estimates;
using Silkwright.Records.Demo;
using Silkwright.Records.Store;
using Silkwright.Web;

namespace Silkwright.Cli.Commands.Serve;

/// <summary><c>silkwright serve</c>: the web program.</summary>
internal static class ServeCommand
{
    private const string UsualUrls = "http://127.0.0.1:5080";

    public static Command Create(Surroundings surroundings)
    {
        var verb = new Verb("serve", "Starts the web program: jobs, plans, screens, in a browser.")
        {
            Examples =
            [
                ("silkwright serve --demo", $"with the demonstration shop, at {UsualUrls}"),
                ("silkwright serve --data /srv/shop --urls http://0.0.0.0:8080", "your own shop, for every machine on the network"),
            ],
            GoodToKnow = "There are no accounts yet: who reaches the address may read and write. Keep it on a network you trust.",
        };
        var urls = new Option<string>("--urls") { Description = "addresses to listen at, separated by semicolons; port 0 takes a free one", HelpName = "ADDRESSES", DefaultValueFactory = _ => UsualUrls };
        var data = new Option<string>("--data") { Description = "the folder the shop keeps its records in; made where it is missing", HelpName = "FOLDER", DefaultValueFactory = _ => "data" };
        var demo = new Option<bool>("--demo") { Description = "draws the demonstration's films and puts its invented shop into an empty data folder" };
        verb.Add(urls);
        verb.Add(data);
        verb.Add(demo);
        verb.SetAction(async (parse, cancel) =>
        {
            var options = new WebOptions { Urls = parse.GetRequiredValue(urls), DataFolder = parse.GetRequiredValue(data), Time = surroundings.Time };
            if (parse.GetValue(demo))
                options = await WithDemoAsync(options, surroundings, cancel);
            await ServeAsync(options, surroundings, cancel);
            return ExitCode.Done;
        });
        return verb;
    }

    private static async Task<WebOptions> WithDemoAsync(WebOptions options, Surroundings surroundings, CancellationToken cancel)
    {
        var demo = DemoFolder.Find(null);
        await demo.DrawMissingFilmsAsync(surroundings, cancel);
        return options with { FillEmptyStore = (store, stop) => DemoShop.LoadAsync(store, demo.Path, stop) };
    }

    private static async Task ServeAsync(WebOptions options, Surroundings surroundings, CancellationToken cancel)
    {
        var begun = !DataFolder.HoldsRecords(options.DataFolder);
        await using var app = await SilkwrightWeb.BuildAsync(options, cancel);
        try
        {
            await app.StartAsync(cancel);
        }
        catch (Exception failure) when (failure is IOException or FormatException or InvalidOperationException or ArgumentException)
        {
            throw new InputProblemException(new Problem($"The web program can't listen there: {failure.Message}", $"--urls {options.Urls}", "Choose another address or port, for example --urls http://127.0.0.1:5081."));
        }

        if (begun)
            await RecordsFolder.TellBegunAsync(options.DataFolder, surroundings);
        await surroundings.Output.WriteLineAsync($"Silkwright is at {string.Join(" and ", app.Urls)}, with its records in {Path.GetFullPath(options.DataFolder)}. Stop it with Ctrl-C.");
        await surroundings.Output.FlushAsync(cancel);
        await app.WaitForShutdownAsync(cancel);
    }
}
