using System.CommandLine;
using System.Text;
using Silkwright.Contracts;
using Silkwright.Estimates;
using Silkwright.Web.Pictures;

namespace Silkwright.Cli.Commands.Coat;

/// <summary>The pages' pictures of what readings taught, as a file: <c>coat predict --picture</c>.</summary>
internal static class CoatPictures
{
    /// <summary>Groups drawn: those that stand out most.</summary>
    private const int MostGroups = 24;

    public static Option<string?> Option() => new("--picture") { Description = "draw what the readings taught into this file (optional; .svg)", HelpName = "coats.svg" };

    /// <summary>An answer, drawn where a picture is asked for.</summary>
    /// <exception cref="InputProblemException">The picture is of another kind, or can't be written.</exception>
    public static async Task<CoatAnswer> DrawnAsync(string? path, Func<Task<CoatAnswer>> ask, CancellationToken cancel)
    {
        if (path is not null && OutputFile.PictureKind(path) != "svg")
            throw new InputProblemException(new Problem("This picture is drawn as .svg alone.", "--picture", "Name a file that ends in .svg."));
        var answer = await ask();
        if (path is not null)
            await OutputFile.WriteAsync(path, Encoding.UTF8.GetBytes(await SvgAsync(answer)), cancel);
        return answer;
    }

    private static Task<string> SvgAsync(CoatAnswer answer) => StandalonePicture.SvgAsync(
    [
        ("Each reading, and what the others say of it", typeof(HeldReadings), new Dictionary<string, object?>
        {
            [nameof(HeldReadings.Readings)] = answer.Held.Select(held => (held.Row.EomUm!.Value, held.Expected)).ToArray(),
        }),
        ("What each group lays more or less than its like, µm", typeof(CoatGroups), new Dictionary<string, object?>
        {
            [nameof(CoatGroups.Effects)] = answer.Effects.OrderByDescending(effect => Math.Abs(effect.EomUm) / effect.StandardErrorUm).Take(MostGroups).ToArray(),
        }),
    ]);
}
