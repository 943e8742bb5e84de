using Silkwright.Estimates;

namespace Silkwright.Emulsion;

/// <summary>How an emulsion stands up to one ink, as somebody graded it.</summary>
/// <param name="Grade">The grade.</param>
/// <param name="Ground">Where it comes from.</param>
public sealed record GivenResistance(ResistanceGrade Grade, Ground Ground);
