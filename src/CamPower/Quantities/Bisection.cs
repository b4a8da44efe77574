using System;

namespace CamPower;

/// <summary>Halves the way between a value for which a claim holds and one for which it does not.</summary>
internal static class Bisection
{
    /// <summary>The last value found for which a claim holds.</summary>
    /// <param name="holds">A value for which it holds; it is not asked of this one.</param>
    /// <param name="fails">A value, larger or smaller, for which it does not.</param>
    /// <param name="halvings">How many times the way between them is halved: 60 leave nothing but rounding.</param>
    /// <param name="claim">The claim; it changes from true to false once between the two.</param>
    internal static double LastHeld(double holds, double fails, int halvings, Func<double, bool> claim)
    {
        for (int halving = 0; halving < halvings; halving++)
        {
            double middle = (holds + fails) / 2;
            if (claim(middle)) holds = middle;
            else fails = middle;
        }

        return holds;
    }
}
