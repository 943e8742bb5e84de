using Silkwright.Light;

namespace Silkwright.Tests.Light;

/// <summary>How much of a slice is coat: dots on a lattice counted, from the weave's description alone.</summary>
internal sealed class CoatShareByDots(StencilCase stencil)
{
    private const int Dots = 120;

    public double Of(int slice, int slices)
    {
        var weave = stencil.Weave!;
        var coat = 0;
        for (var i = 0; i < Dots; i++)
        {
            for (var j = 0; j < Dots; j++)
            {
                for (var k = 0; k < 12; k++)
                {
                    var z = (slice + ((k + 0.5) / 12)) * stencil.StencilUm / slices;
                    coat += WeaveByPlaces.IsThread(stencil, (i + 0.5) / Dots * weave.PitchUm, (j + 0.5) / Dots * weave.PitchUm, z) ? 0 : 1;
                }
            }
        }

        return coat / (12.0 * Dots * Dots);
    }
}
