using Silkwright.Coating;
using Silkwright.Emulsion;
using Silkwright.Estimates;
using Silkwright.Exposure;
using Silkwright.Life;
using Silkwright.Mesh;
using Silkwright.Plans;

namespace Silkwright.Contracts;

/// <summary>Reads SHOP.json: docs/schema/shop.json. Everything in it may be missing.</summary>
public static class ShopReader
{
    /// <summary>More kinds of mesh, emulsions, lamps or troughs no shop keeps (common practice, no source).</summary>
    private const int MostMeshes = 200;
    private const int MostEmulsions = 500;
    private const int MostTools = 50;
    private const int MostSizes = 19;

    /// <summary>More of them teach nothing new. Keep the latest.</summary>
    public const int MostReadings = 500;

    /// <param name="json">The document.</param>
    /// <param name="where">The file's name, for messages.</param>
    /// <exception cref="InputProblemException">Every fault of the document.</exception>
    public static Shop Read(string json, string where)
    {
        var problems = new ProblemList();
        var root = DocumentField.Root(json, where, problems);
        problems.ThrowIfAny();
        var meshes = root["meshes"].Entries(MostMeshes).Select(field => Fabric(field, problems)).ToArray();
        var readings = root["readings"];
        var shop = new Shop
        {
            Name = root["name"].Text() ?? new Shop().Name,
            Meshes = meshes,
            Frames = [.. root["frames"].Entries().Select(field => FrameOf(field, meshes, problems))],
            Troughs = [.. root["troughs"].Entries(MostTools).Select(TroughOf)],
            Emulsions = LaidPairs.Of(root["emulsions"].Entries(MostEmulsions), field => EmulsionOf(field), problems),
            Lamps = [.. root["lamps"].Entries(MostTools).Select(LampOf)],
            Film = FilmOf(root["film"], problems),
            Room = RoomOf(root["room"]),
            ExposureReadings = [.. readings["exposure"].Entries(MostReadings).Select(field => ExposureReadingOf(field, meshes, problems))],
            CoatReadings = [.. readings["coat"].Entries(MostReadings).Select(field => CoatReadingOf(field, meshes, problems))],
            RunReadings = [.. readings["runs"].Entries(MostReadings).Select(RunReadingOf)],
            SharesExperience = root["sharesExperience"].YesNo() ?? true,
            Prices = PricesOf(root["prices"]),
            PressWash = root["pressWash"].Choice<PressWash>(),
            RemakeMinutes = root["remakeMinutes"].Number("min", 0, InputLimits.MostStopMinutes),
            SpareMinutes = root["spareMinutes"].Number("min", 0, InputLimits.MostStopMinutes),
            ScreensPerDay = root["screensPerDay"].Number("1/d", InputLimits.LeastScreensPerDay, InputLimits.MostScreensPerDay),
        };
        Twice(shop.Emulsions.Select(emulsion => emulsion.Id), "emulsions", "Give each its own id; two lots of one emulsion are two entries.");
        Twice(shop.Troughs.Select(trough => trough.Id), "troughs", "Give each its own id.");
        Twice(shop.Lamps.Select(lamp => lamp.Id), "lamps", "Give each its own id.");
        foreach (var emulsion in shop.Emulsions.Where(emulsion => emulsion.SensitiveToNm <= emulsion.SensitiveFromNm))
            problems.Add($"The light {emulsion.Id} answers to ends before it begins.", $"{where}: emulsions: sensitiveToNm", "Give sensitiveFromNm as the shorter wavelength.");
        for (var i = 0; i < shop.Emulsions.Count; i++)
        {
            var emulsion = shop.Emulsions[i];
            ContainerPrice[] sizes = emulsion.Price is { } price ? [price, .. emulsion.OtherSizes] : [.. emulsion.OtherSizes];
            foreach (var twice in sizes.GroupBy(size => size.Grams).Where(same => same.Key > 0 && same.Count() > 1))
            {
                problems.Add(
                    $"{emulsion.Id} is sold by {Figures.Plain(twice.Key)} g at two prices.",
                    $"{where}: emulsions[{i}].otherSizes",
                    "List each size once, at the price the shop would pay.");
            }
        }

        ShopReferences.Check(readings, shop, problems);
        root.RefuseSlips();
        problems.ThrowIfAny();
        return shop;

        void Twice(IEnumerable<string> ids, string list, string remedy)
        {
            foreach (var twice in ids.GroupBy(id => id, StringComparer.OrdinalIgnoreCase).Where(same => same.Key.Length > 0 && same.Count() > 1))
                problems.Add($"Two {list} are called '{twice.Key}'.", $"{where}: {list}", remedy);
        }
    }

