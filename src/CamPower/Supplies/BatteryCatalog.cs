using System;
using System.Collections.Generic;
using System.Linq;
using CamPower.Supplies;
using UnitsNet;

namespace CamPower;

/// <summary>Batteries to choose from. A catalog is any list of batteries: make one of what your wholesaler has.</summary>
public static class BatteryCatalog
{
    /// <summary>Typical 12 V valve-regulated lead-acid batteries from 7 Ah to 100 Ah at the 20-hour rate.</summary>
    /// <remarks>Resistances are rounded, typical, from memory, no source: use those of the data sheet at hand.</remarks>
    public static IReadOnlyList<Battery> Generic12Volt { get; } = Array.AsReadOnly(
        [.. new (double AmpereHours, double Milliohms)[] { (7, 25), (12, 18), (18, 14), (26, 11), (40, 8), (65, 6), (100, 4.5) }
            .Select(x => LeadAcid(x.AmpereHours, x.Milliohms))]);

    private static Battery LeadAcid(double ampereHours, double milliohms) => new(FormattableString.Invariant($"12 V, {ampereHours} Ah"),
        BatteryChemistry.ValveRegulatedLeadAcid, cells: 6, ElectricCharge.FromAmpereHours(ampereHours), Duration.FromHours(20),
        ElectricResistance.FromMilliohms(milliohms));
}
