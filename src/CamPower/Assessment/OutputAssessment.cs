using System;
using System.Collections.Generic;
using System.Linq;
using CamPower.Assessment;
using CamPower.Sites;
using UnitsNet;

namespace CamPower;

/// <summary>One used output of a box in every condition.</summary>
/// <remarks>Immutable.</remarks>
public sealed class OutputAssessment
{
    internal OutputAssessment(FeedGroup group, OutputFeed feed, OutputInCondition[] inConditions)
    {
        Group = group;
        Feed = feed;
        InConditions = Array.AsReadOnly(inConditions);
        Worst = WorstCase.Of(inConditions, (a, b) => a.Amperes > b.Amperes);
    }

    /// <summary>The box.</summary>
    public DistributionBox Box => Feed.Box;

    /// <summary>The output.</summary>
    public BoxOutput Output => Feed.Output;

    /// <summary>The devices that it feeds.</summary>
    public IReadOnlyList<SiteDevice> Devices => Feed.DevicesFed;

    /// <summary>Its current in each condition, in the site's order.</summary>
    public IReadOnlyList<OutputInCondition> InConditions { get; }

    /// <summary>The condition with the most current.</summary>
    public OutputInCondition Worst { get; }

    /// <summary>The most current over the limit of the output. [%]</summary>
    public Ratio Loading => Ratio.FromPercent(Worst.Amperes / Output.LimitAmperes * 100);

    /// <summary>Runs and devices that it feeds.</summary>
    internal OutputFeed Feed { get; }

    /// <summary>What that hangs together with.</summary>
    internal FeedGroup Group { get; }

    /// <summary>What all that it feeds draws as it starts at once, what is declared of it; null where nothing is.</summary>
    internal Inrush? Inrush => Inrush.AtOnce(Devices.Select(d => d.Model.Inrush).OfType<Inrush>());

    /// <summary>What all that it feeds draws as its illuminators or motors are switched on at once in a condition, on top of its current;
    /// null where none are, or nothing is declared of it.</summary>
    internal Inrush? SwitchedInrushIn(Condition condition, double runningAmperes) => condition.HasSwitched
        ? Inrush.OnTopOf(runningAmperes, [.. Devices.Select(d => d.Model.SwitchedInrush).OfType<Inrush>()])
        : null;

    /// <summary>Output and worst current in the invariant culture; never throws.</summary>
    public override string ToString() => FormattableString.Invariant($"{Box} {Output}: {Worst}");
}
