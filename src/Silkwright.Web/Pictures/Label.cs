using Microsoft.AspNetCore.Components.Rendering;

namespace Silkwright.Web.Pictures;

/// <summary>A text in a picture. (Razor keeps the bare element's name for itself.)</summary>
public sealed class Label : ComponentBase
{
    [Parameter, EditorRequired]
    public double X { get; set; }

    [Parameter, EditorRequired]
    public double Y { get; set; }

    [Parameter, EditorRequired]
    public string Text { get; set; } = string.Empty;

    /// <summary>start, middle or end.</summary>
    [Parameter]
    public string Anchor { get; set; } = "start";

    [Parameter]
    public string? Class { get; set; }

    protected override void BuildRenderTree(RenderTreeBuilder builder)
    {
        builder.OpenElement(0, "text");
        builder.AddAttribute(1, "x", Svg.Px(X));
        builder.AddAttribute(2, "y", Svg.Px(Y));
        if (Anchor != "start")
            builder.AddAttribute(3, "text-anchor", Anchor);
        if (Class is not null)
            builder.AddAttribute(4, "class", Class);
        builder.AddContent(5, Text);
        builder.CloseElement();
    }
}
