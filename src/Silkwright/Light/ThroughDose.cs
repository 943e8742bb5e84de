namespace Silkwright.Light;

/// <summary>Dose in the coat on the squeegee side under clear film. [1]</summary>
/// <param name="Average">Over the weave.</param>
/// <param name="InOpenings">Where no thread lies between it and the film.</param>
/// <param name="BehindThreads">Where one or two do; without a mesh as everywhere.</param>
/// <param name="Worst">In the field of the weave that gets least, a twelfth of a pitch wide. The least of several is read a little low by chance.</param>
public sealed record ThroughDose(Sampled Average, Sampled InOpenings, Sampled BehindThreads, Sampled Worst);
