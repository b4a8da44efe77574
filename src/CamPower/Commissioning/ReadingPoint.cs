using System;
using System.Linq;
using CamPower.Sites;
using UnitsNet;

namespace CamPower.Commissioning;

/// <summary>What is read, where, and in which state.</summary>
/// <remarks>Immutable; two of the same kind, place and state are equal. Whether a site has the place is for the sheet to say.</remarks>
/// <example>
/// <code>
/// ReadingPoint volts = ReadingPoint.AtDevice(ReadingKind.PlugVoltage, "gate camera", ReadingState.Running);
/// ReadingPoint amperes = ReadingPoint.AtOutput(ReadingKind.OutputCurrent, "yard box", 3, ReadingState.Running);
/// </code>
/// </example>
public sealed class ReadingPoint : IEquatable<ReadingPoint>
{
    private ReadingPoint(ReadingKind kind, string name, int output, ReadingState state)
    {
        Kind = kind;
        Name = name;
        Output = output;
        State = Require.Known(state, nameof(state));
        if (!ReadingWords.Suits(kind, state))
        {
            throw new ArgumentException(
                $"There is no {ReadingWords.Of(kind)} in the state \"{ReadingWords.Of(state)}\".", nameof(state));
        }
    }

    /// <summary>What it is of.</summary>
    public ReadingKind Kind { get; }

    /// <summary>The name of the box, device or junction.</summary>
    public string Name { get; }

    /// <summary>The number of the output of the box; 0 where the reading is of none.</summary>
    public int Output { get; }

    /// <summary>The state that is brought about first.</summary>
    public ReadingState State { get; }

    /// <summary>Whether the reading is taken with the box off.</summary>
    public bool IsDead => State is ReadingState.Dead or ReadingState.FarEndJumpered or ReadingState.JumperRemoved;

    /// <summary>The kind in words: "plug voltage".</summary>
    public string What => ReadingWords.Of(Kind);

    /// <summary>The place in words: "gate camera", "yard box output 3".</summary>
    public string Where => Output > 0 ? RunOrigin.NameOf(Name, Output) : Name;

    /// <summary>Whether a site has the place; of an output, whether anything hangs on it.</summary>
    /// <param name="site">The site.</param>
    /// <exception cref="ArgumentNullException"><paramref name="site"/> is null.</exception>
    public bool IsOn(Site site)
    {
        SiteIndex index = Require.NotNull(site, nameof(site)).Index;
        return Kind switch
        {
            ReadingKind.SupplyVoltage => index.Box(Name) is not null,
            ReadingKind.PlugVoltage or ReadingKind.LoopResistance => index.Device(Name) is not null,
            ReadingKind.JunctionVoltage or ReadingKind.JunctionLoopResistance => index.RunTo(Name) != SiteIndex.None,
            _ => site.Feeds.SelectMany(g => g.Feeds).Any(IsAt),
        };
    }

    /// <summary>A voltage of a supply.</summary>
    /// <param name="box">Name of the box. Not empty.</param>
    /// <param name="state"><see cref="ReadingState.Unloaded"/>, <see cref="ReadingState.Running"/> or
    /// <see cref="ReadingState.InfraredForced"/>.</param>
    /// <exception cref="ArgumentNullException"><paramref name="box"/> is null.</exception>
    /// <exception cref="ArgumentException">The name is empty, or there is no such reading in that state.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The state is none of those there are.</exception>
    public static ReadingPoint AtSupply(string box, ReadingState state) =>
        new(ReadingKind.SupplyVoltage, Require.Name(box, nameof(box)), 0, state);

