namespace Silkwright.Estimates;

/// <summary>Something assumed, left out or worth knowing, that belongs beside the numbers.</summary>
/// <param name="Text">One plain sentence.</param>
/// <param name="Ground">Where an assumed value comes from; none where the note assumes nothing.</param>
public sealed record Note(string Text, Ground? Ground = null);
