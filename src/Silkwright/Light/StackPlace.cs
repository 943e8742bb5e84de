using System.Runtime.CompilerServices;
using System.Runtime.InteropServices;

namespace Silkwright.Light;

/// <summary>Where on the stack a long loop of wide registers begins.</summary>
/// <remarks>
/// What does not fit into registers the compiler puts on the stack, at steps of 16 bytes from wherever the caller stands; a register of 64 bytes that lies across two lines of the cache takes twice
/// as long, so that the same loop ran at two speeds, by thread and by start of the program. From a method to the one it calls the way is always the same: a few bytes more in the
/// caller's frame put the loop where its registers lie well. Nothing but time depends on it. Both methods must be compiled once and not be inlined.
/// </remarks>
internal static class StackPlace
{
    /// <summary>Line of the cache. [bytes]</summary>
    public const int Line = 64;

    /// <summary>Bytes to take from the stack, beside a multiple of a line, so that what is called next begins at a place within a line.</summary>
    /// <param name="mark">The last that was taken from the stack: a line or more, since less is put among the method's own figures.</param>
    /// <param name="place">Multiple of 16, below a line.</param>
    public static int BytesTo(ReadOnlySpan<byte> mark, int place) => (Offset(mark) + Line - place) % Line;

    /// <summary>Of memory that does not move, what begins with a line.</summary>
    public static Span<byte> FromLine(Span<byte> memory) => memory[((Line - Offset(memory)) % Line)..];

    private static int Offset(ReadOnlySpan<byte> memory) => (int)((nuint)Unsafe.ByteOffset(ref Unsafe.NullRef<byte>(), ref MemoryMarshal.GetReference(memory)) % Line);
}
