using System;

namespace CamPower;

/// <summary>The thing that a finding is about.</summary>
/// <remarks>Immutable.</remarks>
public sealed class Subject
{
    /// <summary>Names a thing.</summary>
    /// <param name="kind">Kind of thing.</param>
    /// <param name="name">Its name in the site. Not empty.</param>
    /// <exception cref="ArgumentNullException"><paramref name="name"/> is null.</exception>
    /// <exception cref="ArgumentException"><paramref name="name"/> is empty.</exception>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="kind"/> is not a defined value.</exception>
    public Subject(SubjectKind kind, string name)
    {
        Kind = Require.Known(kind, nameof(kind));
        Name = Require.Name(name, nameof(name));
    }

    /// <summary>Kind of thing.</summary>
    public SubjectKind Kind { get; }

    /// <summary>Its name in the site.</summary>
    public string Name { get; }

    /// <summary>A device.</summary>
    /// <param name="device">The device.</param>
    /// <exception cref="ArgumentNullException"><paramref name="device"/> is null.</exception>
    public static Subject Of(SiteDevice device) => new(SubjectKind.Device, Require.NotNull(device, nameof(device)).Name);

    /// <summary>A run.</summary>
    /// <param name="run">The run.</param>
    /// <exception cref="ArgumentNullException"><paramref name="run"/> is null.</exception>
    public static Subject Of(SiteRun run) => new(SubjectKind.Run, Require.NotNull(run, nameof(run)).ToString());

    /// <summary>A box or an adapter.</summary>
    /// <param name="box">The box.</param>
    /// <exception cref="ArgumentNullException"><paramref name="box"/> is null.</exception>
    public static Subject Of(DistributionBox box) => new(SubjectKind.Box, Require.NotNull(box, nameof(box)).Name);

    /// <summary>A receptacle that boxes are plugged into.</summary>
    /// <param name="receptacle">The receptacle.</param>
    /// <exception cref="ArgumentNullException"><paramref name="receptacle"/> is null.</exception>
    public static Subject Of(Receptacle receptacle) => new(SubjectKind.Receptacle, Require.NotNull(receptacle, nameof(receptacle)).Name);

    /// <summary>The circuit breaker of receptacles.</summary>
    /// <param name="breaker">The breaker.</param>
    /// <exception cref="ArgumentNullException"><paramref name="breaker"/> is null.</exception>
    public static Subject Of(CircuitBreaker breaker) => new(SubjectKind.Breaker, Require.NotNull(breaker, nameof(breaker)).Name);

    /// <summary>An uninterruptible supply before a box.</summary>
    /// <param name="supply">The uninterruptible supply.</param>
    /// <exception cref="ArgumentNullException"><paramref name="supply"/> is null.</exception>
    public static Subject Of(UninterruptibleSupply supply) =>
        new(SubjectKind.Uninterruptible, Require.NotNull(supply, nameof(supply)).Name);

    /// <summary>A cabinet.</summary>
    /// <param name="cabinet">The cabinet.</param>
    /// <exception cref="ArgumentNullException"><paramref name="cabinet"/> is null.</exception>
    public static Subject Of(Cabinet cabinet) => new(SubjectKind.Cabinet, Require.NotNull(cabinet, nameof(cabinet)).Name);

    /// <summary>An output of a box.</summary>
    /// <param name="box">The box.</param>
    /// <param name="output">The output.</param>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    public static Subject Of(DistributionBox box, BoxOutput output) => new(SubjectKind.Output,
        RunOrigin.NameOf(Require.NotNull(box, nameof(box)).Name, Require.NotNull(output, nameof(output)).Number));

    /// <summary>The name; never throws.</summary>
    public override string ToString() => Name;
}