    internal static MeshFabric Fabric(DocumentField field, ProblemList problems)
    {
        var fabric = new MeshFabric(
            field["countPerCm"].RequiredNumber("1/cm", InputLimits.LeastCountPerCm, InputLimits.MostCountPerCm),
            field["threadUm"].RequiredNumber("µm", InputLimits.LeastThreadUm, InputLimits.MostThreadUm),
            field["dyed"].YesNo() ?? false)
        {
            FabricThicknessUm = field["fabricThicknessUm"].Number("µm", InputLimits.LeastFabricUm, InputLimits.MostFabricUm),
            TensionNPerCm = field["tensionNPerCm"].Number("N/cm", InputLimits.LeastTensionNPerCm, InputLimits.MostTensionNPerCm),
        };
        if (fabric.CountPerCm * fabric.ThreadUm >= 10_000)
            problems.Add($"The threads of {fabric.Name} would overlap.", field.Path, "Give threads per centimetre (not per inch) and the thread in µm.");
        if (fabric.FabricThicknessUm < fabric.ThreadUm)
            problems.Add($"The fabric of {fabric.Name} would be thinner than its thread.", field["fabricThicknessUm"].Path, "Measure it again, or leave it out.");
        return fabric;
    }

    /// <summary>A mesh named by count and thread is the shop's own mesh of that name, with its colour and tension.</summary>
    private static MeshFabric? MeshRef(DocumentField field, IReadOnlyList<MeshFabric> meshes, ProblemList problems)
    {
        if (!field.IsThere)
            return null;
        var named = new ProblemList();
        var mesh = Fabric(field, named);
        if (!named.IsEmpty)
        {
            problems.AddRange(named.Problems);
            return null;
        }

        return meshes.FirstOrDefault(known => known.Name == mesh.Name && (!field["dyed"].IsThere || known.Dyed == mesh.Dyed)) ?? mesh;
    }

    private static Frame FrameOf(DocumentField field, IReadOnlyList<MeshFabric> meshes, ProblemList problems) => new()
    {
        InsideWidthMm = field["insideWidthMm"].RequiredNumber("mm", 50, 5000),
        InsideHeightMm = field["insideHeightMm"].RequiredNumber("mm", 50, 5000),
        Mesh = MeshRef(field["mesh"], meshes, problems),
        TensionNPerCm = field["tensionNPerCm"].Number("N/cm", InputLimits.LeastTensionNPerCm, InputLimits.MostTensionNPerCm),
        Count = field["count"].Count(0, 100_000) ?? 1,
    };

    private static Trough TroughOf(DocumentField field, int index) => new(
        field["id"].Text() ?? $"trough {index + 1}",
        field["edgeRadiusMm"].RequiredNumber("mm", CoatDefaults.LeastEdgeMm, CoatDefaults.MostEdgeMm),
        field["widthMm"].Number("mm", 50, 3000));

