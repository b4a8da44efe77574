namespace CamPower.Commissioning;

/// <summary>The state that is brought about before a reading.</summary>
public enum ReadingState
{
    /// <summary>The box is off and unplugged, the wires are off its output, every device is unplugged, no jumper is on.</summary>
    Dead,

    /// <summary>As dead, with one plug or junction jumpered.</summary>
    FarEndJumpered,

    /// <summary>As dead, after the last jumper is removed again.</summary>
    JumperRemoved,

    /// <summary>The box is on, and nothing hangs on any output.</summary>
    Unloaded,

    /// <summary>The output is on, and every device on it is unplugged.</summary>
    DeviceUnplugged,

    /// <summary>Every device runs as it does by day: no illuminator, motor or heater is on.</summary>
    Running,

    /// <summary>Every device runs with its illuminators on, its light sensor being covered.</summary>
    InfraredForced,
}
