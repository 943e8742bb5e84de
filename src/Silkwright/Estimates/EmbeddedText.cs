using System.Reflection;
using System.Text;

namespace Silkwright.Estimates;

/// <summary>Tables that are part of the program: read whole, from no file.</summary>
internal static class EmbeddedText
{
    /// <param name="name">Of the resource.</param>
    /// <exception cref="InvalidOperationException">The program was built without it.</exception>
    public static string Read(string name)
    {
        using var stream = Assembly.GetExecutingAssembly().GetManifestResourceStream(name) ?? throw new InvalidOperationException($"{name} is missing from the program.");
        var bytes = new byte[stream.Length];
        stream.ReadExactly(bytes);
        return Encoding.UTF8.GetString(bytes);
    }
}
