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

    /// <summary>Whether the circuit has no operating point: the current is then what the loads ask for at the supply's voltage, and no
    /// cable carries it.</summary>
    public bool IsDemandOnly { get; }

    /// <summary>The current against what the output may carry all the time.</summary>
    public Judgment OfLimit => LimitOf(_output);

    /// <summary>The current against what the protective device of the output carries continuously in the air of its box; a judgment of
    /// nothing where it limits nothing, or no balance is known.</summary>
    /// <remarks>The margin is what the device no longer carries if the calculated rise of the temperature is a quarter larger, or its
    /// ambient curve is off by its band. A fuse of unstated re-rating is known near the reference temperature of its standard, and in
    /// colder air, where it carries no less. A condition that is stated to be shorter than the device takes to open is judged by that
    /// time.</remarks>
    public Judgment OfProtection => ProtectionOf(_output);

    internal double Amperes { get; }

    /// <summary>Whether its protective device is certain to open at the current, though nothing is wrong.</summary>
    internal bool OpensInService => OfProtection.IsViolated
        && _output.Protection!.MostFactorIn(_box.SupplyCelsius) is double factor
        && _output.Protection.OpeningAt(Amperes, factor).Verdict == OperatingVerdict.Operates;

    /// <summary>Condition and current in the invariant culture; never throws.</summary>
    public override string ToString() => FormattableString.Invariant($"{Condition}: {(IsDemandOnly ? "asked for " : "")}{Amperes:0.###} A");

    /// <summary>The current against what another output in its place may carry.</summary>
    internal Judgment LimitOf(BoxOutput output) =>
        Judgment.AtMost(Amperes, output.LimitAmperes, output.LimitAmperes, a => ElectricCurrent.FromAmperes(a));

    /// <summary>The current against what the device of another output in its place carries continuously.</summary>
    internal Judgment ProtectionOf(BoxOutput output)
    {
        if (output.Protection is not ProtectiveDevice device) return Judgment.Unknown("protective device");
        if (device.MostFactorIn(_box.SupplyCelsius) is not double factor)
        {
            return Judgment.Unknown($"what {device} carries at the temperature of the box");
        }

        if (IsDemandOnly) return default;
        double hotter = device.MostFactorIn(_box.SupplyCelsius + _box.UncertainKelvins) ?? factor,
            offCurve = Math.Max(0, factor - (device.Ambient?.Band ?? 0));
        Judgment judged = Against(device.CarriedAmperes(factor), device.CarriedAmperes(Math.Min(factor, Math.Min(hotter, offCurve))));
        if (judged.IsViolated) return WithinItsDuration(device, factor) ?? (EndsInTime(device, factor) ? judged : StartNotStated);
        if (device is Fuse fuse && !IsRated(fuse)) return Judgment.Unknown($"re-rating of {device}");
        return judged.Verdict == Verdict.Holds && device.Ambient is not null && _box.IsWarmerThanKnown
            ? Judgment.Unknown(BoxInCondition.InsideNotStated)
            : judged;
    }

    // A short condition against the time before which the device does not open, or that its I²t allows as an inrush; null where that is not
    // longer.
    private Judgment? WithinItsDuration(ProtectiveDevice device, double factor)
    {
        if (Condition.Duration is not Duration lasts) return null;
        Judgment pulse = device.JudgeInrush(Amperes, Amperes * Amperes * lasts.Seconds, factor);
        double byIntegral = pulse.Verdict is Verdict.Holds or Verdict.ThinMargin
            ? lasts.Seconds / ((Ratio)pulse.Value!).DecimalFractions
            : 0;
        double withstood = Math.Max(device.OpeningAt(Amperes, factor).EarliestSeconds, byIntegral);
        Judgment judged = Judgment.AtMost(lasts.Seconds, withstood, withstood, s => Duration.FromSeconds(s));
        return judged.IsViolated ? null : judged;
    }

    // A start lasts seconds: where it is not stated how many, only what opens the device for certain is known to open it.
    private bool EndsInTime(ProtectiveDevice device, double factor) => Condition.Duration is not null
        || !Condition.On.HasFlag(LoadComponents.StartUp) || device.OpeningAt(Amperes, factor).Verdict == OperatingVerdict.Operates;

    private Judgment StartNotStated => Judgment.Unknown($"duration of \"{Condition}\"");

    // In colder air than that of its tests a fuse carries no less than its rating.
    private bool IsRated(Fuse fuse) => !_box.IsInsideUnknown
        && (fuse.IsRatedIn(_box.SupplyCelsius) || _box.SupplyCelsius < fuse.Characteristic.ReferenceCelsius);

    private Judgment Against(double carried, double policy) => double.IsInfinity(carried)
        ? default
        : Judgment.AtMost(Amperes, carried, policy, a => ElectricCurrent.FromAmperes(a));
}
