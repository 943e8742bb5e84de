using Silkwright.Mesh;

namespace Silkwright.Contracts;

/// <summary>What <c>mesh</c> asks for.</summary>
public static class MeshQuestion
{
    private const double UmPerCm = 10_000;

    public static readonly QuantityField Count = new("count", QuantityKind.PerLength, "threads per length, the same both ways")
    {
        Required = true,
        Least = InputLimits.LeastCountPerCm,
        Most = InputLimits.MostCountPerCm,
    };

    public static readonly QuantityField Thread = new("thread", QuantityKind.Thickness, "thread diameter")
    {
        Required = true,
        Least = InputLimits.LeastThreadUm,
        Most = InputLimits.MostThreadUm,
    };

    public static readonly QuantityField FabricThickness = new(
        "fabric-thickness", QuantityKind.Thickness, "measured thickness of the fabric; estimated from the weave when not given")
    {
        Sample = "100um",
        Least = InputLimits.LeastFabricUm,
        Most = InputLimits.MostFabricUm,
    };

    public static IReadOnlyList<QuestionField> Fields => [Count, Thread, FabricThickness];

    /// <exception cref="Estimates.InputProblemException">Something typed is wrong or missing; carries every fault.</exception>
    public static WovenMesh Answer(GivenTexts given)
    {
        var fabric = Read(given, Count);
        given.ThrowIfAny();
        return WovenMesh.Of(fabric);
    }

    /// <summary>The mesh of a question that may ask for more; faults stay in <paramref name="given"/>.</summary>
    /// <param name="given">What was typed.</param>
    /// <param name="countField">The count under the name that the question has for it.</param>
    public static MeshFabric Read(GivenTexts given, QuantityField countField)
    {
        var count = given.ReadRequired(countField);
        var thread = given.ReadRequired(Thread);
        if (count * thread >= UmPerCm)
        {
            given.Problems.Add(
                "At this count the threads would overlap: no opening is left.", given.Where(Thread),
                "Check the count and the diameter: the threads of a centimetre must leave some of its 10,000 um open.");
        }

        var thickness = given.Read(FabricThickness);
        if (thickness < thread)
        {
            given.Problems.Add(
                "The fabric would be thinner than its thread.", given.Where(FabricThickness),
                "Measure the fabric's thickness again, or leave it out: it is then estimated from the thread.");
        }

        return new MeshFabric(count, thread) { FabricThicknessUm = thickness };
    }
}
