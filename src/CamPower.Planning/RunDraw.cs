using System;
using System.Linq;

namespace CamPower.Planning;

/// <summary>What a run draws from its box in each condition, with its motor and with the motor at rest.</summary>
/// <param name="Amperes">With its motor moving. [A]</param>
/// <param name="AtRest">With its motor at rest. [A]</param>
internal sealed record RunDraw(double[] Amperes, double[] AtRest)
{
    internal bool IsLike(RunDraw other) => Amperes.SequenceEqual(other.Amperes) && AtRest.SequenceEqual(other.AtRest);

    /// <summary>Whether it is at least another in every condition.</summary>
    internal bool IsAtLeast(RunDraw other) =>
        Amperes.Zip(other.Amperes, (a, b) => a >= b).All(isMore => isMore)
        && AtRest.Zip(other.AtRest, (a, b) => a >= b).All(isMore => isMore);

    /// <summary>The most of two in every condition.</summary>
    internal RunDraw Most(RunDraw other) => new(
        [.. Amperes.Zip(other.Amperes, Math.Max)], [.. AtRest.Zip(other.AtRest, Math.Max)]);
}
