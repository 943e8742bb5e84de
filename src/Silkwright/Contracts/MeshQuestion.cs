using Silkwright.Mesh;

namespace Silkwright.Contracts;

/// <summary>What <c>mesh</c> asks for.</summary>
public static class MeshQuestion
{
    /// <summary>Coarser than 5/cm and finer than 250/cm no screen fabric is woven (common practice, no source).</summary>
    public static readonly QuantityField Count = new("count", QuantityKind.PerLength, "threads per length, the same both ways")
    {
        Required = true,
        Least = 5,
        Most = 250,
    };

    public static readonly QuantityField Thread = new("thread", QuantityKind.Thickness, "thread diameter")
    {
        Required = true,
        Above = 0,
        Most = 1000,
    };

    public static readonly QuantityField FabricThickness = new(
        "fabric-thickness", QuantityKind.Thickness, "measured thickness of the fabric; estimated from the weave when not given")
    {
        Above = 0,
        Most = 2000,
    };

    public static IReadOnlyList<QuestionField> Fields => [Count, Thread, FabricThickness];

    /// <exception cref="Estimates.InputProblemException">Something typed is wrong or missing; carries every fault.</exception>
    public static MeshFabric Read(GivenTexts given)
    {
        var fabric = ReadPart(given);
        given.ThrowIfAny();
        return fabric;
    }

    /// <summary>As <see cref="Read"/> for a question that asks for more than the mesh: the faults stay in <paramref name="given"/>.</summary>
    internal static MeshFabric ReadPart(GivenTexts given)
    {
        var count = given.ReadRequired(Count);
        var thread = given.ReadRequired(Thread);
        if (count * thread >= 10_000)
        {
            given.Problems.Add(
                "At this count the threads would overlap: no opening is left.", given.Where(Thread),
                "Check the count and the diameter: 10,000 um shared by the threads of a centimetre must leave room for openings.");
        }

        return new MeshFabric(count, thread) { FabricThicknessUm = given.Read(FabricThickness) };
    }
}
