namespace CamPower;

/// <summary>Input stage of a device: it decides how the current depends on the voltage.</summary>
public enum InputStage
{
    /// <summary>Not known: the careful side is taken at each voltage.</summary>
    Unknown,

    /// <summary>A switching converter: constant power.</summary>
    Switching,

    /// <summary>A linear regulator: constant current.</summary>
    Linear,
}
