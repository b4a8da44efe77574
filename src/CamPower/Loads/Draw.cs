using System;

namespace CamPower;

/// <summary>Draw of a device as its data sheet or label states it: by components, or as one total.</summary>
/// <remarks>Immutable. The two kinds are <see cref="ComponentDraw"/> and <see cref="LabelDraw"/>; a converter has one of its own, and
/// nothing else can be one.</remarks>
public abstract class Draw
{
    private protected Draw()
    {
    }

    /// <summary>Whether it has a motor component that a condition may let move or not.</summary>
    public abstract bool HasMotor { get; }

    /// <summary>Smallest known load. It is used to check for too much voltage. A label promises no least draw.</summary>
    public abstract Load Lightest { get; }

    /// <summary>The load with the given components on.</summary>
    /// <param name="components">The components that are on beside the base draw.</param>
    public abstract Load LoadWith(LoadComponents components);

    /// <summary>The load in a condition with the given components on.</summary>
    internal virtual Load LoadIn(Condition condition, LoadComponents components) => LoadWith(components);

    /// <summary>The load in a condition, its own motor moving if the condition's motors do.</summary>
    /// <param name="condition">The condition.</param>
    /// <exception cref="ArgumentNullException"><paramref name="condition"/> is null.</exception>
    public Load In(Condition condition) => LoadIn(Require.NotNull(condition, nameof(condition)), condition.On);
}
