using System.Diagnostics;
using System.Globalization;
using System.Net;
using System.Net.Sockets;

namespace Silkwright.Records.Tests.Store;

/// <summary>A PostgreSQL server of our own: own folder, own port, this machine only; started by the first test that asks, stopped after the last.</summary>
internal static class PostgresServer
{
    private const string Installed = "/usr/lib/postgresql";

    private static readonly Lazy<Running> Server = new(Start);

    private static int databases;

    /// <summary>Names a database that does not exist yet.</summary>
    public static string NewConnectionString() => string.Create(
        CultureInfo.InvariantCulture,
        $"Host=127.0.0.1;Port={Server.Value.Port};Username=silkwright;Database=silkwright_{Interlocked.Increment(ref databases)};Timeout=30");

    public static void Stop()
    {
        if (!Server.IsValueCreated)
            return;
        _ = Run("pg_ctl", "stop", "-s", "-w", "-m", "immediate", "-D", Server.Value.Folder);
        _ = Run("rm", "-rf", Server.Value.Folder);
    }

    private static Running Start()
    {
        // It refuses to run as root, so root hands it to Debian's own user.
        var folder = Run("mktemp", "-d", "-t", "silkwright-pg-XXXXXXXX").Trim();
        _ = Run("initdb", "--no-sync", "-U", "silkwright", "-A", "trust", "-E", "UTF8", "-D", folder);
        var port = FreePort();
        _ = Run(
            "pg_ctl", "start", "-s", "-w", "-D", folder, "-l", Path.Combine(folder, "log"),
            "-o", string.Create(CultureInfo.InvariantCulture, $"-p {port} -c listen_addresses=127.0.0.1 -c unix_socket_directories={folder} -c fsync=off"));
        return new Running(folder, port);
    }

    private static string Run(string program, params string[] arguments)
    {
        var path = program is "mktemp" or "rm" ? program : Path.Combine(Binaries(), program);
        var asRoot = Environment.UserName == "root";
        var start = new ProcessStartInfo(asRoot ? "runuser" : path)
        {
            WorkingDirectory = "/",
            // The started server would keep a pipe open, and nobody would ever read its end.
            RedirectStandardOutput = program is not "pg_ctl",
        };
        string[] all = asRoot ? ["-u", "postgres", "--", path, .. arguments] : arguments;
        foreach (var argument in all)
            start.ArgumentList.Add(argument);
        using var process = Process.Start(start)!;
        var output = start.RedirectStandardOutput ? process.StandardOutput.ReadToEnd() : "";
        process.WaitForExit();
        return process.ExitCode == 0 ? output : throw new InvalidOperationException($"{program} ended with {process.ExitCode}. {output}");
    }

    private static string Binaries()
    {
        var found = Directory.Exists(Installed)
            ? Directory.GetDirectories(Installed)
                .Select(version => Path.Combine(version, "bin"))
                .Where(bin => File.Exists(Path.Combine(bin, "initdb")))
                .MaxBy(bin => bin, StringComparer.Ordinal)
            : null;
        return found ?? throw new InvalidOperationException(
            $"PostgreSQL is not installed under {Installed}. Run ./test, which installs it, or: apt-get install postgresql.");
    }

    private static int FreePort()
    {
        using var listener = new TcpListener(IPAddress.Loopback, 0);
        listener.Start();
        return ((IPEndPoint)listener.LocalEndpoint).Port;
    }

    private sealed record Running(string Folder, int Port);
}
