namespace Silkwright.Light;

/// <summary>Where the light of one batch of photons went. Paths in the coat, weighted, in µm: fluence times volume.</summary>
internal sealed class StencilTally
{
    /// <summary>Slices of the stencil's depth.</summary>
    public const int Depths = 24;

    /// <summary>Steps to each side of where a photon passed the film; what goes further counts in the last.</summary>
    public const int HalfSteps = SidewaysSteps.Half;

    public const int Steps = 2 * HalfSteps;

    /// <summary>Fields each way of a pitch, for the print side.</summary>
    public const int Fields = 6;

    /// <summary>Fields each way of a pitch, for the squeegee side.</summary>
    public const int FineFields = 12;

    /// <summary>By slice, then by step.</summary>
    public double[] Paths { get; } = new double[Depths * Steps];

    /// <summary>In the uppermost slice, by field of the pitch, then by step.</summary>
    public double[] PrintSide { get; } = new double[Fields * Fields * Steps];

    /// <summary>In the lowest slice, by fine field of the pitch.</summary>
    public double[] SqueegeeSide { get; } = new double[FineFields * FineFields];

    /// <summary>In the lowest slice, where no thread lies above.</summary>
    public double SqueegeeSideOpen { get; set; }

    /// <summary>Gone back through the plane of the image.</summary>
    public double Back { get; set; }

    /// <summary>Swallowed by the backing.</summary>
    public double Backing { get; set; }

    public double Coat { get; set; }

    public double Threads { get; set; }

    /// <summary>Given to or taken from the rest by ending weak photons by lot.</summary>
    public double Roulette { get; set; }

    public int Photons { get; init; }

    /// <summary>Adds a path in the coat.</summary>
    /// <param name="slice">Slice of depth, 0 to <see cref="Depths"/> − 1.</param>
    /// <param name="step">Step sideways, 0 to <see cref="Steps"/> − 1.</param>
    /// <param name="u">Across the warp, as a share of the pitch from the field's corner. [0..1]</param>
    /// <param name="v">Across the weft, likewise.</param>
    /// <param name="openShare">How far from the corner a thread's edge lies on either side, as a share of the pitch. [0..½]</param>
    /// <param name="path">Weighted length. [µm]</param>
    public void Add(int slice, int step, float u, float v, float openShare, float path)
    {
        Paths[(slice * Steps) + step] += path;
        if (slice == 0)
        {
            PrintSide[(((Field(u, Fields) * Fields) + Field(v, Fields)) * Steps) + step] += path;
        }
        else if (slice == Depths - 1)
        {
            SqueegeeSide[(Field(u, FineFields) * FineFields) + Field(v, FineFields)] += path;
            if (Open(u, openShare) && Open(v, openShare))
                SqueegeeSideOpen += path;
        }
    }

    private static int Field(float share, int fields) => Math.Clamp((int)(share * fields), 0, fields - 1);

    private static bool Open(float share, float openShare) => share < openShare || share > 1 - openShare;
}
