using System;
using System.Collections.Generic;
using CamPower.Circuits;
using CamPower.Supplies;
using UnitsNet;
using static CamPower.DerivationStep;

namespace CamPower.Backup;

/// <summary>A box on two supplies in one condition: what each gives while both run, and what is asked of the reserve alone.</summary>
/// <remarks>
/// Immutable. The supply of the higher voltage gives nearly all: 60 mV more are ten times the current. So within the tolerances of both
/// either may give it, unless one is set well above the other. Source: <see cref="Sources.SchottkyDiode"/>.
/// </remarks>
public sealed class ReserveInCondition
{
    private static readonly double Slope = SupplyConstants.DiodeEmission.Value * RectifierDiode.ThermalVolts;

    private readonly DcOutput _main, _reserve;
    private readonly double _amperes, _mainSaturation, _reserveSaturation;
    private readonly BoxInCondition _onReserve;

    internal ReserveInCondition(DistributionBox box, BoxInCondition both, BoxInCondition onReserve, IReadOnlyList<SiteDevice> lost)
    {
        _main = (DcOutput)box.Supply.Output;
        _reserve = (DcOutput)box.Reserve!.Output;
        _mainSaturation = DiodePair.Saturation(_main.RatedAmperes, _main.DiodeVolts, Slope);
        _reserveSaturation = DiodePair.Saturation(_reserve.RatedAmperes, _reserve.DiodeVolts, Slope);
        _amperes = both.Amperes;
        _onReserve = onReserve;
        Condition = both.Condition;
        Lost = lost;
    }

    /// <summary>The condition.</summary>
    public Condition Condition { get; }

    /// <summary>What all outputs take while both supplies run. [A]</summary>
    public ElectricCurrent Current => ElectricCurrent.FromAmperes(_amperes);

    /// <summary>What the main supply gives of it, both supplies exactly at their set points. [A]</summary>
    public ElectricCurrent MainCurrent => ElectricCurrent.FromAmperes(MainAmperes(_main.SetVolts, _reserve.SetVolts));

    /// <summary>What the reserve gives of it, both supplies exactly at their set points. [A]</summary>
    public ElectricCurrent ReserveCurrent => Current - MainCurrent;

    /// <summary>The most that the reserve gives within the tolerances of both: the main supply at its lowest voltage, the reserve at its
    /// highest. [A]</summary>
    public ElectricCurrent LargestReserveCurrent =>
        ElectricCurrent.FromAmperes(_amperes - MainAmperes(MainAtLeast, _reserve.OwnHighestVolts));

    /// <summary>Whether the reserve rests: the lowest voltage of the main supply behind its diode, at the load of the condition, against
    /// the highest of the reserve.</summary>
    /// <remarks>A reserve that carries the load ages like the main supply.</remarks>
    public Judgment ReserveRests => Judgment.AtLeast(
        MainAtLeast - new RectifierDiode(_mainSaturation, Slope, 0).VoltsAt(_amperes), _reserve.OwnHighestVolts, _reserve.OwnHighestVolts,
        v => ElectricPotential.FromVolts(v));

    /// <summary>What all outputs take of the reserve alone against its derated rating.</summary>
    public Judgment ReserveLoad => _onReserve.Load(Ratio.FromPercent(100));

    /// <summary>What the voltage of the reserve does with everything on.</summary>
    public SupplyState ReserveState => _onReserve.SupplyState;

    /// <summary>The devices that are up with enough voltage on both supplies, and are off or get less than they accept on the reserve
    /// alone.</summary>
    public IReadOnlyList<SiteDevice> Lost { get; }

    internal double Loading => _onReserve.Amperes > 0 ? _onReserve.Amperes / _onReserve.DeratedAmperes : 0;

    /// <summary>How the current of the supply with the higher set point is worked out.</summary>
    /// <example><code>Console.WriteLine(reserve.Worst.Explain().ToMarkdown());</code></example>
    public Derivation Explain() => new($"two supplies through diodes, {Condition}", Steps(), ToString());

    /// <summary>What each gives, and what is asked of the reserve, in the invariant culture; never throws.</summary>
    public override string ToString() =>
        FormattableString.Invariant($"in \"{Condition}\" main {MainCurrent.Amperes:0.00} A, reserve {ReserveCurrent.Amperes:0.00} A; ")
        + FormattableString.Invariant($"reserve alone {_onReserve.Amperes:0.00} A of {_onReserve.DeratedAmperes:0.00} A")
        + (Lost.Count == 0 ? string.Empty : $", lost: {string.Join(", ", Lost)}");

    // Before its diode.
    private double MainAtLeast => _main.LowestVolts + _main.DiodeVolts;

    private double MainAmperes(double mainVolts, double reserveVolts) => mainVolts >= reserveVolts
        ? DiodePair.HigherAmperes(_amperes, mainVolts - reserveVolts, _mainSaturation, _reserveSaturation, Slope)
        : _amperes - DiodePair.HigherAmperes(_amperes, reserveVolts - mainVolts, _reserveSaturation, _mainSaturation, Slope);

    private IEnumerable<DerivationStep> Steps()
    {
        bool isMain = _main.SetVolts >= _reserve.SetVolts;
        (DcOutput higher, DcOutput lower) = isMain ? (_main, _reserve) : (_reserve, _main);
        (double own, double other) = isMain ? (_mainSaturation, _reserveSaturation) : (_reserveSaturation, _mainSaturation);
        string name = isMain ? "main supply" : "reserve";
        yield return new("s", "Emission coefficient times kT/q at 27 °C", "n*VT", "s = n\\,V_T",
            $"{Number(SupplyConstants.DiodeEmission.Value)}*{Number(RectifierDiode.ThermalVolts)}", Slope, "V", Sources.SchottkyDiode);
        yield return Saturation("I1s", $"Saturation current of the diode of the {name}, from its drop at the rated current", higher, own);
        yield return Saturation("I2s", "Saturation current of the other diode", lower, other);
        double fallen = Math.Exp(-(higher.SetVolts - lower.SetVolts) / Slope);
        yield return new("q", "What the difference of the set points leaves", "e^(-(V1 - V2)/s)", "q = e^{-(V_1 - V_2)/s}",
            $"{Number(Math.E)}^(({Number(lower.SetVolts)} - {Number(higher.SetVolts)})/{Number(Slope)})", fallen, string.Empty,
            Sources.SchottkyDiode);
        yield return new("I1", $"Current of the {name}", "min(I, I1s*(1 + I/I2s - q)/(q + I1s/I2s))",
            "I_1 = \\min\\left(I, I_{1s}\\frac{1 + I/I_{2s} - q}{q + I_{1s}/I_{2s}}\\right)",
            $"min({Number(_amperes)}, {Number(own)}*(1 + {Number(_amperes)}/{Number(other)} - {Number(fallen)})" +
            $"/({Number(fallen)} + {Number(own)}/{Number(other)}))",
            DiodePair.HigherAmperes(_amperes, higher.SetVolts - lower.SetVolts, own, other, Slope), "A", Sources.SchottkyDiode);
    }

    private static DerivationStep Saturation(string symbol, string meaning, DcOutput output, double amperes) => new(
        symbol, meaning, "Ir/(e^(Vd/s) - 1)", $"{symbol} = \\frac{{I_r}}{{e^{{V_d/s}} - 1}}",
        $"{Number(output.RatedAmperes)}/({Number(Math.E)}^({Number(output.DiodeVolts)}/{Number(Slope)}) - 1)", amperes, "A",
        Sources.SchottkyDiode);
}
