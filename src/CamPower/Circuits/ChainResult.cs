using System;
using System.Collections.Generic;
using System.Globalization;
using System.Linq;
using CamPower.Circuits;
using UnitsNet;

namespace CamPower;

/// <summary>Voltages and currents of a chain of cameras, with the question that was asked.</summary>
/// <remarks>Immutable. A pair that cannot carry all its cameras is a result too: <see cref="HasOperatingPoint"/> is false,
/// <see cref="MarginToCollapse"/> says how much less they would have to draw, and reading a voltage throws.
/// Source: <see cref="Sources.Kirchhoff"/>.</remarks>
public sealed class ChainResult
{
    private readonly ChainTap[]? _taps;
    private readonly double _sourceVolts, _celsius;

    internal ChainResult(CameraChain chain, double sourceVolts, double celsius)
    {
        Chain = chain;
        _sourceVolts = sourceVolts;
        _celsius = celsius;
        _taps = Solved();
    }

    /// <summary>The chain that was asked about.</summary>
    public CameraChain Chain { get; }

    /// <summary>Voltage at the source end. [V]</summary>
    public ElectricPotential SourceVoltage => ElectricPotential.FromVolts(_sourceVolts);

    /// <summary>Temperature of the conductors that was asked about. [°C]</summary>
    public Temperature ConductorTemperature => Temperature.FromDegreesCelsius(_celsius);

    /// <summary>Whether the pair can carry all its cameras.</summary>
    public bool HasOperatingPoint => _taps is not null;

    /// <summary>What each camera gets, in order from the source.</summary>
    /// <exception cref="InvalidOperationException">There is no operating point.</exception>
    public IReadOnlyList<ChainTap> Taps => Array.AsReadOnly(Solution);

    /// <summary>Current that the source delivers. [A]</summary>
    /// <exception cref="InvalidOperationException">There is no operating point.</exception>
    public ElectricCurrent TotalCurrent => ElectricCurrent.FromAmperes(TotalAmperes);

    /// <summary>Power that the source delivers. [W]</summary>
    /// <exception cref="InvalidOperationException">There is no operating point.</exception>
    public Power SourcePower => Power.FromWatts(_sourceVolts * TotalAmperes);

    /// <summary>Power that the cameras take together. [W]</summary>
    /// <exception cref="InvalidOperationException">There is no operating point.</exception>
    public Power LoadPower => Power.FromWatts(Solution.Sum(t => t.Volts * t.LoadAmperes));

    /// <summary>Power lost in the pair. [W]</summary>
    /// <exception cref="InvalidOperationException">There is no operating point.</exception>
    public Power Loss => Power.FromWatts(Solution.Sum(t => t.SegmentAmperes * t.SegmentAmperes * t.Link.Run.OhmsAt(_celsius)));

    /// <summary>The factor by which the constant-power components of all cameras together could grow before no operating point is
    /// left; null where nothing can collapse. [1]</summary>
    /// <remarks>1 at the limit, less than 1 beyond it, 0 where the other components alone leave no operating point; see
    /// <see cref="DcNetwork.MarginToCollapse"/>, which finds it.</remarks>
    public Ratio? MarginToCollapse
    {
        get
        {
            const string back = "return";
            DcNetworkBuilder network = new DcNetworkBuilder().AddSource("source", Node(0), back, SourceVoltage);
            for (int k = 0; k < Chain.Links.Count; k++)
            {
                network.AddBranch("cable "
                    + Node(k + 1), Node(k), Node(k + 1), ElectricResistance.FromOhms(Chain.Links[k].Run.OhmsAt(_celsius)));
                network.AddLoad("camera " + Node(k + 1), Node(k + 1), back, Chain.Links[k].Load);
            }

            return network.Build(back).MarginToCollapse();

            static string Node(int number) => number.ToString(CultureInfo.InvariantCulture);
        }
    }

    internal double SourceVolts => _sourceVolts;

    internal double ConductorCelsius => _celsius;

    internal double TotalAmperes => Solution[0].SegmentAmperes;

    private ChainTap[] Solution => _taps ?? throw new InvalidOperationException(
        "The chain has no operating point: the pair cannot carry all its cameras. Ask HasOperatingPoint first.");

    /// <summary>The voltage along the whole pair.</summary>
    /// <exception cref="InvalidOperationException">There is no operating point.</exception>
    public VoltageProfile Profile() => new(_sourceVolts, Solution.SelectMany(
        t => t.Link.Run.Parts.Select(p => (p, p.OhmsAt(_celsius) * t.SegmentAmperes))));

    /// <summary>How the answer can be checked, step by step: Kirchhoff's laws at every camera.</summary>
    public Derivation Explain() => ChainDerivation.Of(this);

    /// <summary>The cameras' voltages in order, in the invariant culture; never throws.</summary>
    public override string ToString() => _taps is null
        ? FormattableString.Invariant($"no operating point from {_sourceVolts:0.###} V")
        : FormattableString.Invariant($"{TotalAmperes:0.###} A from {_sourceVolts:0.###} V; ")
            + string.Join("; ", _taps.Select(t => t.ToString()));

    private ChainTap[]? Solved()
    {
        int count = Chain.Links.Count;
        double[] ohms = [.. Chain.Links.Select(l => l.Run.OhmsAt(_celsius))], volts = new double[count];
        Load[] loads = [.. Chain.Links.Select(l => l.Load)];
        if (!RadialKernel.TrySolve([.. Enumerable.Range(-1, count)], ohms, loads, _sourceVolts, volts)) return null;

        // Each length carries its own camera and everything behind it.
        var amperes = new double[count];
        for (int k = count - 1; k >= 0; k--) amperes[k] = loads[k].AmperesAt(volts[k]) + (k + 1 < count ? amperes[k + 1] : 0);

        var taps = new ChainTap[count];
        double meters = 0, dropped = 0;
        for (int k = 0; k < count; k++)
        {
            meters += Chain.Links[k].Run.OneWayMeters;
            dropped += amperes[k] * ohms[k];
            taps[k] = new ChainTap(Chain.Links[k], meters, volts[k], amperes[k], dropped);
        }

        return taps;
    }
}
