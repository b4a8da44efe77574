using System;

namespace CamPower;

/// <summary>What a device draws, as its papers say it: in shares, or as the total on its label.</summary>
/// <remarks>Immutable. The two kinds are <see cref="ComponentDraw"/> and <see cref="LabelDraw"/>; a converter has one of its own, and
/// nothing else can be one.</remarks>
public abstract class Draw
{
    private protected Draw()
    {
    }

    /// <summary>Whether it has a motor share that a condition may let move or not.</summary>
    public abstract bool HasMotor { get; }

    /// <summary>The least that it is known to draw: for voltage that is too high. A label promises no least draw.</summary>
    public abstract Load Lightest { get; }

    /// <summary>The load with the given shares on.</summary>
    /// <param name="shares">The shares that are on beside the base draw.</param>
    public abstract Load LoadWith(LoadComponents shares);

    /// <summary>The load in a condition with the given shares on.</summary>
    internal virtual Load LoadIn(Condition condition, LoadComponents shares) => LoadWith(shares);

    /// <summary>The load in a condition, its own motor moving if the condition's motors do.</summary>
    /// <param name="condition">The condition.</param>
    /// <exception cref="ArgumentNullException"><paramref name="condition"/> is null.</exception>
    public Load In(Condition condition) => LoadIn(Require.NotNull(condition, nameof(condition)), condition.On);
}
