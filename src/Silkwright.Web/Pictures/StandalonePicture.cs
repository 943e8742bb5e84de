using System.Globalization;
using System.Text.RegularExpressions;
using Microsoft.AspNetCore.Components.Web;
using Microsoft.Extensions.Logging.Abstractions;

namespace Silkwright.Web.Pictures;

/// <summary>The pages' pictures as files of their own, one below the other, in the ordinary theme's colours.</summary>
public static partial class StandalonePicture
{
    /// <summary>What the pages' style says of the parts that these pictures have.</summary>
    private const string Style =
        """
        svg { font: 13px "IBM Plex Sans", sans-serif; fill: #5c5345; overflow: visible; font-variant-numeric: tabular-nums; } .size { fill: #1d1a15; font-weight: 600; }
        .axis, .tick { stroke: #1d1a15; fill: none; } .level { stroke: #8a7f6c; fill: none; stroke-dasharray: 6 4; } .whisker { stroke: #8a7f6c; stroke-width: 1.4; fill: none; }
        .dot { fill: #1d1a15; } .out { fill: #9b1c26; } .raw { fill: #f4eee1; stroke: #1d1a15; stroke-width: 1.6; } .drawn { stroke: #a63d0b; stroke-width: 3; fill: none; }
        """;

    private const int WidthPx = 760, TitlePx = 40;

    /// <summary>One file of several pictures.</summary>
    /// <param name="pictures">A title, a component that draws one picture, and what it takes.</param>
    public static async Task<string> SvgAsync(IReadOnlyList<(string Title, Type Picture, IReadOnlyDictionary<string, object?> Takes)> pictures)
    {
        ArgumentNullException.ThrowIfNull(pictures);
        await using var services = new ServiceCollection().BuildServiceProvider();
        await using var renderer = new HtmlRenderer(services, NullLoggerFactory.Instance);
        var (parts, below) = (new List<string>(), 0.0);
        foreach (var (title, picture, takes) in pictures)
        {
            var drawn = await renderer.Dispatcher.InvokeAsync(async () =>
                (await renderer.RenderComponentAsync(picture, ParameterView.FromDictionary(new Dictionary<string, object?>(takes)))).ToHtmlString());
            var height = double.Parse(ViewBox().Match(drawn).Groups[1].Value, CultureInfo.InvariantCulture);
            parts.Add($"<text class=\"size\" x=\"8\" y=\"{Svg.Px(below + 24)}\" font-size=\"18\">{System.Net.WebUtility.HtmlEncode(title)}</text>");
            parts.Add(Open().Replace(drawn.Trim(), $"<svg x=\"0\" y=\"{Svg.Px(below + TitlePx)}\" width=\"{WidthPx}\" height=\"{Svg.Px(height)}\" ", 1));
            below += TitlePx + height + 20;
        }

        return $"<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 {WidthPx} {Svg.Px(below)}\" width=\"{WidthPx}\" height=\"{Svg.Px(below)}\"><style>{Style}</style><rect width=\"{WidthPx}\" height=\"{Svg.Px(below)}\" fill=\"#f4eee1\"/>\n{string.Join('\n', parts)}\n</svg>\n";
    }

    [GeneratedRegex("viewBox=\"0 0 [0-9.]+ ([0-9.]+)\"")]
    private static partial Regex ViewBox();

    [GeneratedRegex("^<svg ")]
    private static partial Regex Open();
}
