using System.Diagnostics;

namespace Silkwright.Browser.Tests;

/// <summary>The words on a printed sheet, by Debian's reader.</summary>
internal static class PdfText
{
    public static async Task<string> OfAsync(byte[] pdf, string folder)
    {
        var path = Path.Combine(folder, $"{Guid.NewGuid():N}.pdf");
        await File.WriteAllBytesAsync(path, pdf);
        try
        {
            using var reader = Process.Start(new ProcessStartInfo("pdftotext", ["-layout", path, "-"]) { RedirectStandardOutput = true })!;
            var text = await reader.StandardOutput.ReadToEndAsync();
            await reader.WaitForExitAsync();
            Assert.Equal(0, reader.ExitCode);
            return text;
        }
        catch (System.ComponentModel.Win32Exception)
        {
            throw new InvalidOperationException("This test needs pdftotext. Install it (on Debian: apt-get install poppler-utils; ./test does it for you), then run it again.");
        }
    }
}
