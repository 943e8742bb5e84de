using Silkwright.Plans;

namespace Silkwright.Contracts;

/// <summary>The plan as other programs read it: silkwright/plan/1.</summary>
public static class PlanDocument
{
    public static System.Text.Json.Nodes.JsonObject Of(StencilPlan plan) =>
        throw new NotImplementedException();
}
