using static CamPower.DerivationStep;

namespace CamPower.Circuits;

/// <summary>Writes down what a load draws at its voltage, share by share.</summary>
internal static class LoadDerivation
{
    /// <summary>The current as the sum of the components, or as the larger of two.</summary>
    /// <param name="load">The load.</param>
    /// <param name="volts">Its voltage. [V]</param>
    /// <param name="of">Index of the load among several; empty for the only one.</param>
    internal static Symbols Current(Load load, double volts, string of = "")
    {
        string v = RunDerivation.Latex("V", of);
        if (load.IsLargerOf)
        {
            return new Symbols($"max(P/V{of}, I0)", $@"\max\left(\frac{{P}}{{{v}}}, I_0\right)",
                $"max({Number(load.Watts)}/{Number(volts)}, {Number(load.Amperes)})");
        }

        var components = new SymbolSum();
        if (load.Watts > 0) components.Plus(new Symbols($"P/V{of}", $@"\frac{{P}}{{{v}}}", $"{Number(load.Watts)}/{Number(volts)}"));
        if (load.Amperes > 0) components.Plus(new Symbols("I0", "I_0", Number(load.Amperes)));
        if (load.Siemens > 0) components.Plus(new Symbols($"G*V{of}", $"G {v}", $"{Number(load.Siemens)}*{Number(volts)}"));
        return components.Total;
    }
}
