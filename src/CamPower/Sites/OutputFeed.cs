using System;
using System.Collections.Generic;
using System.Collections.ObjectModel;
using System.Linq;

namespace CamPower.Sites;

/// <summary>Feed of one output: a tree of runs, parents before children, and the devices at their ends.</summary>
internal sealed class OutputFeed
{
    private OutputFeed(DistributionBox box, BoxOutput output, IReadOnlyList<SiteRun> runs, IReadOnlyList<int> parents,
        IReadOnlyList<FedDevice> devices)
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
        return site.Boxes
            .SelectMany(box => box.Outputs, (box, output) => (box, output))
            .Where(x => site.Index.RunsFrom(x.box, x.output).Any())
            .Select(x => Grow(x.box, x.output, site))
            .ToList().AsReadOnly();
    }

    private static OutputFeed Grow(DistributionBox box, BoxOutput output, Site site)
    {
        var places = new List<int>(site.Index.RunsFrom(box, output));
        var runs = new List<SiteRun>(places.Select(run => site.Runs[run]));
        var parents = new List<int>(runs.Select(_ => -1));
        var fed = new List<FedDevice>();
        for (int i = 0; i < runs.Count; i++)
        {
            foreach (int next in site.Index.RunsBehind(places[i]))
            {
                places.Add(next);
                runs.Add(site.Runs[next]);
                parents.Add(i);
            }

            foreach (int device in site.Index.DevicesBehind(places[i]))
            {
                fed.Add(new FedDevice(box, site.Devices[device], device, i, Path(runs, parents, i)));
            }
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
