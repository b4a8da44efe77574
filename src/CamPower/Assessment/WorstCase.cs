using System;

namespace CamPower.Assessment;

/// <summary>The worst of several answers: the first that none of the others is worse than.</summary>
internal static class WorstCase
{
    internal static T Of<T>(T[] answers, Func<T, T, bool> isWorse)
    {
        T worst = answers[0];
        foreach (T candidate in answers)
        {
            if (isWorse(candidate, worst)) worst = candidate;
        }

        return worst;
    }
}
