namespace CamPower.Tolerance;

/// <summary>Random numbers that are a function of a counter: any of them at once, on any thread, the same bits.</summary>
/// <remarks>Philox4x32-10: <see cref="Sources.CounterGenerator"/>.</remarks>
internal static class CounterRandom
{
    private const uint MultiplierA = 0xD2511F53, MultiplierB = 0xCD9E8D57, WeylA = 0x9E3779B9, WeylB = 0xBB67AE85;
    private const int Rounds = 10;
    private const double Of53Bits = 1.0 / (1L << 53);

    /// <summary>Two numbers above 0 and below 1.</summary>
    /// <param name="seed">Which sequence.</param>
    /// <param name="draw">Which draw of it.</param>
    /// <param name="pair">Which pair of the draw.</param>
    /// <param name="first">The first of the two.</param>
    /// <param name="second">The second.</param>
    internal static void Pair(ulong seed, ulong draw, uint pair, out double first, out double second)
    {
        Block((uint)draw, (uint)(draw >> 32), pair, 0, (uint)seed, (uint)(seed >> 32), out uint a, out uint b, out uint c, out uint d);
        first = Between(a, b);
        second = Between(c, d);
    }

    /// <summary>Four words of 32 bits from a counter of four and a key of two.</summary>
    internal static void Block(uint c0, uint c1, uint c2, uint c3, uint k0, uint k1, out uint a, out uint b, out uint c, out uint d)
    {
        for (int round = 0; round < Rounds; round++)
        {
            ulong productA = (ulong)MultiplierA * c0, productB = (ulong)MultiplierB * c2;
            uint n0 = (uint)(productB >> 32) ^ c1 ^ k0, n2 = (uint)(productA >> 32) ^ c3 ^ k1;
            c0 = n0;
            c1 = (uint)productB;
            c2 = n2;
            c3 = (uint)productA;
            unchecked
            {
                k0 += WeylA;
                k1 += WeylB;
            }
        }

        a = c0;
        b = c1;
        c = c2;
        d = c3;
    }

    // 53 bits, in the middle of their interval: neither 0 nor 1.
    private static double Between(uint high, uint low) => (((((ulong)high << 32) | low) >> 11) + 0.5) * Of53Bits;
}
