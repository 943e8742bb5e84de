namespace Silkwright.Web.Tests;

/// <summary>The smallest film: 8 by 8 px, 1 bit, 1200 dpi, all white (PNG specification, third edition, section 5).</summary>
internal static class SmallFilm
{
    public static byte[] Png { get; } = Convert.FromHexString(
        "89504E470D0A1A0A0000000D4948445200000008000000080100000000EC74832600000009704859730000B88C0000B88C01CCF6BB2F0000000C4944" +
        "415478DA63F8CF8002013FD007F9672D49A10000000049454E44AE426082");

    /// <summary>The same without its resolution: the chunk from its length at 33 to its checksum's end at 54 is left out.</summary>
    public static byte[] PngOfNoResolution { get; } = [.. Png[..33], .. Png[54..]];
}
