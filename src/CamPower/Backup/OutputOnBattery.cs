using System;
using CamPower.Supplies;
using UnitsNet;

namespace CamPower.Backup;

/// <summary>An output while its box runs on battery: the most that it carries, for devices of constant power draw more as the voltage
/// falls.</summary>
/// <remarks>Immutable.</remarks>
public sealed class OutputOnBattery
{
    private readonly double _amperes, _carried, _mayOpen;

    private OutputOnBattery(BoxOutput output, double amperes, double carried, double mayOpen, Condition? condition)
    {
        Output = output;
        Condition = condition;
        _amperes = amperes;
        _carried = carried;
        _mayOpen = mayOpen;
    }

    /// <summary>The output.</summary>
    public BoxOutput Output { get; }

    /// <summary>The condition in which it carries most; null where it carries nothing.</summary>
    public Condition? Condition { get; }

    /// <summary>The most that it carries. [A]</summary>
    public ElectricCurrent MostCurrent => ElectricCurrent.FromAmperes(_amperes);

    /// <summary>That current against what the output may carry all the time.</summary>
    public Judgment OfLimit =>
        Judgment.AtMost(_amperes, Output.LimitAmperes, Output.LimitAmperes, a => ElectricCurrent.FromAmperes(a));

    /// <summary>That current against what the protective device carries continuously in the air around the box; a judgment of nothing where
    /// nothing limits it, or it is not known.</summary>
    public Judgment OfProtection => double.IsInfinity(_carried)
        ? default
        : Judgment.AtMost(_amperes, _carried, _carried, a => ElectricCurrent.FromAmperes(a));

    /// <summary>Time from the loss of the mains after which the protective device may open, and all that the output feeds may be off; null
    /// where it carries what flows. [h]</summary>
    public Duration? MayOpenAfter => double.IsInfinity(_mayOpen) ? null : Duration.FromSeconds(_mayOpen);

    /// <summary>Output and current in the invariant culture; never throws.</summary>
    public override string ToString() => FormattableString.Invariant($"{Output}: at most {_amperes:0.00} A") +
        (double.IsInfinity(_mayOpen)
            ? string.Empty
            : FormattableString.Invariant($", may open after {_mayOpen / Battery.SecondsAnHour:0.00} h"));

    internal double MostAmperes => _amperes;

    /// <summary>The current over the least of what output and protective device carry. [1]</summary>
    internal double ShareOfMost => _amperes / Math.Min(Output.LimitAmperes, _carried);

    /// <summary>What an output is seen to carry as the run goes on: most of what its protective device carries, for that changes with the
    /// air.</summary>
    internal sealed class Record(BoxOutput output)
    {
        private double _amperes, _carried = double.PositiveInfinity;
        private Condition? _condition;

        internal void Add(double amperes, double carried, Condition condition)
        {
            double share = double.IsInfinity(carried) ? 0 : amperes / carried,
                known = double.IsInfinity(_carried) ? 0 : _amperes / _carried;
            if (share < known || (share.Equals(known) && amperes <= _amperes)) return;
            _amperes = amperes;
            _carried = carried;
            _condition = condition;
        }

        internal OutputOnBattery Done(double mayOpenSeconds) => new(output, _amperes, _carried, mayOpenSeconds, _condition);
    }
}
