using System.Text.Json;

namespace Silkwright.Contracts;

/// <summary>Names of choices as documents write them: the enumeration's name with a small first letter.</summary>
public static class Names
{
    public static string Of<T>(T value)
        where T : struct, Enum => JsonNamingPolicy.CamelCase.ConvertName(value.ToString());

    public static IReadOnlyList<string> All<T>()
        where T : struct, Enum => [.. Enum.GetValues<T>().Select(Of)];
}
