using Silkwright.Cli.Printing;
using Silkwright.Mesh;
using Spectre.Console;

namespace Silkwright.Cli.Commands.Mesh;

/// <summary>A mesh for people.</summary>
internal static class MeshTable
{
    /// <summary>Characters that one pitch is drawn with.</summary>
    private const int PitchCharacters = 24;

    public static void Print(WovenMesh mesh, IAnsiConsole console)
    {
        var fabric = mesh.Fabric;
        console.WriteLine(
            $"Mesh {fabric.Name}: {ShownUnit.PerCm.WriteBoth(fabric.CountPerCm)}, thread {ShownUnit.Micrometres.WriteBoth(fabric.ThreadUm)}");
        console.WriteLine();
        console.WriteLine($"  {Picture(mesh)}  thread and opening to scale");
        new Sheet()
            .Exact("Pitch", mesh.PitchUm, ShownUnit.Micrometres)
            .Exact("Opening", mesh.OpeningUm, ShownUnit.Micrometres)
            .Exact("Open area", mesh.OpenAreaPercent, ShownUnit.Percent)
            .Add("Fabric thickness", mesh.FabricThicknessUm, ShownUnit.Micrometres)
            .Add("Theoretical ink volume", mesh.InkVolumeCm3PerM2, ShownUnit.CubicCmPerM2)
            .Add("Space the emulsion fills", mesh.VoidUm, ShownUnit.Micrometres)
            .Add("Smallest line", mesh.SmallestLineUm, ShownUnit.Micrometres)
            .Add("Smallest dot", mesh.SmallestDotUm, ShownUnit.Micrometres)
            .Print(console);
        Notes.Print(mesh.Notes, console);
    }

    private static string Picture(WovenMesh mesh)
    {
        var thread = Math.Clamp((int)Math.Round(PitchCharacters * mesh.Fabric.ThreadUm / mesh.PitchUm), 1, PitchCharacters - 1);
        var pitch = new string('█', thread) + new string('·', PitchCharacters - thread);
        return pitch + pitch + new string('█', thread);
    }
}
