using System;
using System.Numerics;

namespace CamPower.Tests.Circuits;

/// <summary>A number m·2^e of any size: sums and products of doubles without rounding, roots and quotients to some 90 decimal digits.</summary>
internal readonly struct Dyadic(BigInteger mantissa, int exponent)
{
    private const int Bits = 300;

    private readonly BigInteger _mantissa = mantissa;
    private readonly int _exponent = exponent;

    internal int Sign => _mantissa.Sign;

    /// <summary>Exactly the double.</summary>
    internal static Dyadic Of(double value)
    {
        long bits = BitConverter.DoubleToInt64Bits(value);
        int biased = (int)((bits >> 52) & 0x7FF);
        long fraction = bits & 0xFFFFFFFFFFFFF;
        Assert.NotEqual(0x7FF, biased);
        BigInteger mantissa = biased == 0 ? fraction : fraction | (1L << 52);
        return new Dyadic(bits < 0 ? -mantissa : mantissa, Math.Max(biased, 1) - 1075);
    }

    public static Dyadic operator +(Dyadic a, Dyadic b)
    {
        int exponent = Math.Min(a._exponent, b._exponent);
        return new Dyadic((a._mantissa << (a._exponent - exponent)) + (b._mantissa << (b._exponent - exponent)), exponent);
    }

    public static Dyadic operator -(Dyadic a) => new(-a._mantissa, a._exponent);

    public static Dyadic operator -(Dyadic a, Dyadic b) => a + -b;

    public static Dyadic operator *(Dyadic a, Dyadic b) => new(a._mantissa * b._mantissa, a._exponent + b._exponent);

    public static Dyadic operator /(Dyadic a, Dyadic b)
    {
        int shift = Bits + (int)Math.Max(0, (b._mantissa.IsZero ? throw new DivideByZeroException() : b.Length) - a.Length);
        return new Dyadic((a._mantissa << shift) / b._mantissa, a._exponent - shift - b._exponent);
    }

    /// <summary>The square root, by Newton's method on whole numbers.</summary>
    internal Dyadic Root()
    {
        if (_mantissa.IsZero) return this;
        int shift = 2 * Bits;
        if (((_exponent - shift) & 1) != 0) shift++;
        BigInteger n = _mantissa << shift;
        BigInteger root = BigInteger.One << (int)((n.GetBitLength() / 2) + 1);
        while (true)
        {
            BigInteger next = (root + (n / root)) >> 1;
            if (next >= root) return new Dyadic(root, (_exponent - shift) / 2);
            root = next;
        }
    }

    internal Dyadic Abs() => new(BigInteger.Abs(_mantissa), _exponent);

    /// <summary>A double that is right to a few units in the last place, for reporting and for ratios.</summary>
    internal double ToDouble()
    {
        int drop = (int)Math.Max(0, Length - 64);
        return Math.ScaleB((double)(_mantissa >> drop), _exponent + drop);
    }

    /// <summary>How far a double lies from this number, in units in the last place of the double.</summary>
    internal double UlpsFrom(double value) => ((Of(value) - this).Abs() / Of(Math.BitIncrement(Math.Abs(value)) - Math.Abs(value))).ToDouble();

    private long Length => _mantissa.GetBitLength();
}
