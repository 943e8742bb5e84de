using Silkwright.Contracts;
using Silkwright.Estimates;
using Silkwright.Film.Measuring;
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
    /// <param name="pdf">How the PDFs among the new films are looked at.</param>
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
        PdfFields pdf,
        CancellationToken cancel)
    {
        var problems = new ProblemList();
        if (string.IsNullOrWhiteSpace(by))
            problems.Add("Nobody is named.", "your name", "Give your name, as the shop calls you.");
        var options = pdf.Read(problems);
        problems.ThrowIfAny();
        var kept = new List<FilmKey>();
        foreach (var upload in uploads)
        {
            try
            {
                var isPdf = await PdfFields.IsPdfAsync(upload, cancel);
                var film = await door.ReceiveAsync(upload, isPdf ? options : new FilmOptions(), by, cancel);
                kept.Add(isPdf ? new FilmKey(film.Hash, options.Page, options.Dpi) : new FilmKey(film.Hash));
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