    /// <param name="field">Where it stands.</param>
    /// <param name="called">What it is called where it has no id; none: it needs one.</param>
    internal static StencilEmulsion EmulsionOf(DocumentField field, string? called = null) => new()
    {
        Id = called is null ? field["id"].RequiredText() : field["id"].Text() ?? called,
        Family = field["family"].RequiredChoice<EmulsionFamily>(),
        Resists = field["resists"].IsThere ? [.. field["resists"].Entries().Select(ink => ink.RequiredChoice<InkKind>())] : null,
        SolidsPercent = field["solidsPercent"].Number("%", InputLimits.LeastSolidsPercent, 100),
        PotLifeDays = field["potLifeDays"].Number("d", 0.1, 1500),
        ShelfLifeMonths = field["shelfLifeMonths"].Number("months", 0.5, 60),
        RelativeExposure = field["relativeExposure"].Number("1", 0.01, 5),
        HumidityResistant = field["humidityResistant"].YesNo(),
        SeeThrough = field["seeThrough"].YesNo(),
        Price = field["price"].IsThere ? ContainerOf(field["price"]) : null,
        OtherSizes = [.. field["otherSizes"].Entries(MostSizes).Select(ContainerOf)],
        Lot = field["lot"].Text(),
        ReceivedOn = field["receivedOn"].Date(),
        SensitisedOn = field["sensitisedOn"].Date(),
        StoredCelsius = field["storedCelsius"].Number("°C", -30, 60),
        Grams = field["grams"].Number("g", 0, 10_000_000),
        DensityGPerCm3 = field["densityGPerCm3"].Number("g/cm³", 0.8, 2),
        ViscosityPaS = field["viscosityPaS"].Number("Pa·s", 0.05, 200),
        SensitiveFromNm = field["sensitiveFromNm"].Number("nm", 200, 600),
        SensitiveToNm = field["sensitiveToNm"].Number("nm", 250, 700),
        ResistsCleaner = field["resistanceCleaner"].Choice<ResistanceGrade>() is { } cleaner ? new GivenResistance(cleaner, Ground.Datasheet) : null,
        Hardening = field["hardening"].Choice<Hardening>(),
        Reclaim = field["reclaim"].Choice<Reclaiming>(),
        PotLives = field["potLives"].IsThere ? [.. field["potLives"].Entries(MostTools).Select(PotLifeOf)] : null,
        FilmThicknessUm = field["filmThicknessUm"].Number("µm", 5, InputLimits.MostFilmUm),
        PenetrationDepthUm = field["penetrationDepthUm"].Number("µm", InputLimits.LeastPenetrationUm, 9_000),
        CriticalDoseMjPerCm2 = field["criticalDoseMjPerCm2"].Number("mJ/cm²", 0.01, 100_000),
        BleachingPercent = field["bleachingPercent"].Number("%", 0, 100),
        BleachDoseMjPerCm2 = field["bleachDoseMjPerCm2"].Number("mJ/cm²", 0.01, 100_000),
    };

    private static ContainerPrice ContainerOf(DocumentField field) =>
        new(field["grams"].RequiredNumber("g", 1, 1_000_000), field["cost"].RequiredNumber("currency", 0, 1_000_000));

    private static ToldPotLife PotLifeOf(DocumentField field) => new(
        field["celsius"].RequiredNumber("°C", -30, 60), field["days"].RequiredNumber("d", 0.1, 1500), Ground.Datasheet);

    internal static Lamp LampOf(DocumentField field, int index) => LampOf(field, index, field["kind"].RequiredChoice<LampKind>());

    private static Lamp LampOf(DocumentField field, int index, LampKind kind) => new()
    {
        Id = field["id"].Text() ?? $"lamp {index + 1}",
        Kind = kind,
        DistanceMm = field["distanceMm"].Number("mm", LampGeometry.LeastDistanceMm(kind), LampGeometry.MostDistanceMm),
        Hours = field["hours"].Number("h", 0, InputLimits.MostLampHours),
        PeakNm = field["peakNm"].Number("nm", 250, 500),
        IrradianceMwPerCm2 = field["irradianceMwPerCm2"].Number("mW/cm²", 0.001, 10_000),
        Imaging = field["imaging"].Choice<Imaging>() ?? Imaging.Film,
        SpotUm = field["spotUm"].Number("µm", 1, 300),
        Passes = field["passes"].Count(1, 100),
        BeamHalfAngleDegrees = field["beamHalfAngleDegrees"].Number("degrees", 0, 75),
        Counts = field["counts"].Choice<ExposureCount>() ?? ExposureCount.Seconds,
    };

