namespace Silkwright.Records.Screens;

/// <summary>The screen is for this colour of this job.</summary>
/// <param name="JobId">The job.</param>
/// <param name="Colour">The colour's name in the job.</param>
public sealed record JobAssigned(string JobId, string? Colour = null) : ScreenFact(ScreenEventKind.JobAssigned);
