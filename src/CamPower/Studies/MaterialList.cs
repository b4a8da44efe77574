using System;
using System.Collections.Generic;
using System.Linq;
using UnitsNet;
using static System.FormattableString;

namespace CamPower;

/// <summary>The bill of materials of a site: cables by type, joints, connectors, protective devices with spare fuses, boxes; and the pull
/// list with labels.</summary>
/// <remarks>Immutable. Devices are not in it, nor what no site file names, such as conduits. A connector of each device's own kind is
/// counted for each device whose model states one.</remarks>
/// <example>
/// <code>
/// MaterialList list = site.ListMaterial(MaterialPolicy.CommonPractice, PriceList.Neutral);
/// foreach (MaterialLine line in list.Lines) Console.WriteLine(line);
/// </code>
/// </example>
public sealed class MaterialList
{
    internal const string Meters = "m", Pieces = "pieces";

    internal MaterialList(Site site, MaterialPolicy policy, PriceList prices)
    {
        Site = site;
        Policy = policy;
        CostUnit = prices.Unit;
        Pulls = Array.AsReadOnly([.. site.Runs.SelectMany(run => PullsOf(run, policy))]);
        Lines = Array.AsReadOnly([.. Cables(prices), .. Joints(prices), .. Connectors(prices), .. ProtectiveDevices(prices),
            .. Boxes(prices), .. Reserves(prices), .. Batteries(prices)]);
    }

    /// <summary>The site.</summary>
    public Site Site { get; }

    /// <summary>What is ordered above what is drawn.</summary>
    public MaterialPolicy Policy { get; }

    /// <summary>Every item with its quantity: cables, joints, connectors, protective devices, spare fuses, boxes, reserve supplies,
    /// batteries.</summary>
    public IReadOnlyList<MaterialLine> Lines { get; }

    /// <summary>Every length of cable, run by run.</summary>
    public IReadOnlyList<PulledCable> Pulls { get; }

    /// <summary>What all of it costs, in <see cref="CostUnit"/>, without work.</summary>
    public double Cost => Lines.Sum(line => line.Cost);

    /// <summary>What costs are counted in, by the price list.</summary>
    public string CostUnit { get; }

    /// <summary>How many lines and what they cost, in the invariant culture; never throws.</summary>
    public override string ToString() => Invariant($"{Lines.Count} items, {Cost:0.##} {CostUnit}, {Pulls.Count} lengths of cable");

    private static IEnumerable<PulledCable> PullsOf(SiteRun run, MaterialPolicy policy)
    {
        CableSegment[] segments = [.. run.Run.Segments];
        for (int i = 0; i < segments.Length; i++)
        {
            Length route = segments[i].OneWayLength;
            Length cut = Length.FromMeters(policy.CutMeters(route.Meters)).ToUnit(route.Unit);
            string start = i == 0 ? $"{run.From}: to {run.To}" : Invariant($"joint {i} of the run to {run.To}: to {run.To}");
            string end = i == segments.Length - 1
                ? $"{run.To}: from {run.From}"
                : Invariant($"joint {i + 1} of the run to {run.To}: from {run.From}");
            yield return new PulledCable(run, segments[i], cut, start, end);
        }
    }

    private IEnumerable<MaterialLine> Cables(PriceList prices) =>
        from alike in Pulls.GroupBy(pull => pull.Cable.ToString(), StringComparer.Ordinal)
        let meters = alike.Sum(pull => pull.Cut.Meters)
        select new MaterialLine("cable", alike.Key, meters, Meters, meters * prices.OfAMeter(alike.First().Cable));

    private IEnumerable<MaterialLine> Joints(PriceList prices) =>
        Counted("joint", Site.Runs.SelectMany(run => run.Run.Parts.OfType<Joint>()).Select(joint => joint.Name), prices.Of);

    private IEnumerable<MaterialLine> Connectors(PriceList prices) =>
        Counted("connector", Site.Devices.Select(device => device.Model.Connector?.Name).OfType<string>(), prices.Of);

    private IEnumerable<MaterialLine> ProtectiveDevices(PriceList prices)
    {
        ProtectiveDevice[] all = [.. Site.Boxes
            .SelectMany(box => box.Outputs.Select(output => output.Protection).Append(box.BatteryProtection))
            .OfType<ProtectiveDevice>().Where(device => !device.IsNone)];
        foreach (IGrouping<string, ProtectiveDevice> alike in all.GroupBy(device => device.Name, StringComparer.Ordinal))
        {
            int count = alike.Count();
            double price = prices.Of(alike.First());
            yield return new MaterialLine("protective device", alike.Key, count, Pieces, count * price);
            int spares = alike.First() is Fuse ? Policy.SparesFor(count) : 0;
            if (spares > 0) yield return new MaterialLine("spare fuse", alike.Key, spares, Pieces, spares * price);
        }
    }

    private IEnumerable<MaterialLine> Boxes(PriceList prices) =>
        from alike in Site.Boxes.GroupBy(box => (box.IsAdapter, Item: box.IsAdapter
            ? box.Supply.Name
            : Invariant($"{box.Supply.Name}, {box.Outputs.Count} {(box.Outputs.Count == 1 ? "output" : "outputs")}")))
        select new MaterialLine(
            alike.Key.IsAdapter ? "adapter" : "box", alike.Key.Item, alike.Count(), Pieces, alike.Sum(box => prices.Of(box)));

    private IEnumerable<MaterialLine> Batteries(PriceList prices) =>
        Counted("battery", Site.Boxes.Select(box => box.Battery?.Name).OfType<string>(), prices.Of);

    private IEnumerable<MaterialLine> Reserves(PriceList prices) =>
        from alike in Site.Boxes.Select(box => box.Reserve).OfType<Supply>().GroupBy(reserve => reserve.Name, StringComparer.Ordinal)
        let count = alike.Count()
        select new MaterialLine("reserve supply", alike.Key, count, Pieces, count * prices.Of(alike.First()));

    private static IEnumerable<MaterialLine> Counted(string kind, IEnumerable<string> names, Func<string, double> priceOf) =>
        from alike in names.GroupBy(name => name, StringComparer.Ordinal)
        let count = alike.Count()
        select new MaterialLine(kind, alike.Key, count, Pieces, count * priceOf(alike.Key));
}
