using System.Text.Json;

namespace Silkwright.Records.Screens;

/// <summary>Kinds of entries as the shell and JSON write them.</summary>
public static class FactText
{
    public static string Kind(ScreenEventKind kind) => JsonNamingPolicy.CamelCase.ConvertName(kind.ToString());
}
