namespace Silkwright.Film.Measuring;

/// <summary>Disjoint sets of the numbers 0 to n - 1.</summary>
internal sealed class UnionFind
{
    private readonly int[] parent;

    public UnionFind(int count)
    {
        parent = new int[count];
        for (var i = 0; i < count; i++)
            parent[i] = i;
    }

    public int Root(int item)
    {
        while (parent[item] != item)
            item = parent[item] = parent[parent[item]];
        return item;
    }

    public void Join(int a, int b) => parent[Root(b)] = Root(a);
}
