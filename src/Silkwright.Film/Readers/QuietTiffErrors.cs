using BitMiracle.LibTiff.Classic;

namespace Silkwright.Film.Readers;

/// <summary>Keeps the TIFF library from writing to standard error and remembers what it would have said on this thread.</summary>
internal sealed class QuietTiffErrors : TiffErrorHandler
{
    [ThreadStatic]
    private static string? last;

    /// <summary>The last complaint on this thread since <see cref="Forget"/>.</summary>
    public static string? Last => last;

    public static void Install() => _ = Tiff.SetErrorHandler(new QuietTiffErrors());

    public static void Forget() => last = null;

    public override void ErrorHandler(Tiff tif, string method, string format, params object[] args) => last = method;

    public override void ErrorHandlerExt(Tiff tif, object clientData, string method, string format, params object[] args)
    {
    }

    public override void WarningHandler(Tiff tif, string method, string format, params object[] args) => last = method;

    public override void WarningHandlerExt(Tiff tif, object clientData, string method, string format, params object[] args)
    {
    }
}
