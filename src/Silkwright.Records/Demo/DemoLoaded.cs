namespace Silkwright.Records.Demo;

/// <summary>What the demonstration brought.</summary>
/// <param name="Jobs">Jobs in the store from it.</param>
/// <param name="Screens">Screens in the store from it.</param>
/// <param name="FilmsMissing">Films that jobs name and that have not been drawn yet; load again once they are.</param>
public sealed record DemoLoaded(int Jobs, int Screens, IReadOnlyList<string> FilmsMissing);
