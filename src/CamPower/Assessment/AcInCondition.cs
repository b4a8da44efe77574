using System;
using System.Collections.Generic;
using CamPower.Circuits;
using CamPower.Sites;
using UnitsNet;
using static CamPower.DerivationStep;

namespace CamPower;

/// <summary>What one device has and takes on alternating current, in one condition.</summary>
/// <remarks>
/// Immutable. Voltages are those at the lowest mains voltage, with everything on the transformer drawing; the current is the larger of
/// those at the lowest and the highest. Where the capacitance of a rectifier is not stated, both ends of what is usual count: the current
/// is the larger, the voltages the lower.
/// </remarks>
public sealed class AcInCondition
{
    private readonly AlternatingState _worst, _heaviest;
    private readonly double _leastValley, _mostValley, _sourceVolts;

    internal AcInCondition(FedDevice device, AlternatingState worst, AlternatingState heaviest, double leastValley, double mostValley,
        double sourceVolts, bool hasSteadyState)
    {
        Stage = device.Device.Model.AcStage;
        _worst = worst;
        _heaviest = heaviest;
        _leastValley = leastValley;
        _mostValley = mostValley;
        _sourceVolts = sourceVolts;
        HasSteadyState = hasSteadyState;
        DropOut = JudgeDropOut(device.Starting);
    }

    /// <summary>What is behind its terminals; null where it is not stated. It then counts as a resistor, and its voltage and current are
    /// not known.</summary>
    public AcStage? Stage { get; }

    /// <summary>Whether a period ends as it began: without that a capacitor loses its load, and every number here is 0.</summary>
    public bool HasSteadyState { get; }

    /// <summary>Whether its capacitance is not stated, so that two usual ones stand for it.</summary>
    public bool IsCapacitanceAssumed => Stage is { IsRectifier: true, Capacitance: null };

    /// <summary>Voltage at its terminals, as a meter of true RMS reads it. [V]</summary>
    public ElectricPotential RmsVoltage => ElectricPotential.FromVolts(_worst.RmsVolts);

    /// <summary>The largest voltage at its terminals in a period: what a rectifier charges to, but for its diodes. [V]</summary>
    public ElectricPotential Crest => ElectricPotential.FromVolts(_worst.CrestVolts);

    /// <summary>The lowest voltage of its capacitor in a period: it drops out there, not at the crest. Null without a rectifier.
    /// [V]</summary>
    public ElectricPotential? Valley => IsRectifier ? ElectricPotential.FromVolts(_leastValley) : null;

    /// <summary>Current that it takes, RMS: what heats the winding and the cable. [A]</summary>
    public ElectricCurrent Current => ElectricCurrent.FromAmperes(RmsAmperes);

    /// <summary>The largest current in a period. [A]</summary>
    public ElectricCurrent PeakCurrent => ElectricCurrent.FromAmperes(_heaviest.PeakAmperes);

    /// <summary>Voltage at its terminals times current, both RMS. [VA]</summary>
    public ElectricApparentPower ApparentPower => ElectricApparentPower.FromVoltamperes(VoltAmperes);

    /// <summary>Power that it takes, with that of its diodes. [W]</summary>
    public Power Power => Power.FromWatts(_heaviest.Watts);

    /// <summary>Power over apparent power; 0 where it takes nothing. [1]</summary>
    public Ratio PowerFactor => Ratio.FromDecimalFractions(VoltAmperes > 0 ? _heaviest.Watts / VoltAmperes : 0);

    /// <summary>The lowest voltage of its capacitor, or the RMS voltage without a rectifier, against its drop-out voltage; a judgment of
    /// nothing where none is declared.</summary>
    /// <remarks>Unknown where it depends on a capacitance that is not stated.</remarks>
    public Judgment DropOut { get; }

    /// <summary>What counts against the range that it accepts: RMS, or the sine whose crest a rectifier gets. [V]</summary>
    internal double EquivalentVolts => IsRectifier ? _worst.CrestVolts / Math.Sqrt(2) : _worst.RmsVolts;

