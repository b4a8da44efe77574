using System;
using System.Collections.Generic;
using System.Linq;
using CamPower.Sites;
using UnitsNet;

namespace CamPower.Checks;

/// <summary>The check of <see cref="Rules.TerminalWrongSize"/>.</summary>
internal sealed class TerminalWrongSizeRule() : Rule("terminal-wrong-size", Severity.Caution,
    "A conductor is smaller or larger than the terminal at its end accepts. It works loose, or only some of its strands go in.",
    "Splice a short conductor of a size that the terminal accepts to it. Never cut strands away.", Sources.TerminalWorkmanship,
    "wire does not fit the terminal")
{
    public override IEnumerable<Finding> Check(Evidence evidence)
    {
        SiteAssessment assessment = Require.NotNull(evidence, nameof(evidence)).Assessment;
        foreach (OutputFeed feed in assessment.Site.Feeds.SelectMany(group => group.Feeds))
        {
            if (feed.Box.Terminals is not TerminalRange terminals) continue;
            for (int i = 0; i < feed.Runs.Count && feed.Parents[i] < 0; i++)
            {
                if (Misfit(feed.Runs[i].Run.Segments.First().Cable, terminals) is not Conductor wrong) continue;
                yield return Find(feed.Runs[i], wrong, terminals, $"the terminals of {feed.Box}");
            }

            if (Together(feed, terminals) is Finding together) yield return together;
        }

        foreach (DeviceAssessment device in assessment.Devices)
        {
            if (device.Device.Model.Connector?.Wires is not TerminalRange wires) continue;
            SiteRun run = device.Path[device.Path.Count - 1];
            if (Misfit(run.Run.Segments.Last().Cable, wires) is not Conductor wrong) continue;
            yield return Find(run, wrong, wires, $"the connector ({device.Device.Model.Connector}) of {device.Device}");
        }
    }

    // Several runs that begin at one output share its terminals; a terminal takes one conductor unless it is marked for more.
    private Finding? Together(OutputFeed feed, TerminalRange terminals)
    {
        List<Cable> cables = [.. feed.Runs.Where((_, i) => feed.Parents[i] < 0).Select(run => run.Run.Segments.First().Cable)];
        double area = cables.Sum(c => Math.Max(AreaOf(c.Outgoing), AreaOf(c.Return)));
        if (cables.Count < 2 || !Limits.IsAbove(area, terminals.Largest.SquareMeters)) return null;
        return Find(Subject.Of(feed.Box, feed.Output),
            $"Its {cables.Count} runs have {Digits.Of(area * 1e6, terminals.Largest.SquareMeters * 1e6, "0.0")} mm² together " +
            $"in one terminal; accepted sizes are {terminals}.",
            Area.FromSquareMillimeters(area * 1e6), terminals.Largest.Area,
            remedy: "Join the runs in a splice, and lead one conductor from it to each terminal.");
    }

    private static double AreaOf(Conductor conductor) => conductor.Size.SquareMeters * conductor.Count;

    private static Conductor? Misfit(Cable cable, TerminalRange terminal)
    {
        if (!Fits(cable.Outgoing, terminal)) return cable.Outgoing;
        return Fits(cable.Return, terminal) ? null : cable.Return;
    }

    private static bool Fits(Conductor conductor, TerminalRange terminal) =>
        !IsTooSmall(conductor, terminal) && !Limits.IsAbove(AreaOf(conductor), terminal.Largest.SquareMeters);

    private static bool IsTooSmall(Conductor conductor, TerminalRange terminal) =>
        Limits.IsBelow(conductor.Size.SquareMeters, terminal.Smallest.SquareMeters);

    private Finding Find(SiteRun run, Conductor wrong, TerminalRange terminal, string where)
    {
        bool isSmall = IsTooSmall(wrong, terminal);
        double area = wrong.Size.SquareMeters * (isSmall ? 1 : wrong.Count);
        return Find(Subject.Of(run), $"Its conductor, {wrong}, ends in {where}; accepted sizes are {terminal}.",
            Area.FromSquareMillimeters(area * 1e6), (isSmall ? terminal.Smallest : terminal.Largest).Area, remedy: isSmall
                ? $"Use a ferrule that the terminal accepts, or splice a short conductor of {terminal.Smallest} to it."
                : $"Splice a short conductor of {terminal.Largest} to it, and put that in the terminal. Never cut strands away.");
    }
}
