using System.Text.Json;
using System.Text.Json.Serialization;
using Silkwright.Coating;
using Silkwright.Contracts;
using Silkwright.Estimates;

namespace Silkwright.Records.Screens;

/// <summary>Strokes as the shop's document writes them: "P P S".</summary>
internal sealed class StrokesJson : JsonConverter<IReadOnlyList<Stroke>>
{
    public override IReadOnlyList<Stroke> Read(ref Utf8JsonReader reader, Type typeToConvert, JsonSerializerOptions options)
    {
        var problems = new ProblemList();
        var strokes = StrokeText.TryRead(reader.GetString() ?? "", "strokes", problems);
        return strokes ?? throw new JsonException(problems.Problems[0].What);
    }

    public override void Write(Utf8JsonWriter writer, IReadOnlyList<Stroke> value, JsonSerializerOptions options) =>
        writer.WriteStringValue(StrokeText.Write(value));
}
