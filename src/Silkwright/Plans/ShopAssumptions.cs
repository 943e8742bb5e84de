using Silkwright.Coating;
using Silkwright.Emulsion;
using Silkwright.Estimates;
using Silkwright.Exposure;
using Silkwright.Mesh;

namespace Silkwright.Plans;

/// <summary>Fills what a shop has not said with what is usual, and says so.</summary>
public static class ShopAssumptions
{
    /// <summary>Air of a room that nobody read. Common practice.</summary>
    private const int UsualCelsius = 23;
    private const int UsualHumidityPercent = 50;

    private static readonly MeshFabric[] UsualMeshes =
        [new(43, 80), new(61, 64), new(77, 55, Dyed: true), new(90, 48, Dyed: true), new(120, 34, Dyed: true)];

    /// <summary>One of each family as it is usually made: names that nobody sells.</summary>
    private static readonly StencilEmulsion[] UsualEmulsions =
    [
        new() { Id = "a diazo made for water", Family = EmulsionFamily.Diazo, Resists = [InkKind.Plastisol, InkKind.WaterBased, InkKind.Discharge] },
        new() { Id = "a dual-cure", Family = EmulsionFamily.DualCure },
        new() { Id = "a photopolymer for plastisol", Family = EmulsionFamily.Photopolymer, Resists = [InkKind.Plastisol] },
        new() { Id = "a photopolymer made for water", Family = EmulsionFamily.Photopolymer, Resists = [InkKind.Plastisol, InkKind.WaterBased, InkKind.Discharge] },
        new() { Id = "a solvent-resistant diazo", Family = EmulsionFamily.Diazo, Resists = [InkKind.Plastisol, InkKind.Solvent, InkKind.Uv] },
        new() { Id = "a capillary film", Family = EmulsionFamily.CapillaryFilm },
    ];

    public static (Shop Shop, IReadOnlyList<Note> Notes) Fill(Shop shop)
    {
        var notes = new List<Note>();
        var meshes = shop.Meshes.Concat(shop.Frames.Select(frame => frame.Mesh).OfType<MeshFabric>()).Distinct().ToArray();
        if (meshes.Length == 0)
        {
            meshes = UsualMeshes;
            Assume("No meshes given: a usual set is assumed, " + string.Join(", ", meshes.Select(m => m.Name)) + ".");
        }

        var emulsions = shop.Emulsions;
        if (emulsions.Count == 0)
        {
            emulsions = UsualEmulsions;
            Assume("No emulsions given: one of each usual kind is assumed, fresh.");
        }

        var troughs = shop.Troughs;
        if (troughs.Count == 0)
        {
            troughs = [new Trough("round-edged", 1.5)];
            Assume("No trough given: a round edge of 1.5 mm is assumed.");
        }

        var lamps = shop.Lamps;
        if (lamps.Count == 0)
        {
            lamps = [new Lamp { Id = "a metal halide lamp at 1 m", Kind = LampKind.MetalHalide, DistanceMm = 1000 }];
            Assume("No lamp given: metal halide at 1 m is assumed.");
        }

        var room = shop.Room;
        if (room.Celsius is null || room.HumidityPercent is null)
        {
            Assume((room.Celsius, room.HumidityPercent) switch
            {
                (null, null) => $"Room not read: {UsualCelsius} °C and {UsualHumidityPercent} % relative humidity are assumed.",
                (null, _) => $"Air of the room not read: {UsualCelsius} °C is assumed.",
                _ => $"Humidity of the room not read: {UsualHumidityPercent} % is assumed.",
            });
            room = room with { Celsius = room.Celsius ?? UsualCelsius, HumidityPercent = room.HumidityPercent ?? UsualHumidityPercent };
        }

        if (room.Light is null)
            Assume("Room light not given: yellow light is assumed; leave half a covered coupon out for half an hour to know.");
        return (shop with { Meshes = meshes, Emulsions = emulsions, Troughs = troughs, Lamps = lamps, Room = room }, notes);

        void Assume(string text) => notes.Add(new Note(text, Ground.CommonPractice));
    }
}
