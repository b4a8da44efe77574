using System;
using System.Collections.Generic;
using System.Collections.ObjectModel;
using System.Linq;

namespace CamPower.Sites;

/// <summary>What one output feeds: a tree of runs, parents before children, and the devices at their ends.</summary>
internal sealed class OutputFeed
{
    private OutputFeed(DistributionBox box, BoxOutput output, IReadOnlyList<SiteRun> runs, IReadOnlyList<int> parents, IReadOnlyList<FedDevice> devices)
    {
        Box = box;
        Output = output;
        Runs = runs;
        Parents = parents;
        Devices = devices;
        DevicesFed = devices.Select(d => d.Device).ToList().AsReadOnly();
        Motors = devices.Count(d => d.Device.Model.Draw.HasMotor);
    }

    internal DistributionBox Box { get; }

    internal BoxOutput Output { get; }

    /// <summary>The runs, each after the one that feeds it.</summary>
    internal IReadOnlyList<SiteRun> Runs { get; }

    /// <summary>For each run the index in <see cref="Runs"/> of the one that feeds it, or -1 for the output itself.</summary>
    internal IReadOnlyList<int> Parents { get; }

    internal IReadOnlyList<FedDevice> Devices { get; }

    /// <summary>The devices as the site has them.</summary>
    internal IReadOnlyList<SiteDevice> DevicesFed { get; }

    /// <summary>How many of the devices have a motor.</summary>
    internal int Motors { get; }

    internal static IReadOnlyList<OutputFeed> AllOf(Site site)
    {
        ILookup<string, SiteRun> byJunction = site.Runs.Where(r => r.From.JunctionName is not null).ToLookup(r => r.From.JunctionName!, StringComparer.Ordinal);
        ILookup<(string, int), SiteRun> byOutput = site.Runs.Where(r => r.From.BoxName is not null).ToLookup(r => (r.From.BoxName!, r.From.OutputNumber));
        ILookup<string, (SiteDevice Device, int Index)> devices = site.Devices.Select((d, i) => (d, i)).ToLookup(x => x.d.At, StringComparer.Ordinal);
        return site.Boxes
            .SelectMany(box => box.Outputs, (box, output) => (box, output))
            .Where(x => byOutput.Contains((x.box.Name, x.output.Number)))
            .Select(x => Grow(x.box, x.output, byOutput[(x.box.Name, x.output.Number)], byJunction, devices))
            .ToList().AsReadOnly();
    }

    private static OutputFeed Grow(DistributionBox box, BoxOutput output, IEnumerable<SiteRun> first, ILookup<string, SiteRun> byJunction,
        ILookup<string, (SiteDevice Device, int Index)> devices)
    {
        var runs = new List<SiteRun>(first);
        var parents = new List<int>(runs.Select(_ => -1));
        var fed = new List<FedDevice>();
        for (int i = 0; i < runs.Count; i++)
        {
            foreach (SiteRun next in byJunction[runs[i].To])
            {
                runs.Add(next);
                parents.Add(i);
            }

            foreach ((SiteDevice device, int index) in devices[runs[i].To]) fed.Add(new FedDevice(box, device, index, i, Path(runs, parents, i)));
        }

        return new OutputFeed(box, output, runs, parents, fed);
    }

    private static ReadOnlyCollection<SiteRun> Path(List<SiteRun> runs, List<int> parents, int last)
    {
        var path = new List<SiteRun>();
        for (int run = last; run >= 0; run = parents[run]) path.Insert(0, runs[run]);
        return path.AsReadOnly();
    }
}
