using System;
using System.Collections.Generic;
using CamPower.Conductors;
using UnitsNet;

namespace CamPower.Faults;

/// <summary>A conductor on the way to a fault, under its insulation, as it lies.</summary>
internal sealed class LaidConductor
{
    private readonly Conductor _conductor;
    private readonly Insulation? _insulation;
    private readonly InstallationMethod? _installationMethod;
    private readonly double _meters;

    // Thermal resistance of a meter to the air, as it lies and at worst; null where that is not known. [K·m/W]
    private readonly double? _theta, _worstTheta;

    /// <param name="conductor">The conductor.</param>
    /// <param name="insulation">Its insulation; null where it is not stated.</param>
    /// <param name="installationMethod">Its installation method; null where it is not stated.</param>
    /// <param name="meters">How long it is. [m]</param>
    internal LaidConductor(Conductor conductor, Insulation? insulation, InstallationMethod? installationMethod, double meters)
    {
        _meters = meters;
        _conductor = conductor;
        _insulation = insulation;
        _installationMethod = installationMethod?.Covers(conductor.Size) == true ? installationMethod : null;
        _theta = _installationMethod?.ThermalResistanceOf(conductor.Size);
        _worstTheta = _theta ?? (InstallationMethod.LargeBundle.Covers(conductor.Size)
            ? InstallationMethod.LargeBundle.ThermalResistanceOf(conductor.Size)
            : null);
        WithstandIntegral = insulation?.WithstandIntegral(conductor);
    }

    private LaidConductor(LaidConductor piece, double meters)
    {
        _meters = meters;
        _conductor = piece._conductor;
        _insulation = piece._insulation;
        _installationMethod = piece._installationMethod;
        _theta = piece._theta;
        _worstTheta = piece._worstTheta;
        WithstandIntegral = piece.WithstandIntegral;
    }

    /// <summary>The I²t that it withstands within the adiabatic time; null where the limit in a fault is not known. [A²·s]</summary>
    internal double? WithstandIntegral { get; }

    /// <summary>Data that a verdict on it needs and that is not stated.</summary>
    internal FaultData Missing => MissingOf(_conductor, _insulation, _installationMethod);

    /// <summary>What a verdict on a conductor would need and does not have.</summary>
    internal static FaultData MissingOf(Conductor conductor, Insulation? insulation, InstallationMethod? installationMethod) =>
        (insulation?.WithstandIntegral(conductor) is null ? FaultData.Insulation : FaultData.None)
        | (installationMethod?.Covers(conductor.Size) == true ? FaultData.None : FaultData.InstallationMethod);

    /// <summary>Conductors on one way, each kind once: alike pieces differ by their length alone, and one verdict holds for all of
    /// them.</summary>
    internal static IReadOnlyList<LaidConductor> Joined(IReadOnlyList<LaidConductor> way, IReadOnlyList<LaidConductor> more)
    {
        if (way.Count == 0) return more;
        List<LaidConductor> joined = [.. way];
        foreach (LaidConductor next in more)
        {
            int alike = joined.FindIndex(next.IsLike);
            if (alike < 0) joined.Add(next);
            else joined[alike] = new LaidConductor(next, joined[alike]._meters + next._meters);
        }

        return joined;
    }

    /// <summary>By how much a current raises its resistance in a time: by the harshest published installation method where none is
    /// stated, and without any heat that leaves it where none is published for its size. [Ω]</summary>
    internal double OhmsAdded(double amperes, double startCelsius, double seconds) =>
        _meters * _conductor.OhmsPerMeterPerKelvin * (CelsiusAfter(_worstTheta, seconds, amperes, startCelsius) - startCelsius);

    /// <summary>Whether it withstands a current that begins at a conductor temperature, in air of that temperature.</summary>
    /// <remarks>An I²t of at most k²S² is enough however long it takes, for heat that leaves only helps; past 5 s more of it goes to the
    /// heating model.</remarks>
    internal WithstandVerdict Of(FaultCase fault)
    {
        if (_insulation is null) return WithstandVerdict.Unknown;
        if (WithstandIntegral is double withstood)
        {
            if (fault.LetThrough <= withstood) return WithstandVerdict.Withstands;
            if (fault.IntegralTo(Math.Min(fault.EndSeconds, ConductorConstants.LongestAdiabatic.Value)) > withstood)
            {
                return WithstandVerdict.DoesNotWithstand;
            }
        }

        double hottest = CelsiusAfter(_theta, fault.EndSeconds, fault.HeatingAmperes, fault.StartCelsius);
        if (hottest <= _insulation.ServiceCelsius) return WithstandVerdict.Withstands;
        if (_insulation.FaultCelsius is not double limit) return WithstandVerdict.Unknown;
        if (hottest <= limit) return WithstandVerdict.HotterThanInService;
        return _installationMethod is null ? WithstandVerdict.Unknown : WithstandVerdict.DoesNotWithstand;
    }

    /// <summary>How warm it is in the end if nothing ever interrupts the fault; null where its installation method is not stated.</summary>
    internal SelfHeating? HeatOf(FaultCase fault) =>
        _installationMethod?.Heat(
            _conductor, ElectricCurrent.FromAmperes(fault.HeatingAmperes), Temperature.FromDegreesCelsius(fault.StartCelsius));

    private bool IsLike(LaidConductor other) =>
        ReferenceEquals(_conductor, other._conductor) && ReferenceEquals(_insulation, other._insulation)
        && ReferenceEquals(_installationMethod, other._installationMethod);

    // Without an installation method no heat leaves it, which is hotter than it gets; without a heat capacity it is where it settles.
    private double CelsiusAfter(double? theta, double seconds, double amperes, double startCelsius)
    {
        var balance = new HeatBalance(_conductor, theta ?? double.PositiveInfinity, startCelsius, amperes / _conductor.Count);
        return balance.CelsiusAfter(balance.HasCapacity ? seconds : double.PositiveInfinity, startCelsius);
    }
}
