namespace CamPower.Backup;

/// <summary>What ends a run on battery.</summary>
public enum BatteryRunEnd
{
    /// <summary>The last device is off.</summary>
    LastDeviceOff,

    /// <summary>The battery reaches its cut-off voltage.</summary>
    CutOff,

    /// <summary>The battery has given all its charge.</summary>
    Empty,
}
