using System;
using System.Collections.Generic;
using System.Linq;
using CamPower.Circuits;
using CamPower.Sites;
using UnitsNet;

namespace CamPower.Assessment;

/// <summary>All that one transformer feeds, in one condition: the currents of its devices meet in its winding.</summary>
/// <remarks>
/// Voltages are those at the lowest mains voltage; currents the larger of those there and at the highest. A capacitance that is not stated
/// is taken at both ends of what is usual. As many motors move as may. Other boxes on the same returns count as drawing nothing.
/// </remarks>
internal sealed class AlternatingBank
{
    // A voltage that a test current of 1 A lowers through any cable that carries power, and leaves precise.
    private const double ProbeVolts = 1000;

    private readonly IReadOnlyList<GroupInCondition> _groups;
    private readonly AcOutput _output;
    private readonly List<(GroupInCondition Group, int Index, FedDevice Fed, int Output)> _places = [];
    private readonly Dictionary<FedDevice, AcInCondition> _readings = [];
    private readonly Dictionary<OutputFeed, double> _amperes = [];

    private AlternatingBank(DistributionBox box, IReadOnlyList<GroupInCondition> groups)
    {
        Box = box;
        _groups = groups;
        _output = (AcOutput)box.Supply.Output;
        int output = 0;
        foreach (GroupInCondition group in groups)
        {
            int first = 0;
            foreach (OutputFeed feed in group.Group.Feeds)
            {
                if (ReferenceEquals(feed.Box, box))
                {
                    for (int i = 0; i < feed.Devices.Count; i++)
                    {
                        if (feed.Devices[i].Accepted is not null) _places.Add((group, first + i, feed.Devices[i], output));
                    }

                    output++;
                }

                first += feed.Devices.Count;
            }
        }

        Solve();
    }

    internal DistributionBox Box { get; }

    /// <summary>The current of the winding, RMS. [A]</summary>
    internal double Amperes { get; private set; }

    /// <summary>Whether it fed something that found no steady state, so that its current is what the loads ask for.</summary>
    internal bool IsDemandOnly { get; private set; }

    /// <summary>What the transformer of a box feeds; null where it is none, or nothing is stated of it and of what its devices
    /// take.</summary>
    internal static AlternatingBank? Of(DistributionBox box, IReadOnlyList<GroupInCondition> groups) =>
        box.Supply.Output is AcOutput output && (output.WindingOhms > 0 || groups.Any(g => g.Group.Devices.Any(d =>
            ReferenceEquals(d.Box, box) && d.Accepted is not null && d.Device.Model.AcStage is not null)))
            ? new AlternatingBank(box, groups)
            : null;

    /// <summary>The current of an output, RMS. [A]</summary>
    internal double AmperesOf(OutputFeed feed) => _amperes[feed];

    /// <summary>What a device has and takes; null where it accepts no alternating current.</summary>
    internal AcInCondition? Reading(FedDevice device) => _readings.TryGetValue(device, out AcInCondition? reading) ? reading : null;

    private void Solve()
    {
        foreach (OutputFeed feed in Feeds()) _amperes[feed] = 0;
        if (_places.Count == 0) return;
        RailVolts lowest = _groups[0].Lowest;
        double lowVolts = _output.EmfVolts * TransformerRail.LowestShare(Box, _groups[0].Condition),
            highVolts = _output.EmfVolts * TransformerRail.HighestShare(Box, _groups[0].Condition);
        double[,] lowOhms = OhmsAt(lowest), highOhms = OhmsAt(RailVolts.Highest);
        bool areAllStated = _places.TrueForAll(p => p.Fed.Device.Model.AcStage is not { IsRectifier: true, Capacitance: null });
        BankAnswer most = Answer(lowVolts, lowOhms, isMost: true), least = areAllStated ? most : Answer(lowVolts, lowOhms, isMost: false);
        List<BankAnswer> answers = [most, least, Answer(highVolts, highOhms, isMost: true)];
        IsDemandOnly = answers.Exists(a => a.Lost.Contains(true));
        Amperes = answers.Max(a => a.Solution?.Amperes ?? 0);
        foreach ((OutputFeed feed, int output) in Feeds().Select((feed, output) => (feed, output)))
        {
            _amperes[feed] = answers.Max(a =>
                a.Solution is AlternatingSolution s && output < s.OutputAmperes.Length ? s.OutputAmperes[output] : 0);
        }

        for (int i = 0; i < _places.Count; i++) Take(i, least, most, answers, lowVolts);
        for (int i = 0; i < _places.Count; i++)
        {
            if (!most.Lost[i]) continue;
            double asked = _places[i].Group.Loads[_places[i].Index].AmperesAt(_output.NominalVolts);
            Amperes += asked;
            _amperes[Feeds().ElementAt(_places[i].Output)] += asked;
        }
    }