    /// <summary>A reading at an output: its voltage, its current, or the resistance of its pair.</summary>
    /// <param name="kind"><see cref="ReadingKind.OutputVoltage"/>, <see cref="ReadingKind.OutputCurrent"/> or
    /// <see cref="ReadingKind.PairResistance"/>.</param>
    /// <param name="box">Name of the box. Not empty.</param>
    /// <param name="output">Number of the output, from 1.</param>
    /// <param name="state">The state.</param>
    /// <exception cref="ArgumentNullException"><paramref name="box"/> is null.</exception>
    /// <exception cref="ArgumentException">The name is empty, the kind is of another place, or there is no such reading in that
    /// state.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The number is below 1, or the state is none of those there are.</exception>
    public static ReadingPoint AtOutput(ReadingKind kind, string box, int output, ReadingState state) => new(
        OneOf(kind, ReadingKind.OutputVoltage, ReadingKind.OutputCurrent, ReadingKind.PairResistance), Require.Name(box, nameof(box)),
        (int)Require.Within(output, 1, int.MaxValue, nameof(output), ""), state);

    /// <summary>A reading at the plug of a device: its voltage, or the loop with the plug jumpered.</summary>
    /// <param name="kind"><see cref="ReadingKind.PlugVoltage"/> or <see cref="ReadingKind.LoopResistance"/>.</param>
    /// <param name="device">Name of the device. Not empty.</param>
    /// <param name="state">The state.</param>
    /// <exception cref="ArgumentNullException"><paramref name="device"/> is null.</exception>
    /// <exception cref="ArgumentException">The name is empty, the kind is of another place, or there is no such reading in that
    /// state.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The state is none of those there are.</exception>
    public static ReadingPoint AtDevice(ReadingKind kind, string device, ReadingState state) =>
        new(OneOf(kind, ReadingKind.PlugVoltage, ReadingKind.LoopResistance), Require.Name(device, nameof(device)), 0, state);

    /// <summary>A reading at a junction: its voltage, or the loop with the junction jumpered.</summary>
    /// <param name="kind"><see cref="ReadingKind.JunctionVoltage"/> or <see cref="ReadingKind.JunctionLoopResistance"/>.</param>
    /// <param name="junction">Name of the junction. Not empty.</param>
    /// <param name="state">The state.</param>
    /// <exception cref="ArgumentNullException"><paramref name="junction"/> is null.</exception>
    /// <exception cref="ArgumentException">The name is empty, the kind is of another place, or there is no such reading in that
    /// state.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The state is none of those there are.</exception>
    public static ReadingPoint AtJunction(ReadingKind kind, string junction, ReadingState state) => new(
        OneOf(kind, ReadingKind.JunctionVoltage, ReadingKind.JunctionLoopResistance), Require.Name(junction, nameof(junction)), 0, state);

    /// <summary>Whether kind, place and state are the same.</summary>
    /// <param name="other">The other point, or null.</param>
    public bool Equals(ReadingPoint? other) => other is not null && Kind == other.Kind && Output == other.Output && State == other.State
        && string.Equals(Name, other.Name, StringComparison.Ordinal);

    /// <inheritdoc/>
    public override bool Equals(object? obj) => Equals(obj as ReadingPoint);

    /// <inheritdoc/>
    public override int GetHashCode() => (((((int)Kind * 31) + (int)State) * 31) + Output) ^ StringComparer.Ordinal.GetHashCode(Name);

    /// <summary>Kind, place and state in words: "plug voltage, gate camera, running"; never throws.</summary>
    public override string ToString() => $"{What}, {Where}, {ReadingWords.Of(State)}";

    /// <summary>Whether it is at an output.</summary>
    internal bool IsAt(OutputFeed feed) => feed.Output.Number == Output && string.Equals(feed.Box.Name, Name, StringComparison.Ordinal);

    /// <summary>A number as the quantity of this kind of reading.</summary>
    internal IQuantity QuantityOf(double value) => ReadingWords.UnitOf(Kind) switch
    {
        "A" => ElectricCurrent.FromAmperes(value),
        "Ω" => ElectricResistance.FromOhms(value),
        _ => ElectricPotential.FromVolts(value),
    };

    private static ReadingKind OneOf(ReadingKind kind, params ReadingKind[] kinds) => Array.IndexOf(kinds, kind) >= 0
        ? kind
        : throw new ArgumentException($"{Require.Known(kind, nameof(kind))} is not read there.", nameof(kind));
}