    /// <summary>Where it settles, to hold against its turn-on and drop-out voltage. [V]</summary>
    internal double SettledVolts => IsRectifier ? _mostValley : _worst.RmsVolts;

    internal double RmsAmperes => _heaviest.RmsAmperes;

    internal double MeanAmperes => _heaviest.MeanAmperes;

    private bool IsRectifier => Stage?.IsRectifier == true;

    private double VoltAmperes => _heaviest.RmsVolts * _heaviest.RmsAmperes;

    /// <summary>A voltage of a sine that it has unloaded, as it counts against its turn-on voltage. [V]</summary>
    internal double TurningOn(double rmsVolts) => IsRectifier
        ? Math.Max(0, (rmsVolts * Math.Sqrt(2)) - (Stage!.Diodes * RectifierDiode.Silicon.VoltsAt(1e-3)))
        : rmsVolts;

    /// <summary>Crest and valley in words, in the invariant culture; never throws.</summary>
    public override string ToString() => !HasSteadyState ? "no steady state" : IsRectifier
        ? FormattableString.Invariant($"peaks at {_worst.CrestVolts:0.0} V, falls to {_leastValley:0.0} V, draws {RmsAmperes:0.00} A RMS")
        : FormattableString.Invariant($"{_worst.RmsVolts:0.0} V, {RmsAmperes:0.00} A RMS");

    /// <summary>How its crest, its apparent power and its power factor follow from the steady state.</summary>
    internal IEnumerable<DerivationStep> Steps()
    {
        double crest = _sourceVolts * Math.Sqrt(2), dropped = crest - _worst.CrestVolts;
        yield return new("Uc", "Crest of the unloaded transformer at the lowest mains voltage", "sqrt(2)*U0", @"\hat U_0 = \sqrt{2} U_0",
            $"sqrt(2)*{Number(_sourceVolts)}", crest, "V", Sources.Kirchhoff);
        yield return new("Ut", "Crest at the terminals: less what winding, cables and neighbors' currents drop at that moment", "Uc - dU",
            @"\hat U = \hat U_0 - \Delta U", $"{Number(crest)} - {Number(dropped)}", _worst.CrestVolts, "V", Sources.RectifierDesign);
        yield return new("Ue", "The sine of that crest: what counts against the accepted range", "Ut/sqrt(2)", @"U_e = \hat U/\sqrt{2}",
            $"{Number(_worst.CrestVolts)}/sqrt(2)", _worst.CrestVolts / Math.Sqrt(2), "V", Sources.RectifierDesign);
        if (!(VoltAmperes > 0)) yield break;
        yield return new("S", "Apparent power: RMS voltage times RMS current of the charging pulses", "U*I", "S = U I",
            $"{Number(_heaviest.RmsVolts)}*{Number(RmsAmperes)}", VoltAmperes, "VA", Sources.RectifierDesign);
        yield return new("PF", "Power factor", "P/S", @"\lambda = P/S", $"{Number(_heaviest.Watts)}/{Number(VoltAmperes)}",
            _heaviest.Watts / VoltAmperes, "", Sources.RectifierDesign);
    }

    private Judgment JudgeDropOut(Starting? starting)
    {
        if (starting is null) return default;
        double limit = starting.DropOutVolts;
        if (!HasSteadyState) return Judge(0);
        if (!IsRectifier) return Judge(_worst.RmsVolts);
        return Limits.IsBelow(_leastValley, limit) != Limits.IsBelow(_mostValley, limit)
            ? Judgment.Unknown(CapacitanceNotStated)
            : Judge(_leastValley);

        Judgment Judge(double volts) => Judgment.AtLeast(volts, limit, limit, v => ElectricPotential.FromVolts(v));
    }

    /// <summary>What would have to be stated of a rectifier.</summary>
    private const string CapacitanceNotStated = "capacitance behind the rectifier";
}
