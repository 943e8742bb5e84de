namespace Silkwright.Coating.Learning;

/// <summary>What is the same in every shop: a constant of the balance, an emulsion's or a mesh's own share.</summary>
/// <param name="Group">constant, emulsion or mesh.</param>
/// <param name="Name">Which.</param>
public sealed record SharedEffect(string Group, string Name);
