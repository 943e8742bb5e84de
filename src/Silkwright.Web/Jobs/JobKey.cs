using System.Globalization;
using System.Text;
using Silkwright.Records.Jobs;

namespace Silkwright.Web.Jobs;

/// <summary>Short names for jobs, made from what they are called.</summary>
public static class JobKey
{
    private const int Longest = 40;

    /// <summary>"Harbour choir, front" to "harbour-choir-front".</summary>
    public static string Of(string name)
    {
        var key = new StringBuilder();
        foreach (var c in name.Normalize(NormalizationForm.FormD).ToLowerInvariant())
        {
            if (char.IsAsciiLetterOrDigit(c))
                key.Append(c);
            else if (CharUnicodeInfo.GetUnicodeCategory(c) != UnicodeCategory.NonSpacingMark && key.Length > 0 && key[^1] != '-')
                key.Append('-');
        }

        var text = key.ToString()[..Math.Min(key.Length, Longest)].Trim('-');
        return text.Length == 0 ? "job" : text;
    }

    /// <summary>The same, with a number where another job has it already.</summary>
    public static async Task<string> FreeAsync(JobRecords jobs, string name, CancellationToken cancel)
    {
        var key = Of(name);
        for (var number = 2; await jobs.CurrentAsync(key, cancel) is not null; number++)
            key = $"{Of(name)}-{number}";
        return key;
    }
}