    private void Take(int i, BankAnswer least, BankAnswer most, List<BankAnswer> answers, double sourceVolts)
    {
        AlternatingState? atLeast = least.StateOf(i), atMost = most.StateOf(i);
        AlternatingState worst = atLeast ?? atMost ?? default;
        if (atMost is AlternatingState other)
        {
            worst.CrestVolts = Math.Min(worst.CrestVolts, other.CrestVolts);
            worst.RmsVolts = Math.Min(worst.RmsVolts, other.RmsVolts);
        }

        AlternatingState heaviest = answers.Select(a => a.StateOf(i)).OfType<AlternatingState>().OrderByDescending(s => s.RmsAmperes)
            .FirstOrDefault();
        _readings[_places[i].Fed] = new AcInCondition(_places[i].Fed, worst, heaviest, atLeast?.ValleyVolts ?? 0, atMost?.ValleyVolts ?? 0,
            sourceVolts, hasSteadyState: atMost is not null);
    }

    private IEnumerable<OutputFeed> Feeds() => _groups.SelectMany(g => g.Group.Feeds).Where(feed => ReferenceEquals(feed.Box, Box));

    // A device whose capacitor does not hold its load is left out, and what remains is solved again.
    private BankAnswer Answer(double volts, double[,] ohms, bool isMost)
    {
        var lost = new bool[_places.Count];
        int[] outputs = [.. _places.Select(p => p.Output)];
        while (true)
        {
            AlternatingElement[] elements =
                [.. Enumerable.Range(0, lost.Length).Where(i => !lost[i]).SelectMany(i => ElementsOf(i, isMost))];
            if (!Array.Exists(elements, e => e.Diodes > 0))
            {
                AlternatingSolution? linear = PhasorKernel.Solve(volts, ohms, outputs, elements);
                return new BankAnswer(linear, linear is null ? Array.ConvertAll(lost, _ => true) : lost);
            }

            var circuit = new AlternatingCircuit(volts, _output.Hertz, ohms, outputs, elements, RectifierDiode.Silicon);
            if (circuit.Solve() is AlternatingSolution solution) return new BankAnswer(solution, lost);
            if (circuit.Lost is not int device) return new BankAnswer(null, Array.ConvertAll(lost, _ => true));
            lost[device] = true;
        }
    }

    private IEnumerable<AlternatingElement> ElementsOf(int i, bool isMost)
    {
        (GroupInCondition group, int index, FedDevice fed, _) = _places[i];
        Device model = fed.Device.Model;
        Load load = group.Loads[index];
        AcStage stage = model.AcStage ?? AcStage.Resistive;
        if (!stage.IsRectifier)
        {
            // A label states what flows: the product of its numbers is apparent power.
            yield return AlternatingElement.Linear(
                i, model.Draw is LabelDraw && load.Amperes == 0 ? load.WithPowerScaled(stage.Factor) : load, stage.Factor);
            yield break;
        }

        double farads = stage.Capacitance?.Farads ?? UsualFarads(model, stage, isMost);
        Load behind = load.ResistanceComponent is null ? load : load.WithoutResistance();
        yield return AlternatingElement.Rectifier(i, behind, farads, stage.IsHalfWave, fed.Device.LeadsReversed);
        if (load.ResistanceComponent is ElectricResistance heater)
        {
            yield return AlternatingElement.Linear(i, Load.ConstantResistance(heater));
        }
    }

    private double UsualFarads(Device model, AcStage stage, bool isMost)
    {
        Load all = model.Draw.LoadWith((LoadComponents)ComponentDraw.AllComponents);
        double watts = Math.Max(0.1, Math.Max(all.Watts, all.Amperes * _output.NominalVolts));
        CitedValue perWatt = (stage.IsHalfWave, isMost) switch
        {
            (false, false) => AlternatingConstants.LeastFullWave,
            (false, true) => AlternatingConstants.MostFullWave,
            (true, false) => AlternatingConstants.LeastHalfWave,
            _ => AlternatingConstants.MostHalfWave,
        };
        return perWatt.Value * 1e-6 * watts;
    }

    // What an ampere of one device lowers the voltage of another by: an ampere through the way that both share, and the winding.
    private double[,] OhmsAt(RailVolts rail)
    {
        var ohms = new double[_places.Count, _places.Count];
        for (int j = 0; j < _places.Count; j++)
        {
            (GroupInCondition group, int index, _, _) = _places[j];
            RailVolts probed = rail.With(Box, ProbeVolts);
            double[] free = VoltsOf(group, probed, -1), loaded = VoltsOf(group, probed, index);
            for (int i = 0; i < _places.Count; i++)
            {
                double shared = ReferenceEquals(_places[i].Group, group) ? free[_places[i].Index] - loaded[_places[i].Index] : 0;
                ohms[i, j] = _output.WindingOhms + shared;
            }
        }

        return ohms;
    }

    private static double[] VoltsOf(GroupInCondition group, RailVolts rail, int loaded)
    {
        Load[] loads = [.. group.Loads.Select((_, i) => i == loaded ? Load.ConstantCurrent(ElectricCurrent.FromAmperes(1)) : Load.None)];
        return FeedSolver.Solved(group.Circuit, rail, loads);
    }

    private sealed class BankAnswer(AlternatingSolution? solution, bool[] lost)
    {
        internal AlternatingSolution? Solution { get; } = solution;

        internal bool[] Lost { get; } = lost;

        internal AlternatingState? StateOf(int device) => Solution is null || Lost[device] ? null : Solution.Devices[device];
    }
}
