using System;
using System.Collections.Generic;

namespace CamPower.Faults;

#pragma warning disable MA0048 // A pole is held against the temperatures of each condition.

/// <summary>The temperatures of one condition as a fault finds them.</summary>
/// <param name="ConductorCelsius">Of the conductors, and of the air around them. [°C]</param>
/// <param name="DeviceCelsius">Of the air around the protective device; null where it is not known. [°C]</param>
internal readonly record struct FaultAir(double ConductorCelsius, double? DeviceCelsius);

/// <summary>One pole of the way to a fault: its resistance in each condition, and its conductors, each kind once.</summary>
internal sealed class FaultPole(double[] ohms, IReadOnlyList<LaidConductor> conductors)
{
    /// <summary>The pole of a fault behind the terminals, in so many conditions.</summary>
    internal static FaultPole AtTerminals(int conditions) => new(new double[conditions], []);

    internal IReadOnlyList<LaidConductor> Conductors => conductors;

    /// <summary>Its resistance in a condition, given by its place in the list. [Ω]</summary>
    internal double OhmsIn(int condition) => ohms[condition];

    /// <summary>The pole with one more part of a run at its end; a joint counts half in each pole.</summary>
    internal FaultPole Then(RunPart part, Func<Cable, Conductor> pole, InstallationMethod? installationMethod, IReadOnlyList<FaultAir> air)
    {
        if (part is not CableSegment segment) return new FaultPole(Plus(air, celsius => part.OhmsAt(celsius) / 2), conductors);
        double meters = segment.OneWayLength.Meters;
        if (!(meters > 0)) return this;
        Conductor conductor = pole(segment.Cable);
        return new FaultPole(Plus(air, celsius => meters * conductor.OhmsPerMeterAt(celsius)),
            LaidConductor.Joined(conductors, [new LaidConductor(conductor, segment.Cable.Insulation, installationMethod, meters)]));
    }

    private double[] Plus(IReadOnlyList<FaultAir> air, Func<double, double> more)
    {
        var sum = new double[ohms.Length];
        for (int i = 0; i < sum.Length; i++) sum[i] = ohms[i] + more(air[i].ConductorCelsius);
        return sum;
    }
}
