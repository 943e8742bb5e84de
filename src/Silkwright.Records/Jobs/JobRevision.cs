namespace Silkwright.Records.Jobs;

/// <summary>JOB.json as it stood from one moment on. Never changed: a change, closing included, is the next revision.</summary>
public sealed record JobRevision
{
    /// <summary>Short name in lower case, such as "lantern-walk".</summary>
    public required string JobId { get; init; }

    /// <summary>Counts from 1.</summary>
    public required int Revision { get; init; }

    public required string ShopKey { get; init; }

    /// <summary>The job's name, from the document.</summary>
    public required string Name { get; init; }

    /// <summary>The document, as <see cref="Contracts.JobReader"/> reads it.</summary>
    public required string Text { get; init; }

    /// <summary>From the document.</summary>
    public DateOnly? DueDate { get; init; }

    public required JobState State { get; init; }

    public required DateTimeOffset SavedAt { get; init; }

    /// <summary>The person, as they are called.</summary>
    public required string SavedBy { get; init; }

    public required string Why { get; init; }
}
