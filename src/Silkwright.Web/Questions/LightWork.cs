using Silkwright.Estimates;

namespace Silkwright.Web.Questions;

/// <summary>Photons followed for somebody who waits at a page: few, on one core, and not for ever.</summary>
internal static class LightWork
{
    /// <summary>In thick layers without absorption light wanders for ever.</summary>
    private static readonly TimeSpan Longest = TimeSpan.FromSeconds(20);

    /// <param name="photons">How many are asked for.</param>
    /// <param name="most">How many are followed here.</param>
    /// <param name="shell">The verb that follows more.</param>
    /// <param name="follow">Follows them.</param>
    /// <param name="time">The clock.</param>
    /// <param name="cancel">Stops the work.</param>
    /// <returns>The answer, and how long it took. [s]</returns>
    /// <exception cref="InputProblemException">It is too much.</exception>
    public static async Task<(T Answer, double Seconds)> RunAsync<T>(long photons, long most, string shell, Func<CancellationToken, T> follow, TimeProvider time, CancellationToken cancel)
    {
        if (photons > most)
            throw TooMuch($"Ask for {most} photons at most");
        using var late = new CancellationTokenSource(Longest, time);
        using var stop = CancellationTokenSource.CreateLinkedTokenSource(cancel, late.Token);
        var begun = time.GetTimestamp();
        try
        {
            var answer = await Task.Run(() => follow(stop.Token), stop.Token);
            return (answer, time.GetElapsedTime(begun).TotalSeconds);
        }
        catch (OperationCanceledException) when (late.IsCancellationRequested && !cancel.IsCancellationRequested)
        {
            throw TooMuch("Ask for fewer photons, or for a thinner layer");
        }

        InputProblemException TooMuch(string remedy) => new(new Problem("So much light keeps everybody else waiting.", "photons", $"{remedy}, or ask the shell: silkwright {shell}."));
    }
}
