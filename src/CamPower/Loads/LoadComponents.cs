using System;

namespace CamPower;

/// <summary>The components of a device's draw that a condition turns on. The base draw is always on.</summary>
[Flags]
public enum LoadComponents
{
    /// <summary>The base draw alone.</summary>
    None = 0,

    /// <summary>Infrared or white-light illuminators.</summary>
    Infrared = 1,

    /// <summary>Pan, tilt, zoom or any other motor.</summary>
    Motor = 2,

    /// <summary>A window or housing heater.</summary>
    Heater = 4,

    /// <summary>Start-up: the draw above the base while it starts.</summary>
    StartUp = 8,
}
