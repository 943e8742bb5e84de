using System.Buffers.Binary;

namespace Silkwright.Film.Readers;

/// <summary>The compressed pixels of a PNG as one stream: its IDAT chunks joined.</summary>
internal sealed class PngPixelStream(Stream file) : Stream
{
    private long left;
    private bool started;
    private bool ended;

    public override bool CanRead => true;

    public override bool CanSeek => false;

    public override bool CanWrite => false;

    public override long Length => throw new NotSupportedException();

    public override long Position
    {
        get => throw new NotSupportedException();
        set => throw new NotSupportedException();
    }

    public override int Read(byte[] buffer, int offset, int count) => Read(buffer.AsSpan(offset, count));

    public override int Read(Span<byte> buffer)
    {
        while (left == 0 && !ended)
            NextChunk();
        if (ended)
            return 0;
        var got = file.Read(buffer[..(int)Math.Min(buffer.Length, left)]);
        left = got == 0 ? 0 : left - got;
        ended = got == 0;
        return got;
    }

    public override void Flush()
    {
    }

    public override long Seek(long offset, SeekOrigin origin) => throw new NotSupportedException();

    public override void SetLength(long value) => throw new NotSupportedException();

    public override void Write(byte[] buffer, int offset, int count) => throw new NotSupportedException();

    private void NextChunk()
    {
        if (started)
            file.Position += 4;
        started = true;
        Span<byte> start = stackalloc byte[8];
        if (file.ReadAtLeast(start, 8, throwOnEndOfStream: false) < 8 || !start[4..].SequenceEqual("IDAT"u8))
        {
            ended = true;
            return;
        }

        left = BinaryPrimitives.ReadUInt32BigEndian(start);
    }
}
