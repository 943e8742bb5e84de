using System.ComponentModel;
using System.Diagnostics;
using System.Globalization;
using System.Text;
using Silkwright.Estimates;

namespace Silkwright.Film.Readers;

/// <summary>Runs one of poppler's programs on a PDF, without a shell, within bounds of time and memory.</summary>
internal static class PdfProgram
{
    /// <summary>Most memory of the program where the system can bound it. [byte]</summary>
    private const long MostBytes = 1_000_000_000;

    /// <summary>What is kept of its complaints. [characters]</summary>
    private const int MostComplaint = 4096;

    /// <summary>Runs a program to its end and lets its output be read.</summary>
    /// <param name="program">Its name, such as <c>pdftoppm</c>.</param>
    /// <param name="arguments">Each one whole.</param>
    /// <param name="name">How the film is called in a fault.</param>
    /// <param name="most">Longer than this it may not take.</param>
    /// <param name="searchPath">Folders to look for it in.</param>
    /// <param name="take">Reads what it writes.</param>
    /// <param name="cancel">Ends the program.</param>
    /// <exception cref="InputProblemException">It is not installed, takes too long or cannot read the file.</exception>
    public static void Run(
        string program, IReadOnlyList<string> arguments, string name, TimeSpan most, string searchPath, Action<Stream> take, CancellationToken cancel)
    {
        var path = Find(program, searchPath) ?? throw FilmProblems.NoPdfProgram(name, program);
        using var late = CancellationTokenSource.CreateLinkedTokenSource(cancel);
        late.CancelAfter(most);
        using var process = Start(path, arguments, searchPath, most, name, program);
        var complaint = new StringBuilder();
        process.ErrorDataReceived += (_, line) => Keep(complaint, line.Data);
        process.BeginErrorReadLine();
        using (late.Token.Register(() => End(process)))
        {
            try
            {
                take(process.StandardOutput.BaseStream);
                process.WaitForExit();
            }
            catch (Exception failure) when (failure is EndOfStreamException or InvalidDataException or IOException)
            {
                End(process);
                process.WaitForExit();
                Judge(late, complaint, name, cancel);
                throw FilmProblems.Damaged(name, "its page cannot be drawn");
            }
            finally
            {
                End(process);
            }
        }

        Judge(late, complaint, name, cancel);
        if (process.ExitCode != 0 || Says(complaint, "Error"))
            throw FilmProblems.Damaged(name, "its page cannot be drawn");
    }

    /// <summary>The program's file in the first folder that has it; none where it is not installed.</summary>
    public static string? Find(string program, string searchPath)
    {
        var file = OperatingSystem.IsWindows() ? program + ".exe" : program;
        return searchPath.Split(Path.PathSeparator, StringSplitOptions.RemoveEmptyEntries)
            .Where(Path.IsPathFullyQualified)
            .Select(folder => Path.Combine(folder, file))
            .FirstOrDefault(File.Exists);
    }

    private static Process Start(string path, IReadOnlyList<string> arguments, string searchPath, TimeSpan most, string name, string program)
    {
        // Where the system has it, prlimit keeps a hostile file from taking all memory; it becomes the program itself.
        var bound = OperatingSystem.IsLinux() ? Find("prlimit", searchPath) : null;
        var start = new ProcessStartInfo(bound ?? path) { RedirectStandardOutput = true, RedirectStandardError = true, RedirectStandardInput = true };
        if (bound is not null)
        {
            start.ArgumentList.Add(string.Create(CultureInfo.InvariantCulture, $"--as={MostBytes}"));
            start.ArgumentList.Add(string.Create(CultureInfo.InvariantCulture, $"--cpu={Math.Ceiling(most.TotalSeconds)}"));
            start.ArgumentList.Add(path);
        }

        foreach (var argument in arguments)
            start.ArgumentList.Add(argument);
        try
        {
            var process = Process.Start(start) ?? throw FilmProblems.NoPdfProgram(name, program);
            process.StandardInput.Close();
            return process;
        }
        catch (Win32Exception)
        {
            throw FilmProblems.NoPdfProgram(name, program);
        }
    }

    private static void Judge(CancellationTokenSource late, StringBuilder complaint, string name, CancellationToken cancel)
    {
        cancel.ThrowIfCancellationRequested();
        if (late.IsCancellationRequested)
            throw FilmProblems.PdfTooSlow(name);
        if (Says(complaint, "Incorrect password"))
            throw FilmProblems.Unsupported(name, "a PDF locked with a password");
    }

    private static void Keep(StringBuilder complaint, string? line)
    {
        lock (complaint)
        {
            if (line is not null && complaint.Length < MostComplaint)
                _ = complaint.AppendLine(line[..Math.Min(line.Length, MostComplaint)]);
        }
    }

    private static bool Says(StringBuilder complaint, string what)
    {
        lock (complaint)
            return complaint.ToString().Contains(what, StringComparison.Ordinal);
    }

    private static void End(Process process)
    {
        try
        {
            if (!process.HasExited)
                process.Kill(entireProcessTree: true);
        }
        catch (Exception failure) when (failure is InvalidOperationException or Win32Exception)
        {
            // It has ended by itself in the meantime.
        }
    }
}
