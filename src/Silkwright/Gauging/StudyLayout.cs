namespace Silkwright.Gauging;

/// <summary>Who read which part how often.</summary>
internal sealed class StudyLayout
{
    public StudyLayout(IReadOnlyList<StudyReading> readings)
    {
        Readings = readings;
        Parts = [.. readings.Select(reading => reading.Part).Distinct()];
        Operators = [.. readings.Select(reading => reading.Operator).Distinct()];
        var part = Parts.Select((name, i) => (name, i)).ToDictionary(pair => pair.name, pair => pair.i);
        var hand = Operators.Select((name, i) => (name, i)).ToDictionary(pair => pair.name, pair => pair.i);
        PartOf = [.. readings.Select(reading => part[reading.Part])];
        OperatorOf = [.. readings.Select(reading => hand[reading.Operator])];
        CellOf = [.. PartOf.Zip(OperatorOf, (p, o) => (p * Operators.Count) + o)];
        CellCounts = new int[Parts.Count * Operators.Count];
        foreach (var cell in CellOf)
            CellCounts[cell]++;
    }

    public IReadOnlyList<StudyReading> Readings { get; }

    public IReadOnlyList<string> Parts { get; }

    public IReadOnlyList<string> Operators { get; }

    public int[] PartOf { get; }

    public int[] OperatorOf { get; }

    /// <summary>Part by operator.</summary>
    public int[] CellOf { get; }

    public int[] CellCounts { get; }

    /// <summary>Everybody read every part equally often.</summary>
    public bool IsBalanced => CellCounts.All(count => count == CellCounts[0]);

    /// <summary>Somebody read a part again.</summary>
    public bool HasRepeats => CellCounts.Any(count => count > 1);
}
