using System;
using System.Collections.Generic;
using System.Linq;
using CamPower.Backup;

namespace CamPower.Checks;

/// <summary>The current in each pole of each run in each condition: what the devices behind it draw.</summary>
/// <remarks>It is the current at the lowest supply voltage, where every load except a resistance draws most. Return current counts in the
/// negative conductors only, as if shields carried none. A device that is not up draws nothing here: other rules name it. Behind an output
/// that carries more on battery each draws more in the same proportion.</remarks>
internal sealed class RunCurrents
{
    private readonly double[] _outgoing, _return;
    private readonly int _conditions;
    private readonly Dictionary<(DistributionBox, int, Condition), double> _growth;

    internal RunCurrents(Evidence evidence)
    {
        SiteAssessment assessment = evidence.Assessment;
        _growth = evidence.Backups.SelectMany(GrowthOf).ToDictionary(x => x.Of, x => x.Growth);
        IReadOnlyList<SiteRun> runs = assessment.Site.Runs;
        var runTo = new Dictionary<string, int>(runs.Count, StringComparer.Ordinal);
        for (int i = 0; i < runs.Count; i++) runTo.Add(runs[i].To, i);
        _conditions = assessment.Site.Conditions.Count;
        _outgoing = new double[runs.Count * _conditions];
        foreach (DeviceAssessment device in assessment.Devices)
        {
            for (string? at = device.Device.At; at is not null;)
            {
                int run = runTo[at];
                Add(device, _outgoing, run);
                at = runs[run].From.JunctionName;
            }
        }

        AreBothWays = runs.All(run => run.ReturnAt is null);
        _return = AreBothWays ? _outgoing : new double[_outgoing.Length];
        if (!AreBothWays) AddReturns(assessment, runs, runTo);
    }

    /// <summary>Whether the return current of each run equals its outgoing current: no negative conductor is shared.</summary>
    internal bool AreBothWays { get; }

    /// <summary>Current in a conductor of a run, by the index of the run in the site. [A]</summary>
    internal double Amperes(int run, bool isReturn, int condition) => (isReturn ? _return : _outgoing)[(run * _conditions) + condition];

    private void AddReturns(SiteAssessment assessment, IReadOnlyList<SiteRun> runs, Dictionary<string, int> runTo)
    {
        foreach (DeviceAssessment device in assessment.Devices)
        {
            foreach (SiteRun run in SiteRun.WayBack(device.Device.At, at => runs[runTo[at]])) Add(device, _return, runTo[run.To]);
        }
    }

    // What each output carries on battery over what it carries on the supply, where that is more.
    private static IEnumerable<((DistributionBox, int, Condition) Of, double Growth)> GrowthOf(BackupAssessment backup) =>
        from c in backup.InConditions
        from onBattery in c.New.Outputs
        let number = onBattery.Output.Number
        let onSupply = backup.OnSupply.Outputs.First(o => o.Output.Number == number).InConditions.First(o => o.Condition == c.Condition)
        where onSupply.Amperes > 0 && onBattery.MostAmperes > onSupply.Amperes
        select ((backup.Box, number, c.Condition), onBattery.MostAmperes / onSupply.Amperes);

    private void Add(DeviceAssessment device, double[] amperes, int run)
    {
        for (int c = 0; c < device.InConditions.Count; c++)
        {
            DeviceInCondition drawn = device.InConditions[c];
            double growth = 1;
            bool grows = _growth.Count > 0 && _growth.TryGetValue((device.Box, device.Output.Number, drawn.Condition), out growth);
            amperes[(run * _conditions) + c] += drawn.AmperesDrawn * (grows ? growth : 1);
        }
    }
}
