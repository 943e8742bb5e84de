using Silkwright.Plans;

namespace Silkwright.Contracts;

/// <summary>Reads SHOP.json.</summary>
public static class ShopReader
{
    public static Shop Read(string json, string where) =>
        throw new NotImplementedException();
}
