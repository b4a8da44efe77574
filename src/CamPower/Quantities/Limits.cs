using System;

namespace CamPower;

/// <summary>Whether a worked-out value is beyond a limit, and not only by the rounding of its last digits.</summary>
/// <remarks>Ten per cent above 12 V and 13.2 V are the same to everybody but a binary computer.</remarks>
internal static class Limits
{
    private const double Rounding = 1e-9;

    internal static bool IsAbove(double value, double limit) => value > limit + (Math.Abs(limit) * Rounding);

    internal static bool IsBelow(double value, double limit) => value < limit - (Math.Abs(limit) * Rounding);
}
