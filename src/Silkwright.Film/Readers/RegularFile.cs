using Silkwright.Estimates;

namespace Silkwright.Film.Readers;

/// <summary>Tells a file that holds something from what only has a file's name: a folder, a device, a pipe.</summary>
public static class RegularFile
{
    /// <summary>Looks at the path without opening it, since a pipe that nobody writes to would keep whoever opens it.</summary>
    /// <param name="path">As typed; a link is followed.</param>
    /// <param name="where">How the file is called in a fault.</param>
    /// <exception cref="InputProblemException">There is nothing to read there.</exception>
    public static void Require(string path, string where)
    {
        if (path.Length == 0)
            throw new InputProblemException(new Problem("A file without a name is asked for.", "the files", "Name one; where it comes out of a variable, that is empty."));
        try
        {
            if (Directory.Exists(path))
                throw new InputProblemException(new Problem("This is a folder.", where, "Name a file in it."));
            if (!File.Exists(path))
                throw new InputProblemException(new Problem("There is no such file.", where, "Check the name and the folder."));

            // Devices and pipes have no length; an empty file is no use either.
            var file = new FileInfo(path);
            if (file.ResolveLinkTarget(returnFinalTarget: true) is { } target)
                file = new FileInfo(target.FullName);
            if (!file.Exists)
                throw new InputProblemException(new Problem("This is a link to a file that is not there.", where, "Check where it leads, or name the file itself."));
            if (file.Length == 0)
            {
                throw new InputProblemException(new Problem(
                    "There is nothing in it: it is empty, or a device or a pipe.", where, "Save it as a file, then name that."));
            }
        }
        catch (Exception failure) when (failure is IOException or UnauthorizedAccessException or ArgumentException or NotSupportedException)
        {
            throw FilmProblems.Unreadable(where, failure);
        }
    }
}
