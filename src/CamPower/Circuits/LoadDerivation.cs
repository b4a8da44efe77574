using static CamPower.DerivationStep;

namespace CamPower.Circuits;

/// <summary>Writes down what a load draws at its voltage, share by share.</summary>
internal static class LoadDerivation
{
    /// <summary>The current as the sum of the shares, or as the larger of two.</summary>
    internal static Symbols Current(Load load, double volts)
    {
        if (load.IsLargerOf)
        {
            return new Symbols("max(P/V, I0)", @"\max\left(\frac{P}{V}, I_0\right)", $"max({Number(load.Watts)}/{Number(volts)}, {Number(load.Amperes)})");
        }

        var shares = new SymbolSum();
        if (load.Watts > 0) shares.Plus(new Symbols("P/V", @"\frac{P}{V}", $"{Number(load.Watts)}/{Number(volts)}"));
        if (load.Amperes > 0) shares.Plus(new Symbols("I0", "I_0", Number(load.Amperes)));
        if (load.Siemens > 0) shares.Plus(new Symbols("G*V", "G V", $"{Number(load.Siemens)}*{Number(volts)}"));
        return shares.Total;
    }
}
