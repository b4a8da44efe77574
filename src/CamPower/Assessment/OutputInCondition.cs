using System;
using CamPower.Protection;
using UnitsNet;

namespace CamPower;

/// <summary>The current of one output in one condition.</summary>
/// <remarks>Immutable.</remarks>
public sealed class OutputInCondition
{
    private readonly BoxOutput _output;
    private readonly BoxInCondition _box;

    internal OutputInCondition(BoxOutput output, BoxInCondition box, double amperes, bool isDemandOnly)
    {
        _output = output;
        _box = box;
        Amperes = amperes;
        IsDemandOnly = isDemandOnly;
    }

    /// <summary>The condition.</summary>
    public Condition Condition => _box.Condition;

    /// <summary>The current with everything on the output drawing; what its loads ask for where <see cref="IsDemandOnly"/>. [A]</summary>
    public ElectricCurrent Current => ElectricCurrent.FromAmperes(Amperes);

    /// <summary>Whether the circuit has no operating point: the current is then what the loads ask for at the supply's voltage, and no cable carries it.</summary>
    public bool IsDemandOnly { get; }

    /// <summary>The current against what the output may carry all the time.</summary>
    public Judgment OfLimit => LimitOf(_output);

    /// <summary>The current against what the protective device of the output carries for good in the air of its box; a judgment of nothing where it limits nothing.</summary>
    /// <remarks>Where the temperature inside was calculated the margin is what the device no longer carries if the rise is a quarter larger.</remarks>
    public Judgment OfProtection => ProtectionOf(_output);

    internal double Amperes { get; }

    /// <summary>Condition and current in the invariant culture; never throws.</summary>
    public override string ToString() => FormattableString.Invariant($"{Condition}: {(IsDemandOnly ? "asked for " : "")}{Amperes:0.###} A");

    /// <summary>The current against what another output in its place may carry.</summary>
    internal Judgment LimitOf(BoxOutput output) =>
        Judgment.AtMost(Amperes, output.LimitAmperes, output.LimitAmperes, a => ElectricCurrent.FromAmperes(a));

    /// <summary>The current against what the device of another output in its place carries for good.</summary>
    internal Judgment ProtectionOf(BoxOutput output)
    {
        if (output.Protection is not ProtectiveDevice device) return Judgment.Unknown("what protects the output");
        if (device.Ambient is null) return Against(device.CarriedAmperes(1), device.CarriedAmperes(1));
        double? carried = Carried(device, _box.SupplyCelsius), hotter = Carried(device, _box.SupplyCelsius + _box.UncertainKelvins);
        if (carried is not double most) return Judgment.Unknown("what the protective device carries in such air");
        Judgment judged = Against(most, Math.Min(most, hotter ?? most));
        return judged.Verdict == Verdict.Holds && _box.IsWarmerThanKnown ? Judgment.Unknown(BoxInCondition.InsideNotStated) : judged;
    }

    // Hotter than its curve goes a device carries at most what it does at the end of it.
    private static double? Carried(ProtectiveDevice device, double celsius) =>
        device.Ambient!.MostFactorAt(celsius) is double factor ? device.CarriedAmperes(factor) : null;

    private Judgment Against(double carried, double policy) => double.IsInfinity(carried)
        ? default
        : Judgment.AtMost(Amperes, carried, policy, a => ElectricCurrent.FromAmperes(a));
}
