using System;
using System.Collections.Generic;
using System.Linq;

namespace CamPower.Checks;

/// <summary>The current in each pole of each run in each condition: what the devices behind it draw.</summary>
/// <remarks>It is the current at the lowest supply voltage, where every load except a resistance draws most. Return current counts in the
/// negative conductors only, as if shields carried none. A device that is not up draws nothing here: other rules name it.</remarks>
internal sealed class RunCurrents
{
    private readonly double[,] _outgoing, _return;

    internal RunCurrents(SiteAssessment assessment)
    {
        IReadOnlyList<SiteRun> runs = assessment.Site.Runs;
        var runTo = new Dictionary<string, int>(runs.Count, StringComparer.Ordinal);
        for (int i = 0; i < runs.Count; i++) runTo.Add(runs[i].To, i);
        _outgoing = new double[runs.Count, assessment.Site.Conditions.Count];
        foreach (DeviceAssessment device in assessment.Devices)
        {
            for (string? at = device.Device.At; at is not null; at = runs[runTo[at]].From.JunctionName) Add(device, _outgoing, runTo[at]);
        }

        AreBothWays = runs.All(run => run.ReturnAt is null);
        _return = AreBothWays ? _outgoing : new double[runs.Count, assessment.Site.Conditions.Count];
        if (!AreBothWays) AddReturns(assessment, runTo);
    }

    /// <summary>Whether the return current of each run equals its outgoing current: no negative conductor is shared.</summary>
    internal bool AreBothWays { get; }

    /// <summary>Current in a conductor of a run, by the index of the run in the site. [A]</summary>
    internal double Amperes(int run, bool isReturn, int condition) => (isReturn ? _return : _outgoing)[run, condition];

    private void AddReturns(SiteAssessment assessment, Dictionary<string, int> runTo)
    {
        foreach (DeviceAssessment device in assessment.Devices)
        {
            for (string? at = device.Device.At; at is not null;)
            {
                SiteRun run = assessment.Site.Runs[runTo[at]];
                if (run.ReturnAt is null) Add(device, _return, runTo[at]);
                at = run.ReturnAt ?? run.From.JunctionName;
            }
        }
    }

    private static void Add(DeviceAssessment device, double[,] amperes, int run)
    {
        for (int c = 0; c < device.InConditions.Count; c++) amperes[run, c] += device.InConditions[c].AmperesDrawn;
    }
}
