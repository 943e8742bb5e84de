using System.Text.Json.Nodes;

namespace Silkwright.Cli.Tests;

/// <summary>One run of the shell in this process: what it wrote where, and how it ended.</summary>
internal sealed record ShellRun(int ExitCode, string Output, string Error)
{
    /// <summary>The one JSON document on the output.</summary>
    public JsonObject Document => JsonNode.Parse(Output)!.AsObject();

    public static Task<ShellRun> Of(params string[] args) => Of(TimeProvider.System, args);

    public static async Task<ShellRun> Of(TimeProvider time, params string[] args)
    {
        var output = new StringWriter();
        var error = new StringWriter();
        var surroundings = new Surroundings { Output = output, Error = error, Time = time };
        var code = await Shell.RunAsync(args, surroundings, TestContext.Current.CancellationToken);
        return new ShellRun(code, output.ToString(), error.ToString());
    }
}