    internal static FilmDensity? FilmOf(DocumentField field, ProblemList problems)
    {
        if (!field.IsThere)
            return null;
        var film = new FilmDensity(field["dMaxUv"].RequiredNumber("1", 0, 6), field["dMinUv"].RequiredNumber("1", 0, 6));
        if (film.DMinUv >= film.DMaxUv && field["dMaxUv"].IsThere && field["dMinUv"].IsThere)
            problems.Add("The clear film is as dense as the black.", field.Path, "dMaxUv is the black's UV density, dMinUv the clear's.");
        return film;
    }

    private static Room RoomOf(DocumentField field) => new()
    {
        Celsius = field["celsius"].Number("°C", -20, 60),
        HumidityPercent = field["humidityPercent"].Number("%", 0, 100),
        Light = field["light"].Choice<RoomLight>(),
        Lux = field["lux"].Number("lx", InputLimits.LeastLux, InputLimits.MostLux),
        AirSpeedMPerS = field["airSpeedMPerS"].Number("m/s", 0, InputLimits.MostAirSpeedMPerS),
        AltitudeM = field["altitudeM"].Number("m", InputLimits.LeastAltitudeM, InputLimits.MostAltitudeM),
    };

    private static ExposureReading ExposureReadingOf(DocumentField field, IReadOnlyList<MeshFabric> meshes, ProblemList problems) => new()
    {
        EmulsionId = field["emulsion"].RequiredText(),
        Mesh = MeshRef(field["mesh"], meshes, problems),
        LampId = field["lamp"].Text(),
        Test = StripReader.Read(field, problems),
    };

    private static CoatReading CoatReadingOf(DocumentField field, IReadOnlyList<MeshFabric> meshes, ProblemList problems)
    {
        if (!field["mesh"].IsThere)
            field["mesh"].Missing("the mesh, as {\"countPerCm\": 43, \"threadUm\": 80}");
        return new CoatReading
        {
            EmulsionId = field["emulsion"].RequiredText(),
            Mesh = MeshRef(field["mesh"], meshes, problems) ?? new MeshFabric(43, 80),
            Strokes = StrokeText.TryRead(field["strokes"].RequiredText(), field["strokes"].Path, problems) ?? [],
            TroughId = field["trough"].Text(),
            Operator = field["operator"].Text(),
            Screen = field["screen"].Text(),
            EomUm = field["eomUm"].RequiredNumber("µm", 0, InputLimits.MostEomUm),
            On = field["on"].Date(),
        };
    }

    private static RunReading RunReadingOf(DocumentField field)
    {
        if (!field["broke"].IsThere)
            field["broke"].Missing("true where the stencil failed there, false where it came off sound");
        return new RunReading
        {
            EmulsionId = field["emulsion"].RequiredText(),
            Ink = field["ink"].RequiredChoice<InkKind>(),
            Impressions = field["impressions"].RequiredCount(1, InputLimits.MostImpressions),
            Broke = field["broke"].YesNo() ?? false,
            Finish = field["finish"].Choice<StencilFinish>() ?? StencilFinish.None,
            EomUm = field["eomUm"].Number("µm", 0, InputLimits.MostEomUm),
            On = field["on"].Date(),
        };
    }

    private static ShopPrices PricesOf(DocumentField field) => new()
    {
        Currency = field["currency"].Text() ?? new ShopPrices().Currency,
        LabourPerHour = field["labourPerHour"].Number("currency/h", 0, 10_000),
        PressStopPerMinute = field["pressStopPerMinute"].Number("currency/min", 0, 10_000),
        InkPerKg = field["inkPerKg"].Number("currency/kg", 0, 10_000),
    };
}
