using System;
using System.Collections.Generic;
using System.Linq;
using CamPower.Faults;
using UnitsNet;

namespace CamPower;

/// <summary>Faults of one run: a short at the terminals, at each joint and at the far end, and an overload.</summary>
/// <remarks>
/// Immutable. The current that the resistances let flow is V/R, with the source, the device and the run out and back in R; a short at a
/// joint lies before the joint's own resistance. Source: <see cref="Sources.Kirchhoff"/>. The supply then limits it, see
/// <see cref="OverloadBehavior"/>. In the first milliseconds its output capacitors discharge into the short through the device and the run
/// alone: V/R at first, C·V²/(2R) of I²t beside the steady current (<see cref="Sources.CapacitorDischarge"/>); what is inside of them, and
/// how much less they may hold than stated, is not known: they heat the conductors but never open a fuse for certain. A pulsed
/// current counts by its RMS where the device outlasts a pulse. The conductors warm while it lasts, which lowers the current: the device is
/// certain to open only if what is left then still opens it. Where the installation method of a cable is not stated, nothing that takes
/// longer than 5 s is certain. Not in it: the resistance of an arc. What is not stated is not guessed: the verdict is then "none", and
/// <see cref="Overcurrent.Missing"/> says what it would need.
/// <para>Faults start fires. A study on paper does not replace the local code and a licensed electrician.</para>
/// </remarks>
/// <example>
/// <code>
/// var study = new FaultStudy(run, supply, fuse, [winter, summer]);
/// ShortCircuit far = study.AtFarEnd;
/// if (far.Verdict != OperatingVerdict.Operates) Console.WriteLine($"The fuse {far.Opening}.");
/// </code>
/// </example>
public sealed class FaultStudy
{
    private readonly FaultSetting _setting;
    private readonly FaultLoop _wholeRun;

    /// <summary>Studies a run.</summary>
    /// <param name="run">The run; its cables say what their insulation is.</param>
    /// <param name="supply">The supply behind the fault. An alternating one counts by its RMS voltage, with resistance alone.</param>
    /// <param name="device">What is meant to interrupt it: <see cref="ProtectiveDevice.None"/> where there is nothing, null where it
    /// is not stated.</param>
    /// <param name="conditions">The temperatures of each condition, at least one: of the cable, inside the range of its materials, and in
    /// the box, around the device, inside the range of that. Seasons do not mix: each condition has its own.</param>
    /// <param name="installationMethod">Installation method of the run; null if not stated. Verdicts on faults longer than 5 s are then
    /// mostly unknown.</param>
    /// <exception cref="ArgumentNullException">A reference other than <paramref name="device"/> and <paramref name="installationMethod"/>
    /// is null.</exception>
    /// <exception cref="ArgumentException">There are no conditions.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A temperature is outside the range of a material or of the device.</exception>
    public FaultStudy(CableRun run, Supply supply, ProtectiveDevice? device, IEnumerable<Surroundings> conditions,
        InstallationMethod? installationMethod = null)
    {
        Run = Require.NotNull(run, nameof(run));
        Supply = Require.NotNull(supply, nameof(supply));
        Conditions = Require.Items(conditions, nameof(conditions));
        if (Conditions.Count == 0) throw new ArgumentException("A study needs at least one condition.", nameof(conditions));
        Device = device;
        InstallationMethod = installationMethod;
        foreach (Surroundings condition in Conditions)
        {
            run.CelsiusOf(condition.Cable, nameof(conditions));
            device?.CurrentFactorAt(condition.Box, nameof(conditions));
        }

        FaultAir[] air = [.. Conditions.Select(c => new FaultAir(c.CableCelsius, c.BoxCelsius)).Distinct()];
        _setting = new FaultSetting(supply.Output, device, air);
        FaultLoop terminals = FaultLoop.AtTerminals(air.Length);
        var loops = new RunLoops(terminals, run, installationMethod, air);
        _wholeRun = loops.End.EndingAt("far end");
        FaultLoop[] places = [terminals.EndingAt(terminals.Place, loops.FirstPiece), .. loops.Within(), _wholeRun];
        Shorts = Array.AsReadOnly(Array.ConvertAll(places, place => new ShortCircuit(place, _setting)));
    }

    /// <summary>The run.</summary>
    public CableRun Run { get; }

    /// <summary>The supply behind the fault.</summary>
    public Supply Supply { get; }

    /// <summary>What is meant to interrupt it, or null where it is not stated.</summary>
    public ProtectiveDevice? Device { get; }

    /// <summary>The temperatures of each condition.</summary>
    public IReadOnlyList<Surroundings> Conditions { get; }

    /// <summary>How the run lies, or null where it is not stated.</summary>
    public InstallationMethod? InstallationMethod { get; }

    /// <summary>A short at each place, from the terminals to the far end.</summary>
    public IReadOnlyList<ShortCircuit> Shorts { get; }

    /// <summary>A short at the terminals, behind the protective device.</summary>
    public ShortCircuit AtTerminals => Shorts[0];

    /// <summary>Short with the smallest current: the protective device operates last at it, or not at all.</summary>
    public ShortCircuit Weakest => ShortCircuit.WeakestOf(Shorts);

    /// <summary>What a verdict that is not given would need; what could be narrowed.</summary>
    public FaultData Missing => ShortCircuit.MissingOf(Shorts);

    /// <summary>A short at the far end, where the camera is.</summary>
    public ShortCircuit AtFarEnd => Shorts[Shorts.Count - 1];

    /// <summary>What more current than there should be does, drawn at the far end: a multiple of an output's limit, say.</summary>
    /// <param name="current">The current that is drawn, above 0; RMS where it alternates or pulses. [A]</param>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="current"/> is not above 0, or not finite.</exception>
    /// <example><code>Overload overload = study.OverloadOf(2.1 * output.Limit);</code></example>
    public Overload OverloadOf(ElectricCurrent current) =>
        new(Require.Positive(current.Amperes, nameof(current), "A"), _wholeRun, _setting);

    /// <summary>Every short on a line of its own, in the invariant culture; never throws.</summary>
    public override string ToString() => string.Join("\n", Shorts);
}
