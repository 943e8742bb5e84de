using System.Text;

namespace Silkwright.Cli.Printing;

/// <summary>A stream of text whose refusals, a full disk above all, go where they can be told.</summary>
/// <param name="inner">Where the text goes. A reader that went away is its affair: it takes the rest in silence.</param>
/// <param name="refused">Tells that the text found no place.</param>
internal sealed class ToldWriter(TextWriter inner, Action<IOException> refused) : TextWriter
{
    public override Encoding Encoding => inner.Encoding;

    public override void Write(char value) => Try(() => inner.Write(value));

    public override void Write(string? value) => Try(() => inner.Write(value));

    public override void Write(char[] buffer, int index, int count) => Try(() => inner.Write(buffer, index, count));

    public override void WriteLine(string? value) => Try(() => inner.WriteLine(value));

    public override void Flush() => Try(inner.Flush);

    private void Try(Action write)
    {
        try
        {
            write();
        }
        catch (IOException failure)
        {
            refused(failure);
        }
    }
}
