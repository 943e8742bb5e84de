using System.Runtime.CompilerServices;

namespace Silkwright.Film.Measuring;

/// <summary>Puts together the 8-connected components of a band of rows, one row in memory at a time.</summary>
/// <remarks>
/// Runs and union-find; a component is handed on as soon as a row passes without it, and its place is used again. Components that
/// touch the band's first or last row stay open for <see cref="FilmComponents"/> to join with the next band's.
/// </remarks>
internal sealed class BandComponents(Action<Blob> closed)
{
    private const int Ended = int.MaxValue;
    private readonly List<int> retired = [];
    private Blob[] blobs = new Blob[256];
    private int[] parent = new int[256];
    private int[] seenAt = new int[256];
    private bool[] pinned = new bool[256];
    private readonly Stack<int> free = new();
    private int used;
    private Run[] above = new Run[64];
    private Run[] here = new Run[64];
    private int aboveCount;
    private int hereCount;
    private int row = -1;

    /// <summary>Runs of the first row, with labels that <see cref="Root"/> still knows.</summary>
    public Run[] FirstRow { get; private set; } = [];

    /// <summary>Runs of the last row.</summary>
    public ReadOnlySpan<Run> LastRow => above.AsSpan(0, aboveCount);

    /// <summary>Marks the components whose runs in the first row touch any pixel of a row above it.</summary>
    public void MarkFirstRow(ReadOnlySpan<ulong> beside) => Mark(FirstRow, beside);

    /// <summary>Marks the components whose runs in the last row touch any pixel of a row below it.</summary>
    public void MarkLastRow(ReadOnlySpan<ulong> beside) => Mark(LastRow, beside);

    /// <summary>Labels given out so far.</summary>
    public int LabelCount => used;

    public ref readonly Blob this[int root] => ref blobs[root];

    /// <summary>The label that stands for a label's whole component.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public int Root(int label)
    {
        while (parent[label] != label)
            label = parent[label] = parent[parent[label]];
        return label;
    }

    /// <summary>Takes the runs of the next row: starts and ends in turn, and which of the runs carry a mark, if any do.</summary>
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    public void AddRow(ReadOnlySpan<int> edges, int y, ReadOnlySpan<bool> marks = default)
    {
        row++;
        hereCount = 0;
        if (here.Length < edges.Length / 2)
            here = new Run[edges.Length];
        var touching = 0;
        for (var i = 0; i < edges.Length; i += 2)
            AddRun(edges[i], edges[i + 1], y, !marks.IsEmpty && marks[i / 2], ref touching);
        if (row == 0)
            KeepFirstRow();
        else
            CloseWhatEnded();
        (above, here) = (here, above);
        aboveCount = hereCount;
    }

    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    private void AddRun(int from, int to, int y, bool mark, ref int touching)
    {
        while (touching < aboveCount && above[touching].To < from)
            touching++;
        var label = -1;
        for (var k = touching; k < aboveCount && above[k].From <= to; k++)
            label = label < 0 ? Root(above[k].Label) : Join(label, Root(above[k].Label));
        if (label < 0)
            label = New(Blob.Of(from, to, y));
        else
            blobs[label].AddRun(from, to, y);
        blobs[label].Marked |= mark;
        seenAt[label] = row;
        here[hereCount++] = new Run(from, to, label);
    }

    private void Mark(ReadOnlySpan<Run> runs, ReadOnlySpan<ulong> beside)
    {
        foreach (var run in runs)
        {
            var (left, right) = (Math.Max(0, run.From - 1), Math.Min(64 * beside.Length, run.To + 1));
            for (var word = left >> 6; word << 6 < right; word++)
                blobs[Root(run.Label)].Marked |= (beside[word] & BitRow.Between(word, left, right)) != 0;
        }
    }

    private int Join(int a, int b)
    {
        if (a == b)
            return a;
        blobs[a].Add(blobs[b]);
        parent[b] = a;
        if (pinned[b])
            pinned[a] = true;
        else
            retired.Add(b);
        return a;
    }

    private void KeepFirstRow()
    {
        FirstRow = here.AsSpan(0, hereCount).ToArray();
        foreach (var run in FirstRow)
            pinned[run.Label] = true;
    }

    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    private void CloseWhatEnded()
    {
        for (var i = 0; i < hereCount; i++)
            here[i] = here[i] with { Label = Root(here[i].Label) };
        for (var k = 0; k < aboveCount; k++)
        {
            var root = Root(above[k].Label);
            if (seenAt[root] >= row)
                continue;
            seenAt[root] = Ended;
            if (pinned[root])
                continue;
            closed(blobs[root]);
            retired.Add(root);
        }

        foreach (var label in retired)
        {
            parent[label] = label;
            free.Push(label);
        }

        retired.Clear();
    }

    private int New(Blob blob)
    {
        if (!free.TryPop(out var label))
        {
            label = used++;
            if (label == blobs.Length)
                Grow();
        }

        blobs[label] = blob;
        parent[label] = label;
        pinned[label] = false;
        return label;
    }

    private void Grow()
    {
        Array.Resize(ref blobs, used * 2);
        Array.Resize(ref parent, used * 2);
        Array.Resize(ref seenAt, used * 2);
        Array.Resize(ref pinned, used * 2);
    }

    /// <summary>A run of set pixels and the component it belongs to.</summary>
    internal readonly record struct Run(int From, int To, int Label);
}
