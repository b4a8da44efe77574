#if NET
using System.Numerics;

#endif
namespace CamPower;

/// <summary>Products and differences of doubles whose rounding is given back, so that a small difference keeps its digits.</summary>
/// <remarks>Error-free transformations after Dekker (1971) and Ogita, Rump and Oishi (2005). Both target
/// frameworks give the same bits: the error of a product is exact in either.</remarks>
internal static class Exact
{
    /// <summary>a·b − c·d, within two units in the last place however much cancels.</summary>
    internal static double DifferenceOfProducts(double a, double b, double c, double d)
    {
        double left = a * b, right = c * d;
        return (left - right) + (ProductError(a, b, left) - ProductError(c, d, right));
    }

#if NET
    /// <summary>The same for each element: the same operations in the same order, so the same bits.</summary>
    internal static Vector<double> DifferenceOfProducts(
        Vector<double> a, Vector<double> b, Vector<double> c, Vector<double> d)
    {
        Vector<double> left = a * b, right = c * d;
        return (left - right) + (Vector.FusedMultiplyAdd(a, b, -left) - Vector.FusedMultiplyAdd(c, d, -right));
    }
#endif

    /// <summary>a − b·c with the rounding of the product given back.</summary>
    internal static double MinusProduct(double a, double b, double c)
    {
        double product = b * c;
        return (a - product) - ProductError(b, c, product);
    }

    private static double ProductError(double a, double b, double product)
    {
#if NET
        return System.Math.FusedMultiplyAdd(a, b, -product);
#else
        Split(a, out double aHigh, out double aLow);
        Split(b, out double bHigh, out double bLow);
        return ((aHigh * bHigh - product) + aHigh * bLow + aLow * bHigh) + aLow * bLow;
#endif
    }

#if !NET
    private static void Split(double x, out double high, out double low)
    {
        double scaled = 134217729.0 * x; // 2^27 + 1
        high = scaled - (scaled - x);
        low = x - high;
    }
#endif
}
