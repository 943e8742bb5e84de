using System.Text.Json.Serialization;

namespace Silkwright.Records.Screens;

/// <summary>What an entry says. One type a kind, so that an entry has its own fields and no others.</summary>
[JsonPolymorphic(TypeDiscriminatorPropertyName = "kind")]
[JsonDerivedType(typeof(MeshTensioned), "tensioned")]
[JsonDerivedType(typeof(ScreenDegreased), "degreased")]
[JsonDerivedType(typeof(ScreenCoated), "coated")]
[JsonDerivedType(typeof(DryingBegun), "dryIn")]
[JsonDerivedType(typeof(DryingEnded), "dryOut")]
[JsonDerivedType(typeof(ClimateRead), "climate")]
[JsonDerivedType(typeof(ScreenExposed), "exposed")]
[JsonDerivedType(typeof(ScreenChecked), "checked")]
[JsonDerivedType(typeof(JobAssigned), "jobAssigned")]
[JsonDerivedType(typeof(ScreenPrinted), "printed")]
[JsonDerivedType(typeof(ScreenEnded), "ended")]
[JsonDerivedType(typeof(EntryWithdrawn), "withdrawn")]
public abstract record ScreenFact
{
    /// <param name="kind">Its kind, which the type fixes.</param>
    protected ScreenFact(ScreenEventKind kind) => Kind = kind;

    [JsonIgnore]
    public ScreenEventKind Kind { get; }
}
