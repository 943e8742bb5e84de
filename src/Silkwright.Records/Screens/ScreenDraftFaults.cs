using System.Text.RegularExpressions;
using Silkwright.Estimates;
using Silkwright.Records.Store;

namespace Silkwright.Records.Screens;

/// <summary>What may be wrong with a screen to be put on record.</summary>
internal static partial class ScreenDraftFaults
{
    public static void ThrowIfAny(ScreenDraft draft)
    {
        var problems = new ProblemList();
        if (draft.Id is not null && !IdShape().IsMatch(draft.Id))
            problems.Add($"\"{draft.Id}\" is no id for a screen.", "id", "Use letters, digits and hyphens, at most 32, such as S-0042.");
        if (string.IsNullOrWhiteSpace(draft.Frame) || draft.Frame.Length > DocumentFaults.LongestText)
            problems.Add("The frame is not named.", "frame", "Give the label on the frame.");
        if (!(draft.Mesh.CountPerCm > 0 && draft.Mesh.ThreadUm > 0 && draft.Mesh.CountPerCm * draft.Mesh.ThreadUm < UmPerCm))
            problems.Add($"A mesh {draft.Mesh.Name} cannot be woven.", "mesh", "Give threads per cm and thread in µm, such as 120/34.");
        if (draft.Mesh.TensionNPerCm is { } tension)
            FactFaults.AddTo(problems, "tension", new MeshTensioned(tension));
        DocumentFaults.Person(problems, "person", draft.Person);
        problems.ThrowIfAny();
    }

    // Threads side by side without any opening.
    private const double UmPerCm = 10_000;

    [GeneratedRegex("^[A-Za-z0-9][A-Za-z0-9-]{0,31}\\z")]
    private static partial Regex IdShape();
}
