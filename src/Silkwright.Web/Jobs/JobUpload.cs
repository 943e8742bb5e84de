using Silkwright.Contracts;
using Silkwright.Estimates;
using Silkwright.Records.Films;
using Silkwright.Records.Jobs;
using Silkwright.Web.Measuring;

namespace Silkwright.Web.Jobs;

/// <summary>Takes in a job with its films: all of it or nothing of it.</summary>
public sealed class JobUpload(JobRecords jobs, FilmDoor door, FilmBench bench, TimeProvider time)
{
    /// <summary>The films of a form, unnamed and empty ones left out.</summary>
    public static IReadOnlyList<IFormFile> FilmsOf(IFormCollection form) => [.. form.Files.Where(f => f.FileName.Length > 0)];

    /// <summary>A film's name within its job, made different where two have the same.</summary>
    public static IReadOnlyList<string> NamesOf(IReadOnlyList<IFormFile> uploads, IReadOnlyCollection<string> taken)
    {
        var names = new List<string>();
        foreach (var upload in uploads)
        {
            var name = FilmDoor.NameOf(upload);
            for (var n = 2; names.Contains(name) || taken.Contains(name); n++)
                name = $"{Path.GetFileNameWithoutExtension(FilmDoor.NameOf(upload))} ({n}){Path.GetExtension(FilmDoor.NameOf(upload))}";
            names.Add(name);
        }

        return names;
    }

    /// <summary>Saves a job after all its new films were looked over and kept.</summary>
    /// <param name="jobId">The job; none: a new one is named after the document.</param>
    /// <param name="document">The job, naming the new films too.</param>
    /// <param name="uploads">The new films.</param>
    /// <param name="names">What the document calls each.</param>
    /// <param name="by">The person.</param>
    /// <param name="basedOn">The revision the person had before them.</param>
    /// <param name="fields">What the files of the new films cannot say.</param>
    /// <param name="cancel">Stops the work.</param>
    /// <returns>The job's id.</returns>
    /// <exception cref="InputProblemException">A film or the job is wrong.</exception>
    public async Task<string> SaveAsync(
        string? jobId,
        JobDocument document,
        IReadOnlyList<IFormFile> uploads,
        IReadOnlyList<string> names,
        string by,
        int? basedOn,
        FilmFields fields,
        CancellationToken cancel)
    {
        var problems = new ProblemList();
        if (string.IsNullOrWhiteSpace(by))
            problems.Add("Nobody is named.", "your name", "Give your name, as the shop calls you.");
        var (pdf, other) = fields.Read(problems);
        problems.ThrowIfAny();
        var kept = new List<FilmKey>();
        foreach (var upload in uploads)
        {
            try
            {
                var options = await FilmFields.IsPdfAsync(upload, cancel) ? pdf : other;
                var film = await door.ReceiveAsync(upload, options, by, cancel);
                kept.Add(new FilmKey(film.Hash, options.Page, options.Dpi));
            }
            catch (InputProblemException fault)
            {
                problems.AddRange(fault.Problems);
            }
        }

        problems.ThrowIfAny();
        var text = JobWriter.Write(document);
        var id = jobId ?? await JobKey.FreeAsync(jobs, document.Name, text, time.GetUtcNow(), cancel);
        _ = await jobs.SaveAsync(id, text, by, jobId is null ? "new job" : "edited", basedOn: basedOn, cancel: cancel);
        foreach (var (film, name) in kept.Zip(names))
        {
            await jobs.AttachFilmAsync(id, name, film, by, cancel);
            _ = bench.Ask(film);
        }

        return id;
    }
}
