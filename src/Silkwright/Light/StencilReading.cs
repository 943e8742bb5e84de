namespace Silkwright.Light;

/// <summary>Reads doses, undercuts and their standard errors out of the batches' tallies.</summary>
internal sealed class StencilReading(StencilCase stencil, StencilTally[] tallies)
{
    /// <summary>Shares of the clear film's dose that the undercut is read at. An edge of a coat exposed well lies at about a quarter.</summary>
    private static readonly double[] Shares = [0.75, 0.5, 0.35, StencilShares.WellExposed, 0.15, 0.1, 0.05];

    private const int Last = StencilTally.Depths - 1;

    private readonly CoatShare coat = new(stencil);
    private readonly double sliceUm = stencil.StencilUm / StencilTally.Depths;

    /// <summary>
    /// Line spread on the print and the squeegee side, undercut on the print side, where it goes farthest, and its saw-tooth, all of a coat exposed well; dose on the squeegee side, mean and worst.
    /// </summary>
    public Sampled[] MainFigures()
    {
        var slices = Enumerable.Range(0, StencilTally.Depths).Select(Slice).ToArray();
        var undercut = Undercut(slices, PrintSideFields(), StencilShares.WellExposed);
        var through = Through(slices[^1].Clear);
        return
        [
            slices[0].Crossing(StencilShares.OneLengthOn), slices[^1].Crossing(StencilShares.OneLengthOn), undercut.UndercutUm, undercut.FarthestUm, undercut.SawtoothUm, through.Average, through.Worst,
        ];
    }

    public StencilResult Result()
    {
        var slices = Enumerable.Range(0, StencilTally.Depths).Select(Slice).ToArray();
        var places = Places();
        var fields = PrintSideFields();
        return new StencilResult
        {
            Case = stencil,
            DepthsUm = [.. Enumerable.Range(0, StencilTally.Depths).Select(i => (i + 0.5) * sliceUm)],
            PlacesUm = places,
            Dose = [.. slices.Select(slice => (IReadOnlyList<Sampled>)[.. places.Select(x => slice.Dose(stencil.Image, x))])],
            ClearDose = [.. slices.Select(slice => slice.Clear)],
            Undercuts = [.. Shares.Select(share => Undercut(slices, fields, share))],
            LineSpreadUm = slices[0].Crossing(StencilShares.OneLengthOn),
            LineSpreadSqueegeeSideUm = slices[^1].Crossing(StencilShares.OneLengthOn),
            Through = Through(slices[^1].Clear),
            Back = Share(tally => tally.Back),
            Backing = Share(tally => tally.Backing),
            Coat = Share(tally => tally.Coat),
            Threads = Share(tally => tally.Threads),
            Roulette = tallies.Sum(tally => tally.Roulette) / stencil.Photons,
        };
    }

    private static UndercutAt Undercut(EdgeResponse[] slices, EdgeResponse[] fields, double share) =>
        new(share, slices[0].Crossing(share), slices.Select(slice => slice.Crossing(share, slices[0])).MaxBy(at => at.Value), Sawtooth(fields, share));

    /// <summary>Fine beside each edge of the image.</summary>
    private double[] Places()
    {
        var all = Enumerable.Range(0, StencilTally.Steps + 1).Select(SidewaysSteps.BoundaryUm);
        if (stencil.Image.Kind == FilmImageKind.Edge)
            return [.. all];
        var middle = stencil.Image.Kind == FilmImageKind.Line ? stencil.Image.WidthUm / 2 : -stencil.Image.WidthUm / 2;
        return [.. all.SelectMany(x => new[] { x, (2 * middle) - x }).Where(x => stencil.Image.Kind == FilmImageKind.Line ? x <= middle : x >= middle)
            .SelectMany(x => new[] { x, (2 * middle) - x }).Distinct().Order()];
    }

    private Sampled Share(Func<StencilTally, double> weight) =>
        Sampled.Of([.. tallies.Select(tally => weight(tally) / tally.Photons)]) with { Value = tallies.Sum(weight) / stencil.Photons };

    private EdgeResponse Slice(int slice) => Response(coat.Of(slice), tally => new(tally.Paths, slice * StencilTally.Steps, StencilTally.Steps), null);

