namespace CamPower.Commissioning;

/// <summary>What a unit would read at each of its points with certain faults in it, and what becomes of its devices.</summary>
internal sealed class UnitPrediction(int points, int devices)
{
    /// <summary>The readings: see <see cref="UnitPoints"/>. [V, A or Ω]</summary>
    internal double[] Values { get; } = new double[points];

    /// <summary>Which of them jump about, because a device restarts or a supply pulses.</summary>
    internal bool[] IsUnsteady { get; } = new bool[points];

    /// <summary>What each device does without infrared.</summary>
    internal DeviceState[] ByDay { get; } = new DeviceState[devices];

    /// <summary>What each device does with infrared.</summary>
    internal DeviceState[] ByNight { get; } = new DeviceState[devices];

    /// <summary>Whether a shield of a device carries return current.</summary>
    internal bool[] HasShieldCurrent { get; } = new bool[devices];

    /// <summary>Whether infrared of a device is starved: its voltage is below what it accepts.</summary>
    internal bool[] IsDim { get; } = new bool[devices];

    /// <summary>Lets every reading under load jump about, and every device that is up restart: the supply pulses.</summary>
    internal void MarkUnsteady()
    {
        for (int point = 0; point < IsUnsteady.Length; point++)
        {
            int ofOutput = point - (ByDay.Length * UnitPoints.OfDevice), atEnd = UnitPoints.AtEnd(ByDay.Length, point);
            bool isUnloaded = atEnd >= 0
                ? atEnd is UnitPoints.Loop or UnitPoints.Plug
                : ofOutput is UnitPoints.Insulation or UnitPoints.OutputUnplugged;
            IsUnsteady[point] = !isUnloaded;
        }

        foreach (DeviceState[] states in new[] { ByDay, ByNight })
        {
            for (int device = 0; device < states.Length; device++)
            {
                if (states[device] == DeviceState.Up) states[device] = DeviceState.Restarting;
            }
        }
    }
}
