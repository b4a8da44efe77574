using System;
using System.Collections.Generic;
using System.Linq;
using System.Threading;
using CamPower.Sites;
using UnitsNet;

namespace CamPower.Tolerance;

/// <summary>What the uncertain parts of a site do to its voltages and currents.</summary>
/// <remarks>
/// Immutable. Every device is taken to draw what the condition asks for, down to any voltage, and every box to hold its voltage within its
/// tolerance; the air around protective devices is that around their box. Alternating supplies are solved with RMS magnitudes at unity
/// power factor.
/// </remarks>
/// <example>
/// <code>
/// var study = new ToleranceStudy(site, SiteTolerance.Standard);
/// UncertainValue atGate = study.DeviceVoltage("gate camera", night);
/// Console.WriteLine($"{atGate.Lowest} to {atGate.Highest}, most of it from {atGate.Shares[0]}");
/// Console.WriteLine(study.BelowWindow("gate camera", night));   // 0.031 % ± 0.0056 %
/// </code>
/// </example>
public sealed class ToleranceStudy
{
    private const int MostDraws = 100_000_000;

    private readonly UncertainParts _parts;

    /// <summary>Studies a site.</summary>
    /// <param name="site">The site.</param>
    /// <param name="tolerance">How uncertain its parts are.</param>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    public ToleranceStudy(Site site, SiteTolerance tolerance)
    {
        Site = Require.NotNull(site, nameof(site));
        Tolerance = Require.NotNull(tolerance, nameof(tolerance));
        _parts = new UncertainParts(site, tolerance);
    }

    /// <summary>The site.</summary>
    public Site Site { get; }

    /// <summary>How uncertain its parts are.</summary>
    public SiteTolerance Tolerance { get; }

    /// <summary>The voltage at a device while everything draws that the condition asks for. [V]</summary>
    /// <param name="device">Name of the device.</param>
    /// <param name="condition">The condition; the site need not have it.</param>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    /// <exception cref="ArgumentException">The site has no such device.</exception>
    public UncertainValue DeviceVoltage(string device, Condition condition)
    {
        (UncertainCircuit circuit, int place) = CircuitOf(device, Require.NotNull(condition, nameof(condition)));
        var corners = WorstCorners.Of(circuit);
        var volts = new double[circuit.Loads.Length];
        return UncertainValue.Of(_parts, circuit.Relevant, CircuitSensitivity.Of(circuit, _parts.Expected).VoltsPerPart[place],
            x => circuit.TrySolve(x, circuit.Loads, volts) ? volts[place] : null,
            (corners.LowestVolts[place], corners.HighestVolts[place], corners.IsProven), v => ElectricPotential.FromVolts(v));
    }

    /// <summary>The current of an output while everything draws that the condition asks for. [A]</summary>
    /// <param name="box">Name of the box.</param>
    /// <param name="output">Number of the output.</param>
    /// <param name="condition">The condition; the site need not have it.</param>
    /// <remarks>Its highest is infinite where a corner has no operating point: no cable carries what the loads ask for.</remarks>
    /// <exception cref="ArgumentNullException">A reference is null.</exception>
    /// <exception cref="ArgumentException">The site has no such box, or nothing hangs on the output.</exception>
    public UncertainValue OutputCurrent(string box, int output, Condition condition)
    {
        DistributionBox named = Site.BoxNamed(box, nameof(box));
        Require.NotNull(condition, nameof(condition));
        foreach (FeedGroup group in Site.Feeds)
        {
            int feed = 0;
            while (feed < group.Feeds.Count && !(group.Feeds[feed].Box == named && group.Feeds[feed].Output.Number == output)) feed++;
            if (feed < group.Feeds.Count) return CurrentOf(UncertainCircuit.Of(group, _parts, condition), feed);
        }

        throw new ArgumentException(FormattableString.Invariant($"Nothing hangs on output {output} of {box}."), nameof(output));
    }

    /// <summary>The probability that a device gets less than the lowest voltage that it accepts, or that its circuit has no operating
    /// point.</summary>
    /// <param name="device">Name of the device.</param>
    /// <param name="condition">The condition; the site need not have it.</param>
    /// <param name="draws">How many draws where it is not integrated, from 1000 to 100 million.</param>
    /// <param name="seed">Which random numbers: the same seed gives the same bits at any number of threads.</param>
    /// <param name="cancellationToken">Cancels it.</param>
    /// <returns>Integrated where at most three parts are uncertain and lower the voltage one way, otherwise drawn.</returns>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    /// <exception cref="ArgumentException">The site has no such device, or the device does not accept its supply's kind of
    /// current.</exception>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="draws"/> is outside its range.</exception>
    /// <exception cref="OperationCanceledException">It was canceled.</exception>
    public ProbabilityEstimate BelowWindow(
        string device, Condition condition, int draws = 100_000, long seed = 1, CancellationToken cancellationToken = default)
    {
        Require.Within(draws, 1000, MostDraws, nameof(draws), "");
        (UncertainCircuit circuit, int place) = CircuitOf(device, Require.NotNull(condition, nameof(condition)));
        if (circuit.Group.Devices[place].Accepted is not VoltageRange accepted)
        {
            throw new ArgumentException($"{device} does not accept its supply's kind of current.", nameof(device));
        }

        return BelowProbability.Of(circuit, place, accepted.LowestVolts, draws, unchecked((ulong)seed), cancellationToken);
    }

    /// <summary>The site; never throws.</summary>
    public override string ToString() => $"{Site} with {Tolerance}";

    private UncertainValue CurrentOf(UncertainCircuit circuit, int feed)
    {
        var corners = WorstCorners.Of(circuit);
        var volts = new double[circuit.Loads.Length];
        return UncertainValue.Of(_parts, circuit.Relevant, CircuitSensitivity.Of(circuit, _parts.Expected).AmperesPerPart[feed],
            x => circuit.TrySolve(x, circuit.Loads, volts) ? circuit.FeedAmperes(feed, x, circuit.Loads, volts) : null,
            (corners.LowestAmperes[feed], corners.HighestAmperes[feed], corners.IsProven), a => ElectricCurrent.FromAmperes(a));
    }

    private (UncertainCircuit Circuit, int Place) CircuitOf(string device, Condition condition)
    {
        SiteDevice named = Site.Index.Device(Require.Name(device, nameof(device)))
            ?? throw new ArgumentException($"The site {Site.Name} has no device named {device}.", nameof(device));
        foreach (FeedGroup group in Site.Feeds)
        {
            for (int i = 0; i < group.Devices.Count; i++)
            {
                if (ReferenceEquals(group.Devices[i].Device, named)) return (UncertainCircuit.Of(group, _parts, condition), i);
            }
        }

        throw new ArgumentException($"No output feeds {device}.", nameof(device));
    }
}
