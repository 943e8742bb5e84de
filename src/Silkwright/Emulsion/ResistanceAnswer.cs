using Silkwright.Estimates;

namespace Silkwright.Emulsion;

/// <summary>How an emulsion stands up to an ink, and who says so.</summary>
public sealed record ResistanceAnswer(ResistanceGrade Grade, Ground Ground, string Reason);
