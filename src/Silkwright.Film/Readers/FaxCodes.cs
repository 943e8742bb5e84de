namespace Silkwright.Film.Readers;

/// <summary>The code words of facsimile coding, laid out for looking up by the next bits.</summary>
/// <remarks>ITU-T T.4, tables 2 and 3 (runs), and T.6, table 1 (modes). A look-up gives a value and, in the lowest four bits, the word's length; 0 is no word.</remarks>
internal static class FaxCodes
{
    /// <summary>Bits to look up a run by: the longest word.</summary>
    public const int RunBits = 13;

    /// <summary>Bits to look up a mode by.</summary>
    public const int ModeBits = 7;

    /// <summary>A mode: pass.</summary>
    public const int Pass = 7;

    /// <summary>A mode: two runs follow. Values below <see cref="Pass"/> are vertical modes, the offset plus 3.</summary>
    public const int Horizontal = 8;

    private const string WhiteShort =
        "00110101 000111 0111 1000 1011 1100 1110 1111 10011 10100 00111 01000 001000 000011 110100 110101 101010 101011 0100111 0001100 0001000 " +
        "0010111 0000011 0000100 0101000 0101011 0010011 0100100 0011000 00000010 00000011 00011010 00011011 00010010 00010011 00010100 00010101 " +
        "00010110 00010111 00101000 00101001 00101010 00101011 00101100 00101101 00000100 00000101 00001010 00001011 01010010 01010011 01010100 " +
        "01010101 00100100 00100101 01011000 01011001 01011010 01011011 01001010 01001011 00110010 00110011 00110100";

    private const string BlackShort =
        "0000110111 010 11 10 011 0011 0010 00011 000101 000100 0000100 0000101 0000111 00000100 00000111 000011000 0000010111 0000011000 0000001000 " +
        "00001100111 00001101000 00001101100 00000110111 00000101000 00000010111 00000011000 000011001010 000011001011 000011001100 000011001101 " +
        "000001101000 000001101001 000001101010 000001101011 000011010010 000011010011 000011010100 000011010101 000011010110 000011010111 " +
        "000001101100 000001101101 000011011010 000011011011 000001010100 000001010101 000001010110 000001010111 000001100100 000001100101 " +
        "000001010010 000001010011 000000100100 000000110111 000000111000 000000100111 000000101000 000001011000 000001011001 000000101011 " +
        "000000101100 000001011010 000001100110 000001100111";

    private const string WhiteLong =
        "11011 10010 010111 0110111 00110110 00110111 01100100 01100101 01101000 01100111 011001100 011001101 011010010 011010011 011010100 " +
        "011010101 011010110 011010111 011011000 011011001 011011010 011011011 010011000 010011001 010011010 011000 010011011";

    private const string BlackLong =
        "0000001111 000011001000 000011001001 000001011011 000000110011 000000110100 000000110101 0000001101100 0000001101101 0000001001010 " +
        "0000001001011 0000001001100 0000001001101 0000001110010 0000001110011 0000001110100 0000001110101 0000001110110 0000001110111 " +
        "0000001010010 0000001010011 0000001010100 0000001010101 0000001011010 0000001011011 0000001100100 0000001100101";

    private const string LongestOfBoth =
        "00000001000 00000001100 00000001101 000000010010 000000010011 000000010100 000000010101 000000010110 000000010111 000000011100 000000011101 " +
        "000000011110 000000011111";

    /// <summary>Vertical modes from 3 to the left to 3 to the right, pass, horizontal.</summary>
    private const string ModeWords = "0000010 000010 010 1 011 000011 0000011 0001 001";

    /// <summary>White runs. Values of 64 and more are followed by another word. [px]</summary>
    public static int[] White { get; } = Runs(WhiteShort, WhiteLong);

    /// <summary>Black runs. [px]</summary>
    public static int[] Black { get; } = Runs(BlackShort, BlackLong);

    public static int[] Modes { get; } = ModesTable();

    private static int[] Runs(string shorts, string longs)
    {
        var table = new int[1 << RunBits];
        Lay(table, RunBits, shorts, 0, 1);
        Lay(table, RunBits, longs + " " + LongestOfBoth, 64, 64);
        return table;
    }

    private static int[] ModesTable()
    {
        var table = new int[1 << ModeBits];
        Lay(table, ModeBits, ModeWords, 0, 1);
        return table;
    }

    private static void Lay(int[] table, int bits, string words, int value, int step)
    {
        foreach (var word in words.Split(' '))
        {
            var free = bits - word.Length;
            table.AsSpan(Convert.ToInt32(word, 2) << free, 1 << free).Fill((value << 4) | word.Length);
            value += step;
        }
    }
}
