namespace Silkwright.Light;

/// <summary>What is drawn on the film.</summary>
public enum FilmImageKind
{
    /// <summary>Black from x = 0 on, clear before it.</summary>
    Edge,

    /// <summary>A black line from x = 0 to its width, clear on both sides: what prints.</summary>
    Line,

    /// <summary>A clear gap from x = −width to 0 between black: what must hold as stencil.</summary>
    Gap,
}
