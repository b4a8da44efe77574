using CamPower.Sites;
using UnitsNet;

namespace CamPower.Tests.Verdicts;

/// <summary>A cable and the device at its end: a 12 V camera of 3.5 W, 6 W with infrared, on 20 m of 18 AWG, everything
/// declared.</summary>
internal sealed record Drop
{
    internal string Name { get; init; } = "camera 1";

    internal string Box { get; init; } = "box";

    internal int Output { get; init; } = 1;

    /// <summary>The drop at whose end this cable begins; null where it begins at the output.</summary>
    internal string? Behind { get; init; }

    /// <summary>The drop at whose end its negative joins another; null where it comes back along its own.</summary>
    internal string? ReturnsAt { get; init; }

    internal double Meters { get; init; } = 20;

    internal Cable Cable { get; init; } = Parts.Pair(18);

    internal double JointOhms { get; init; }

    internal InstallationMethod? InstallationMethod { get; init; } = Parts.InItsOwnCable;

    internal DeviceKind Kind { get; init; } = DeviceKind.Camera;

    internal Load Base { get; init; } = Load.ConstantPower(Power.FromWatts(3.5));

    internal Load Infrared { get; init; } = Load.ConstantPower(Power.FromWatts(2.5));

    internal Load? Motor { get; init; }

    internal Load? Heater { get; init; }

    internal Load? StartUp { get; init; }

    internal (double Lowest, double Highest)? Accepts { get; init; } = (10.8, 13.2);

    internal (double Lowest, double Highest)? AcceptsAc { get; init; }

    internal AcStage? AcStage { get; init; } = AcStage.Resistive;

    internal (double TurnOn, double DropOut)? Starts { get; init; } = (9.5, 8.5);

    internal bool? SoftStart { get; init; } = true;

    internal double? DelaySeconds { get; init; }

    internal Connector? Plug { get; init; }

    internal Inrush? Inrush { get; init; } = new(ElectricCurrent.FromAmperes(1.2), JouleIntegral.FromAmpereSquaredSeconds(0.003));

    internal double? HoldUpMilliseconds { get; init; }

    internal Inrush? SwitchedInrush { get; init; }

    internal bool LeadsReversed { get; init; }

    internal string Place => $"{Name} place";

    internal string RunName => $"{Box} output {Output} to {Place}";

    internal Drop Drawing(double amperes) =>
        this with { Base = Load.ConstantCurrent(ElectricCurrent.FromAmperes(amperes)), Infrared = Load.None };

    internal Drop OfWatts(double watts) => this with { Base = Load.ConstantPower(Power.FromWatts(watts)), Infrared = Load.None };

    internal SiteRun ToRun()
    {
        var segment = new CableSegment(Cable, Length.FromMeters(Meters));
        CableRun run = JointOhms > 0
            ? new CableRun(segment, new Joint("splice", ElectricResistance.FromOhms(JointOhms))) : new CableRun(segment);
        return new SiteRun(Behind is null ? RunOrigin.Output(Box, Output) : RunOrigin.Junction($"{Behind} place"), Place, run,
            returnAt: ReturnsAt is null ? null : $"{ReturnsAt} place", installationMethod: InstallationMethod);
    }

    internal SiteDevice ToDevice() =>
        new(Name, new Device($"model of {Name}", Kind, new ComponentDraw(Base, Infrared, Motor, Heater, StartUp),
        Range(Accepts), Range(AcceptsAc), Starting(), Plug, Inrush, SwitchedInrush, AcStage), Place, LeadsReversed);

    private Starting? Starting() => Starts is { } starts
        ? new Starting(ElectricPotential.FromVolts(starts.TurnOn), ElectricPotential.FromVolts(starts.DropOut), SoftStart,
            delay: DelaySeconds is double delay ? Duration.FromSeconds(delay) : null,
            holdUp: HoldUpMilliseconds is double held ? Duration.FromMilliseconds(held) : null)
        : null;

    private static VoltageRange? Range((double Lowest, double Highest)? volts) => volts is { } range
        ? new VoltageRange(ElectricPotential.FromVolts(range.Lowest), ElectricPotential.FromVolts(range.Highest))
        : null;
}
