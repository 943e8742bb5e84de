using Silkwright.Coating.Learning;
using Silkwright.Estimates;

namespace Silkwright.Contracts;

/// <summary>What readings and others' experience teach together.</summary>
/// <param name="Experience">To be given on.</param>
/// <param name="Flags">Readings that read oddly.</param>
/// <param name="Notes">What is in it, and what is not.</param>
public sealed record CoatExperienceAnswer(CoatExperience Experience, IReadOnlyList<CoatFlag> Flags, IReadOnlyList<Note> Notes);
