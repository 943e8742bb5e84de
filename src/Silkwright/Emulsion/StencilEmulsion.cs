namespace Silkwright.Emulsion;

/// <summary>One emulsion on a shop's shelf. What is not given falls back to its family's values (<see cref="FamilyValues"/>).</summary>
public sealed record StencilEmulsion
{
    public required string Id { get; init; }

    public required EmulsionFamily Family { get; init; }

    /// <summary>Inks that the supplier or the shop says it stands up to; none given: the family's usual ones.</summary>
    public IReadOnlyList<InkKind>? Resists { get; init; }

    /// <summary>Grades given ink by ink; an ink that is in here is not looked up in <see cref="Resists"/>.</summary>
    public IReadOnlyDictionary<InkKind, GivenResistance>? Resistances { get; init; }

    /// <summary>Solids by weight, as datasheets print it. [%]</summary>
    public double? SolidsPercent { get; init; }

    /// <summary>Days it works once sensitised, kept at 21 °C. [d]</summary>
    public double? PotLifeDays { get; init; }

    /// <summary>Months it keeps unopened. [months]</summary>
    public double? ShelfLifeMonths { get; init; }

    /// <summary>Exposure time beside a plain diazo of the same coat. [1]</summary>
    public double? RelativeExposure { get; init; }

    /// <summary>The coat stays dry to the touch above 80 % relative humidity.</summary>
    public bool? HumidityResistant { get; init; }

    /// <summary>The coat's colour lets one see the mark below, so that a job can be lined up by eye.</summary>
    public bool? SeeThrough { get; init; }

    /// <summary>Price of one container, in the size that is bought.</summary>
    public ContainerPrice? Price { get; init; }

    /// <summary>Other sizes it is sold in.</summary>
    public IReadOnlyList<ContainerPrice> OtherSizes { get; init; } = [];

    /// <summary>Lot on the container.</summary>
    public string? Lot { get; init; }

    public DateOnly? ReceivedOn { get; init; }

    /// <summary>Day the sensitiser was stirred in; none for a container still unmixed, or for ready-to-use.</summary>
    public DateOnly? SensitisedOn { get; init; }

    /// <summary>Where it stands. [°C]</summary>
    public double? StoredCelsius { get; init; }

    /// <summary>What is left. [g]</summary>
    public double? Grams { get; init; }

    /// <summary>Thickness of a capillary film as bought. [µm]</summary>
    public double? FilmThicknessUm { get; init; }

    /// <summary>Working-curve penetration depth where somebody measured it. [µm]</summary>
    public double? PenetrationDepthUm { get; init; }

    /// <summary>Working-curve critical dose where somebody measured it. [mJ/cm²]</summary>
    public double? CriticalDoseMjPerCm2 { get; init; }

    /// <summary>Share of the coat's absorption that goes with the sensitiser, where somebody measured it; the penetration depth is then the one before bleaching. [%]</summary>
    public double? BleachingPercent { get; init; }

    /// <summary>Dose that leaves 37 % of the sensitiser, where somebody measured it. [mJ/cm²]</summary>
    public double? BleachDoseMjPerCm2 { get; init; }

    /// <summary>Density of the liquid. [g/cm³]</summary>
    public double? DensityGPerCm3 { get; init; }

    /// <summary>Viscosity of the liquid. [Pa·s] No engine reckons with it: docs/engines/coating.md, "What it does not know".</summary>
    public double? ViscosityPaS { get; init; }

    /// <summary>The light it answers to begins here. [nm]</summary>
    public double? SensitiveFromNm { get; init; }

    /// <summary>The light it answers to ends here. [nm]</summary>
    public double? SensitiveToNm { get; init; }

    /// <summary>How it stands solvents and cleaners, where somebody graded it.</summary>
    public GivenResistance? ResistsCleaner { get; init; }

    /// <summary>What a chemical hardener does to it; none: not told, it helps as usual.</summary>
    public Hardening? Hardening { get; init; }

    /// <summary>How it comes off the mesh; none: not told, as usual.</summary>
    public Reclaiming? Reclaim { get; init; }

    /// <summary>Pot lives told at several temperatures; they stand before <see cref="PotLifeDays"/> where both name 21 °C.</summary>
    public IReadOnlyList<ToldPotLife>? PotLives { get; init; }

    /// <summary>The liquid emulsion a capillary film is laid with; none: it is laid with water, or is no film.</summary>
    public StencilEmulsion? LaidWith { get; init; }

    /// <summary>The id it has on the shop's shelf: its own, or the film's where the pair of film and emulsion was put together here.</summary>
    public string ShelfId
    {
        get => shelfId ?? Id;
        init => shelfId = value;
    }

    private readonly string? shelfId;

    /// <summary>What is poured into the trough: the emulsion itself, or the one that a film is laid with.</summary>
    public StencilEmulsion Liquid() => LaidWith ?? this;

    /// <summary>The film alone, as laid with water.</summary>
    public StencilEmulsion WithoutLaying() => this with { LaidWith = null };

    /// <summary>Where the values given here come from.</summary>
    public GivenGrounds Grounds { get; init; } = new();
}
