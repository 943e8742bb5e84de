namespace Silkwright.Records.Tests.Films;

/// <summary>Gives so many bytes, then breaks off.</summary>
internal sealed class BreakingStream(int bytes, Action? beforeBreaking = null) : Stream
{
    private int left = bytes;

    public override bool CanRead => true;

    public override bool CanSeek => false;

    public override bool CanWrite => false;

    public override long Length => throw new NotSupportedException();

    public override long Position { get => throw new NotSupportedException(); set => throw new NotSupportedException(); }

    public override int Read(byte[] buffer, int offset, int count)
    {
        if (left == 0)
        {
            beforeBreaking?.Invoke();
            throw new IOException("The line went dead.");
        }

        var given = Math.Min(left, count);
        buffer.AsSpan(offset, given).Fill(1);
        left -= given;
        return given;
    }

    public override void Flush() => throw new NotSupportedException();

    public override long Seek(long offset, SeekOrigin origin) => throw new NotSupportedException();

    public override void SetLength(long value) => throw new NotSupportedException();

    public override void Write(byte[] buffer, int offset, int count) => throw new NotSupportedException();
}
