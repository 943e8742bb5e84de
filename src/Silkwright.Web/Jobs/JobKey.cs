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

    /// <summary>The same, with a number where another job has it already; a job just saved with the very same text is no other.</summary>
    /// <param name="jobs">The jobs there are.</param>
    /// <param name="name">What the new one is called.</param>
    /// <param name="text">Its document.</param>
    /// <param name="now">The time.</param>
    /// <param name="cancel">Stops the work.</param>
    public static async Task<string> FreeAsync(JobRecords jobs, string name, string text, DateTimeOffset now, CancellationToken cancel)
    {
        var key = Of(name);
        for (var number = 2; await jobs.CurrentAsync(key, cancel) is { } other && !IsSecondPress(other, text, now); number++)
            key = $"{Of(name)}-{number}";
        return key;
    }

    /// <summary>A wet finger presses twice, and a slow net sends twice: within a minute the same text is the same job.</summary>
    private static bool IsSecondPress(JobRevision other, string text, DateTimeOffset now) =>
        other.Revision == 1 && other.Text == text && now - other.SavedAt < TimeSpan.FromMinutes(1);
}
