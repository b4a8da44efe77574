using System;
using System.Collections.Generic;
using System.Linq;
using CamPower.Studies;
using UnitsNet;
using static System.FormattableString;

namespace CamPower;

/// <summary>A place where one more device could be connected: an output or a junction, and what that does to the site.</summary>
/// <remarks>Immutable. The site with the device was assessed in every condition and checked against every rule.</remarks>
/// <example>
/// <code>
/// DevicePlace best = site.PlacesFor(dome, lead, RuleSet.Standard)[0];
/// Console.WriteLine(best);
/// </code>
/// </example>
public sealed class DevicePlace
{
    private readonly PlaceTrial _trial;

    internal DevicePlace(PlaceTrial trial)
    {
        _trial = trial;
        Gained = trial.Gained;
    }

    /// <summary>The output or junction where the run to the device starts.</summary>
    public RunOrigin Origin => _trial.Origin;

    /// <summary>The site with the device.</summary>
    public Site Site => _trial.Site;

    /// <summary>The findings that the device brings, worst first: why not, or what to be careful of.</summary>
    public IReadOnlyList<Finding> Gained { get; }

    /// <summary>Whether the device may be connected there: no Danger and no Failure comes with it.</summary>
    public bool IsAllowed => !Gained.Any(f => f.Severity >= Severity.Failure);

    /// <summary>Whether it may be, and a caution comes with it.</summary>
    public bool HasCaution => IsAllowed && Gained.Any(f => f.Severity == Severity.Caution);

    /// <summary>The least room that is left to any device up to its lowest accepted voltage, in percent of that; negative where one gets
    /// too little, null where none is up. [%]</summary>
    public Ratio? LeastMargin => _trial.LeastMargin is double share ? Ratio.FromPercent(100 * share) : null;

    /// <summary>How many devices of this kind may be connected there, each with a run of its own like this one.</summary>
    /// <param name="most">Where the count ends, from 0 to 100.</param>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="most"/> is outside its range.</exception>
    public int HowMany(int most = 16)
    {
        Require.Within(most, 0, 100, nameof(most), "");
        PlaceTrial trial = _trial;
        for (int count = 0; count < most; count++)
        {
            if (trial.Gained.Any(f => f.Severity >= Severity.Failure)) return count;
            trial = trial.OneMore();
        }

        return most;
    }

    /// <summary>The place and the answer: yes, yes with a caution, or no and why; never throws.</summary>
    public override string ToString()
    {
        string margin = _trial.LeastMargin is double share ? Invariant($", {100 * share:0.0} % margin left") : string.Empty;
        return IsAllowed
            ? $"{Origin}: yes{(HasCaution ? $", with a caution ({Reasons})" : string.Empty)}{margin}"
            : $"{Origin}: no ({Reasons})";
    }

    private string Reasons => string.Join(", ", Gained.Where(f => f.Severity == Gained[0].Severity).Select(f => f.Rule).Distinct());
}
