using System.Collections.Frozen;
using System.Security.Cryptography;

namespace Silkwright.Web.Look;

/// <summary>A file of the look: style, type, script. They ride inside the assembly, so that they are there however the program is started.</summary>
/// <param name="Name">Its file name.</param>
/// <param name="ContentType">As HTTP names it.</param>
/// <param name="Bytes">Its content.</param>
/// <param name="Version">Changes with its content.</param>
public sealed record Asset(string Name, string ContentType, ReadOnlyMemory<byte> Bytes, string Version)
{
    private const string Prefix = "wwwroot/";

    public static FrozenDictionary<string, Asset> All { get; } = Load().ToFrozenDictionary(a => a.Name, StringComparer.Ordinal);

    /// <summary>Address of a file, new whenever its content is.</summary>
    public static string Url(string name) => $"/look/{name}?v={All[name].Version}";

    private static IEnumerable<Asset> Load()
    {
        var assembly = typeof(Asset).Assembly;
        foreach (var resource in assembly.GetManifestResourceNames().Where(n => n.StartsWith(Prefix, StringComparison.Ordinal)))
        {
            using var stream = assembly.GetManifestResourceStream(resource)!;
            var bytes = new byte[stream.Length];
            stream.ReadExactly(bytes);
            yield return new Asset(resource[Prefix.Length..], TypeOf(resource), bytes, Convert.ToHexStringLower(SHA256.HashData(bytes))[..12]);
        }
    }

    private static string TypeOf(string name) => Path.GetExtension(name) switch
    {
        ".css" => "text/css; charset=utf-8",
        ".js" => "text/javascript; charset=utf-8",
        ".woff2" => "font/woff2",
        ".svg" => "image/svg+xml",
        _ => "text/plain; charset=utf-8",
    };
}
