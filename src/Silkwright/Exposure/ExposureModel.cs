namespace Silkwright.Exposure;

/// <summary>The exposure window of one stencil.</summary>
public static class ExposureModel
{
    public static ExposureWindow Window(ExposureCase exposure) =>
        throw new NotImplementedException();
}
