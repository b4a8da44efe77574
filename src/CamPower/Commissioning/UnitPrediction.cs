namespace CamPower.Commissioning;

/// <summary>What a unit would read at each of its points with certain faults in it, and what becomes of its devices.</summary>
internal sealed class UnitPrediction(int points, int devices)
{
    /// <summary>The readings: see <see cref="UnitPoints"/>. [V, A or Ω]</summary>
    internal double[] Values { get; } = new double[points];

    /// <summary>Which of them jump about, because a device restarts or a supply pulses.</summary>
    internal bool[] IsLoose { get; } = new bool[points];

    /// <summary>What each device does without infrared.</summary>
    internal DeviceState[] ByDay { get; } = new DeviceState[devices];

    /// <summary>What each device does with infrared.</summary>
    internal DeviceState[] ByNight { get; } = new DeviceState[devices];

    /// <summary>Whether a shield of a device carries return current.</summary>
    internal bool[] HasShieldCurrent { get; } = new bool[devices];

    /// <summary>Whether infrared of a device is starved: its voltage is below what it accepts.</summary>
    internal bool[] IsDim { get; } = new bool[devices];
}
