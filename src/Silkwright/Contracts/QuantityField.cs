using Silkwright.Estimates;

namespace Silkwright.Contracts;

/// <summary>A quantity that a question asks for, with the range in which it makes sense.</summary>
/// <param name="Name">Words joined by hyphens.</param>
/// <param name="Kind">What kind of quantity.</param>
/// <param name="Meaning">What it is, for people.</param>
public sealed record QuantityField(string Name, QuantityKind Kind, string Meaning) : QuestionField(Name, Meaning)
{
    /// <summary>Values must lie above this. [the unit kept]</summary>
    public double Above { get; init; } = double.NegativeInfinity;

    /// <summary>The least value. [the unit kept]</summary>
    public double Least { get; init; } = double.NegativeInfinity;

    /// <summary>The greatest value. [the unit kept]</summary>
    public double Most { get; init; } = double.PositiveInfinity;

    /// <summary>Why nothing beyond the range is taken, where that is not plain.</summary>
    public string? Because { get; init; }

    /// <summary>Only whole numbers make sense.</summary>
    public bool Whole { get; init; }

    /// <summary>A range, <c>60..85%</c>, is taken as well as one value.</summary>
    public bool TakesRange { get; init; }

    /// <summary>One right way to write it, where that of its kind would mislead.</summary>
    public string? Sample { get; init; }

    /// <summary>Its kind, told with the field's own example.</summary>
    internal QuantityKind KindAsAsked => Sample is { } sample ? Kind.WithExample(sample) : Kind;

    public override string Example => Sample ?? Kind.Example;

    public override string Taken =>
        (Kind.Units.Count == 0 ? "plain number" : $"units {Kind.UnitsTaken}") + (TakesRange ? "; or a range, a..b" : "");

    /// <summary>Whether a value lies in the range.</summary>
    public bool Allows(double value) =>
        value > Above && value >= Least && value <= Most && (!Whole || value == Math.Floor(value));

    /// <summary>The range in words, in the unit kept.</summary>
    public string Range
    {
        get
        {
            var parts = new List<string>();
            if (double.IsFinite(Above))
                parts.Add($"above {Written(Above)}");
            if (double.IsFinite(Least))
                parts.Add($"at least {Written(Least)}");
            if (double.IsFinite(Most))
                parts.Add($"at most {Written(Most)}");
            return (Whole ? "a whole number " : "") + string.Join(" and ", parts);
        }
    }

    private string Written(double value) => Figures.AsGiven(value) + Kind.KeptIn;
}
