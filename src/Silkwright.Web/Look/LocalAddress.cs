namespace Silkwright.Web.Look;

/// <summary>Where a form leads back to: a page of this program and nowhere else.</summary>
internal static class LocalAddress
{
    /// <summary>The address if it is a path here, else the fallback.</summary>
    public static string Or(string address, string fallback) =>
        address.StartsWith('/')
        && !address.StartsWith("//", StringComparison.Ordinal)
        && !address.StartsWith("/\\", StringComparison.Ordinal)
        && !address.Any(char.IsControl)
            ? address
            : fallback;
}
