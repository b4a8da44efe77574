using System;
using System.Collections.Generic;
using System.Collections.ObjectModel;
using System.Linq;
using System.Threading;
using CamPower.Faults;
using UnitsNet;

namespace CamPower;

/// <summary>Faults of one output: a short circuit at each place, an overload, and whether the protective device stays closed in normal
/// service.</summary>
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
    private readonly BoxAssessment _box;
    private readonly FaultAir[] _air;
    private readonly FaultSetting _setting;
    private readonly CancellationToken _cancellationToken;

    // A site of many outputs is not kept waiting for what nobody asks for. Two threads may study it at once, and find the same.
    private FaultSetting? _beside;
    private IReadOnlyList<ShortCircuit>? _shorts;
    private IReadOnlyList<ProtectionInCondition>? _inConditions;
    private FaultLoop? _everything;
    private Overload? _sustained;

    /// <param name="output">The output as it was solved.</param>
    /// <param name="box">Its box.</param>
    /// <param name="air">The temperatures of each condition, each pair once.</param>
    /// <param name="setting">What is behind and before every fault of the box and such a device.</param>
    /// <param name="cancellationToken">Cancels the study of a short.</param>
    internal OutputFaults(
        OutputAssessment output, BoxAssessment box, FaultAir[] air, FaultSetting setting, CancellationToken cancellationToken)
    {
        Assessment = output;
        _box = box;
        _air = air;
        _setting = setting;
        _cancellationToken = cancellationToken;
    }

    /// <summary>The output as it was solved.</summary>
    public OutputAssessment Assessment { get; }

    /// <summary>The box.</summary>
    public DistributionBox Box => Assessment.Box;

    /// <summary>The output.</summary>
    public BoxOutput Output => Assessment.Output;

    /// <summary>A short at each place: the terminals, then every run's joints and end, a run after the one that feeds it.</summary>
    public IReadOnlyList<ShortCircuit> Shorts => _shorts ??= StudyShorts();

    /// <summary>A short at the terminals, behind the protective device.</summary>
    public ShortCircuit AtTerminals => Shorts[0];

    /// <summary>Short with the smallest current: the protective device operates last at it, or not at all.</summary>
    public ShortCircuit Weakest => ShortCircuit.WeakestOf(Shorts);

    /// <summary>The device under the current of each condition, in the site's order.</summary>
    public IReadOnlyList<ProtectionInCondition> InConditions => _inConditions ??= ProtectionInCondition.AllOf(Assessment, _box);

    /// <summary>Inrush of all devices of the output that start at once; null where none states its inrush.</summary>
    public Inrush? Inrush => Assessment.Inrush;

    /// <summary>Data that is not stated. With it an unknown verdict becomes known, or a wide one exact.</summary>
    public FaultData Missing => _setting.KnowsSupply || Assessment.Group.SharesReturns
        ? ShortCircuit.MissingOf(Shorts)
        : _setting.MissingForAnyFault | MissingOfConductors();

    /// <summary>Data that every verdict needs and that is not stated; none where verdicts are given.</summary>
    internal FaultData MissingForVerdict => _setting.MissingForVerdict;

    /// <summary>The greatest current that its supply keeps up in an overload; infinite where none is stated. [A]</summary>
    internal double GreatestSustainedAmperes => _setting.GreatestSustainedAmperes;

    /// <summary>Whether its supply cannot exceed for long what every conductor behind it carries (IEC 60364-4-43, 436).</summary>
    internal bool IsProtectedBySource => !double.IsInfinity(GreatestSustainedAmperes)
        && Sustained.WithstandVerdict is WithstandVerdict.Withstands or WithstandVerdict.NoConductor;

    private Overload Sustained => _sustained ??= new Overload(GreatestSustainedAmperes, Everything, _setting.Unprotected());

    private FaultSetting Beside => _beside ??= _setting.Beside(air => RailIn(air), air => RailIn(air, isBatteryDead: true));

    // Every conductor that the output feeds, with no resistance of its own.
    private FaultLoop Everything => _everything ??= new FaultLoop("everything", 0,
        new FaultPole(new double[_air.Length], Places().Where(place => place.IsEnd)
            .Aggregate((IReadOnlyList<LaidConductor>)[], (all, place) => LaidConductor.Joined(all, place.Loop.Conductors))),
        FaultPole.AtTerminals(_air.Length), []);

    /// <summary>Effect of an overload on the weakest conductor of the output, for example at twice the limit of the output.</summary>
    /// <param name="current">The current that is drawn, above 0; RMS where it alternates or pulses. [A]</param>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="current"/> is not above 0, or not finite.</exception>
    public Overload OverloadOf(ElectricCurrent current) =>
        new(Require.Positive(current.Amperes, nameof(current), "A"), Everything, Beside);

    /// <summary>The output and its weakest short in the invariant culture; never throws.</summary>
    public override string ToString() => $"{Box} {Output}: {Weakest}; the supply {Weakest.Supply}";

    private ReadOnlyCollection<ShortCircuit> StudyShorts() => Array.AsReadOnly([.. Places().Select(place => new ShortCircuit(
        place.Loop, Beside, place.Run, place.IsEnd ? DevicesAt(place.Run!.To) : []))]);

    private IEnumerable<(FaultLoop Loop, SiteRun? Run, bool IsEnd)> Places() =>
        new FeedPlaces(Assessment.Group, _air).Of(Assessment.Feed);

    private ReadOnlyCollection<SiteDevice> DevicesAt(string junction) =>
        Array.AsReadOnly([.. Assessment.Devices.Where(d => string.Equals(d.At, junction, StringComparison.Ordinal))]);

    // Of the conditions of one air that in which the other outputs take most.
    private RailStudy RailIn(FaultAir air, bool isBatteryDead = false)
    {
        RailStudy? most = null;
        for (int c = 0; c < _box.InConditions.Count; c++)
        {
            if (SiteFaultStudy.AirOf(_box.InConditions[c]) != air) continue;
            var rail = new RailStudy(_box, Output, c, _cancellationToken, isBatteryDead);
            if (most is null || rail.OtherAmperes > most.OtherAmperes) most = rail;
        }

        return most!;
    }

    // Where it is not known what the supply gives, no verdict on a conductor is given, whatever the short.
    private FaultData MissingOfConductors()
    {
        var missing = FaultData.None;
        foreach (SiteRun run in Assessment.Feed.Runs)
        {
            foreach (CableSegment segment in run.Run.Segments)
            {
                if (!(segment.OneWayLength.Meters > 0)) continue;
                Cable cable = segment.Cable;
                missing |= LaidConductor.MissingOf(cable.Outgoing, cable.Insulation, run.InstallationMethod)
                    | LaidConductor.MissingOf(cable.Return, cable.Insulation, run.InstallationMethod);
            }
        }

        return missing;
    }
}
