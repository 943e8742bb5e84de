using System.Text;
using Silkwright.Estimates;

namespace Silkwright.Contracts;

/// <summary>Text out of the bytes of a file or of a request: UTF-8, or UTF-16 where its byte order mark says so.</summary>
public static class SentText
{
    // RFC 2781, section 3.2: FE FF before big-endian text, FF FE before little-endian.
    private static readonly byte[] BigEndian = [0xFE, 0xFF];
    private static readonly byte[] LittleEndian = [0xFF, 0xFE];

    /// <summary>The text, without its byte order mark.</summary>
    /// <param name="bytes">As they came.</param>
    /// <param name="where">The file's name, or the part of the request.</param>
    /// <exception cref="InputProblemException">They are no text in UTF-8.</exception>
    public static string Of(ReadOnlySpan<byte> bytes, string where)
    {
        Encoding encoding = bytes.StartsWith(LittleEndian) ? new UnicodeEncoding(bigEndian: false, byteOrderMark: true, throwOnInvalidBytes: true)
            : bytes.StartsWith(BigEndian) ? new UnicodeEncoding(bigEndian: true, byteOrderMark: true, throwOnInvalidBytes: true)
            : new UTF8Encoding(encoderShouldEmitUTF8Identifier: true, throwOnInvalidBytes: true);
        // The bytes of a plain letter in UTF-16 are also two characters of UTF-8, one of them the zero that no text holds.
        if (encoding is UTF8Encoding && bytes.Contains((byte)0))
            throw new InputProblemException(new Problem("This is not text in UTF-8: it looks like UTF-16 without its mark, or is no text at all.", where, "Save it as UTF-8, or check that this is the right file."));
        try
        {
            return encoding.GetString(bytes.StartsWith(encoding.Preamble) ? bytes[encoding.Preamble.Length..] : bytes);
        }
        catch (DecoderFallbackException)
        {
            throw new InputProblemException(new Problem("This is not text in UTF-8.", where, "Save it as UTF-8, or check that this is the right file."));
        }
    }
}
