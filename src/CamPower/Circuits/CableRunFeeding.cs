using System;
using UnitsNet;

namespace CamPower;

/// <summary>Asks a run what a load at its far end gets.</summary>
public static class CableRunFeeding
{
    /// <summary>The run at one conductor temperature, ready to be asked about many loads and voltages.</summary>
    /// <param name="run">The run.</param>
    /// <param name="conductorTemperature">Temperature of every conductor of the run, inside their materials' ranges.</param>
    /// <exception cref="ArgumentNullException"><paramref name="run"/> is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="conductorTemperature"/> is outside a material's range.</exception>
    public static PreparedRun At(this CableRun run, Temperature conductorTemperature) =>
        new(Require.NotNull(run, nameof(run)), run.CelsiusOf(conductorTemperature, nameof(conductorTemperature)));

    /// <summary>What a load at the far end of the run gets.</summary>
    /// <param name="run">The run.</param>
    /// <param name="load">The load.</param>
    /// <param name="from">Voltage at the source end, from 1 nV to 1 MV. [V]</param>
    /// <param name="conductorAt">Temperature of every conductor of the run, inside their materials' ranges.</param>
    /// <returns>The answer, also where the run cannot carry the load.</returns>
    /// <exception cref="ArgumentNullException">A reference is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    /// <example>250 ft of 18 AWG solid copper at 20 °C, 9 W and 12 V give 8.70 V at the load.</example>
    public static RunResult Feed(this CableRun run, Load load, ElectricPotential from, Temperature conductorAt) =>
        new PreparedRun(Require.NotNull(run, nameof(run)), run.CelsiusOf(conductorAt, nameof(conductorAt))).Feed(load, from);
}