    /// <summary>The edge as each field of the weave sees it, on the print side.</summary>
    private EdgeResponse[] PrintSideFields()
    {
        if (stencil.Weave is null)
            return [];
        const int fields = StencilTally.Fields;
        return [.. Enumerable.Range(0, fields * fields).Where(field => InField(0, field, fields) > LeastCoat).Select(field => Response(
            InField(0, field, fields) / (fields * fields),
            tally => new(tally.PrintSide, field * StencilTally.Steps, StencilTally.Steps),
            // Half a turn about the upright axis brings the weave onto itself and right to left.
            tally => new(tally.PrintSide, ((fields * fields) - 1 - field) * StencilTally.Steps, StencilTally.Steps)))];
    }

    /// <summary>Fields with less coat than this in them are no place in a coat. [1]</summary>
    private const double LeastCoat = 0.05;

    private double InField(int slice, int field, int fields)
    {
        var pitch = stencil.Weave!.PitchUm;
        return coat.Of(slice, Part(field / fields), Part(field % fields));

        (double From, double To) Part(int i) => ((((double)i / fields) - 0.5) * pitch, (((double)(i + 1) / fields) - 0.5) * pitch);
    }

    private EdgeResponse Response(double share, Func<StencilTally, ArraySegment<double>> of, Func<StencilTally, ArraySegment<double>>? mirrored) => new([.. tallies.Select(tally =>
    {
        ReadOnlySpan<double> own = of(tally), other = (mirrored ?? of)(tally);
        var scale = 1 / (tally.Photons * sliceUm * share);
        var steps = new double[own.Length];
        for (var i = 0; i < steps.Length; i++)
            steps[i] = scale * (stencil.IsEven ? (own[i] + other[steps.Length - 1 - i]) / 2 : own[i]);
        return steps;
    })]);

    private static Sampled Sawtooth(EdgeResponse[] fields, double share)
    {
        if (fields.Length < 2)
            return default;
        Sampled[] places = [.. fields.Select(field => field.Crossing(share))];
        var mean = places.Average(place => place.Value);
        var spread = places.Sum(place => (place.Value - mean) * (place.Value - mean)) / (places.Length - 1);
        var chance = places.Average(place => place.StandardError * place.StandardError);
        // A sine's height is 2√2 times its standard deviation; the deviation's error by that of its square.
        var deviation = Math.Sqrt(Math.Max(0, spread - chance));
        var ofSquare = Math.Sqrt(((4 * spread * chance) + (2 * chance * chance)) / places.Length);
        return new Sampled(deviation, ofSquare / Math.Max(2 * deviation, Math.Sqrt(ofSquare) + double.Epsilon)).Times(2 * Math.Sqrt(2));
    }

    private ThroughDose Through(Sampled average)
    {
        if (stencil.Weave is not { } weave)
            return new(average, average, average, average);
        var openArea = Math.Pow(1 - (weave.ThreadUm / weave.PitchUm), 2);
        var open = Of(openArea, tally => tally.SqueegeeSideOpen);
        var behind = Of(Math.Max(coat.Of(Last) - openArea, double.Epsilon), tally => tally.SqueegeeSide.Sum() - tally.SqueegeeSideOpen);
        return new(average, open, behind, Worst());

        Sampled Of(double volume, Func<StencilTally, double> paths) =>
            Sampled.Of([.. tallies.Select(tally => paths(tally) / (tally.Photons * sliceUm * volume))]);

        // Fields that the weave's mirrors bring onto each other are one place, where the lamp's light has no side.
        Sampled Worst()
        {
            const int fields = StencilTally.FineFields;
            var places = Enumerable.Range(0, fields * fields).GroupBy(field => stencil.IsEven ? Folded(field / fields, field % fields) : (field / fields, field % fields));
            return places
                .Select(place => (Fields: place.ToArray(), Coat: place.Sum(field => InField(Last, field, fields)) / (fields * fields)))
                .Where(place => place.Coat > LeastCoat * place.Fields.Length / (fields * fields))
                .Select(place => Of(place.Coat, tally => place.Fields.Sum(field => tally.SqueegeeSide[field])))
                .MinBy(dose => dose.Value);
        }

        static (int, int) Folded(int u, int v)
        {
            var (foldedU, foldedV) = (Math.Min(u, StencilTally.FineFields - 1 - u), Math.Min(v, StencilTally.FineFields - 1 - v));
            return foldedU < foldedV ? (foldedU, foldedV) : (foldedV, foldedU);
        }
    }
}
