using System;
using System.Collections.Generic;
using System.Linq;
using CamPower.Faults;
using UnitsNet;

namespace CamPower;

/// <summary>What a short at every place of what one output feeds does, what an overload does, and whether its device leaves the site
/// alone.</summary>
/// <remarks>
/// Immutable. Studied in each condition of the site, with its conductors and the inside of its box as warm as they are in that condition:
/// every answer holds for all of them. What is not stated is named in <see cref="Missing"/> and not guessed.
/// </remarks>
/// <example>
/// <code>
/// foreach (ShortCircuit fault in output.Shorts) Console.WriteLine($"{fault}; the supply {fault.Supply}");
/// Overload twice = output.OverloadOf(2 * output.Output.Limit);
/// </code>
/// </example>
public sealed class OutputFaults
{
    private readonly FaultSetting _setting;
    private readonly Lazy<IReadOnlyList<ShortCircuit>> _shorts;
    private readonly Lazy<IReadOnlyList<ProtectionInCondition>> _inConditions;
    private readonly Func<FaultLoop> _everything;
    private readonly Lazy<bool> _isProtectedBySource;

    /// <param name="output">The output as it was solved.</param>
    /// <param name="setting">What is behind and before every fault.</param>
    /// <param name="shorts">Studies the shorts: a site of many outputs is not kept waiting for those that are not asked for.</param>
    /// <param name="everything">Gathers every conductor that the output feeds.</param>
    /// <param name="inConditions">The device in each condition.</param>
    internal OutputFaults(OutputAssessment output, FaultSetting setting, Func<IReadOnlyList<ShortCircuit>> shorts,
        Func<FaultLoop> everything,
        Func<IReadOnlyList<ProtectionInCondition>> inConditions)
    {
        Assessment = output;
        _setting = setting;
        _shorts = new Lazy<IReadOnlyList<ShortCircuit>>(shorts);
        _inConditions = new Lazy<IReadOnlyList<ProtectionInCondition>>(inConditions);
        _everything = everything;
        _isProtectedBySource = new Lazy<bool>(WithstandsTheSource);
    }

    /// <summary>The output as it was solved.</summary>
    public OutputAssessment Assessment { get; }

    /// <summary>The box.</summary>
    public DistributionBox Box => Assessment.Box;

    /// <summary>The output.</summary>
    public BoxOutput Output => Assessment.Output;

    /// <summary>A short at each place: the terminals, then every run's joints and end, a run after the one that feeds it.</summary>
    public IReadOnlyList<ShortCircuit> Shorts => _shorts.Value;

    /// <summary>A short at the terminals, behind the protective device.</summary>
    public ShortCircuit AtTerminals => Shorts[0];

    /// <summary>The short that draws least: the one that is hardest to clear.</summary>
    public ShortCircuit Weakest => Shorts.OrderBy(s => s.SmallestProspective?.Amperes ?? double.PositiveInfinity).First();

    /// <summary>The device under the current of each condition, in the site's order.</summary>
    public IReadOnlyList<ProtectionInCondition> InConditions => _inConditions.Value;

    /// <summary>The most that its devices draw in the first moments when all start at once; null where none declares its inrush.</summary>
    public Inrush? Inrush => Assessment.Inrush;

    /// <summary>What a verdict that is not given would need; what could be narrowed.</summary>
    public FaultData Missing => Shorts.Aggregate(FaultData.None, (all, s) => all | s.Missing);

    /// <summary>What any verdict would need and is not stated; nothing where verdicts are given.</summary>
    internal FaultData MissingForVerdict => _setting.MissingForVerdict;

    /// <summary>The greatest current that its supply keeps up in an overload; infinite where none is stated. [A]</summary>
    internal double GreatestSustainedAmperes => _setting.GreatestSustainedAmperes;

    /// <summary>Whether its supply cannot exceed for long what every conductor behind it carries (IEC 60364-4-43, 436).</summary>
    internal bool IsProtectedBySource => _isProtectedBySource.Value;

    /// <summary>What more current than there should be does, through the weakest of all conductors that it feeds: a multiple of the
    /// output's limit, say.</summary>
    /// <param name="current">The current that is drawn, above 0; RMS where it alternates or pulses. [A]</param>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="current"/> is not above 0, or not finite.</exception>
    public Overload OverloadOf(ElectricCurrent current) =>
        new(Require.Positive(current.Amperes, nameof(current), "A"), _everything(), _setting);

    private bool WithstandsTheSource() => !double.IsInfinity(GreatestSustainedAmperes)
        && new Overload(GreatestSustainedAmperes, _everything(), _setting.Unprotected()).WithstandVerdict is WithstandVerdict.Withstands
            or WithstandVerdict.NoConductor;

    /// <summary>The output and its weakest short in the invariant culture; never throws.</summary>
    public override string ToString() => $"{Box} {Output}: {Weakest}; the supply {Weakest.Supply}";
}
