using System;
using UnitsNet;

namespace CamPower.Backup;

/// <summary>A device that drops out, or has less than it accepts, while its box runs on battery.</summary>
/// <remarks>Immutable.</remarks>
public sealed class BatteryDropOut
{
    internal BatteryDropOut(SiteDevice device, Condition condition, double seconds, bool comesBack)
    {
        Device = device;
        Condition = condition;
        Seconds = seconds;
        ComesBack = comesBack;
    }

    /// <summary>The device.</summary>
    public SiteDevice Device { get; }

    /// <summary>The condition in which that happens.</summary>
    public Condition Condition { get; }

    /// <summary>Time since the loss of the mains. [h]</summary>
    public Duration After => Duration.FromSeconds(Seconds);

    /// <summary>Whether the voltage rises above its turn-on voltage once it is off: it restarts and drops out again and again.</summary>
    public bool ComesBack { get; }

    internal double Seconds { get; }

    /// <summary>Device and time in the invariant culture; never throws.</summary>
    public override string ToString() =>
        FormattableString.Invariant($"{Device.Name} after {Seconds / Battery.SecondsAnHour:0.00} h{(ComesBack ? ", then restarts" : "")}");
}
