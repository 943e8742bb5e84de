namespace Silkwright.Plans;

/// <summary>Makes the stencil plan of a job.</summary>
public static class Planner
{
    public static StencilPlan Plan(Job job, Shop shop) =>
        throw new NotImplementedException();
}
