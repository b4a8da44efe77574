using System;
using System.Collections.Generic;
using System.Linq;

namespace CamPower.Commissioning;

/// <summary>Every cause at every place where it may be.</summary>
internal sealed class HypothesisList
{
    private readonly DiagnosisModel _model;
    private readonly List<Hypothesis> _all = [];

    private HypothesisList(DiagnosisModel model) => _model = model;

    internal static Hypothesis[] Of(DiagnosisModel model, CausePriors priors)
    {
        var list = new HypothesisList(model);
        foreach (FeedModel feed in model.Feeds) list.AddFeed(feed);
        foreach (BoxModel box in model.Boxes) list.AddBox(box);
        list.AddSwapped();
        list.AddMeter();

        // Runs in series share what one place has.
        double[] shares = [.. list._all.Select(h => list.ShareOf(h))];
        ILookup<Cause, double> places = list._all.Select((h, i) => (h.Cause, Share: shares[i])).ToLookup(h => h.Cause, h => h.Share);
        double weights = places.Sum(c => priors.WeightOf(c.Key));
        return [.. list._all
            .Select((h, i) => h.WithPrior(Math.Log(priors.WeightOf(h.Cause) / weights * shares[i] / places[h.Cause].Sum())))
            .Where(h => priors.WeightOf(h.Cause) > 0)];
    }

    /// <summary>The runs of a feed that lead to a device.</summary>
    internal static IEnumerable<int> RunsOf(FeedModel feed) => Enumerable.Range(0, feed.Runs).Where(run => feed.IsBehind[run].Any(b => b));

    private double ShareOf(Hypothesis hypothesis)
    {
        if (hypothesis.Cause is not (Cause.WrongConductor or Cause.LongerRun or Cause.PoorJoint or Cause.WaterInJoint or Cause.OpenConductor
            or Cause.ShortCircuit)) return 1;
        FeedModel feed = _model.Feeds[hypothesis.Unit];
        return 1.0 / RunsOf(feed).Count(run => feed.IsBehind[run].SequenceEqual(feed.IsBehind[hypothesis.Place]));
    }

    private void AddFeed(FeedModel feed)
    {
        int[] own = [feed.Unit];
        int[] withBox = [.. _model.Feeds.Where(f => f.Box == feed.Box).Select(f => f.Unit), feed.Box];
        bool isProtected = feed.Feed.Output.Protection is not { IsNone: true };
        foreach (int run in RunsOf(feed))
        {
            Add(Cause.WrongConductor, feed.Unit, run, CauseSizes.Conductor, own);
            Add(Cause.LongerRun, feed.Unit, run, CauseSizes.Longer, own);
            Add(Cause.PoorJoint, feed.Unit, run, CauseSizes.Joint, own);
            Add(Cause.WaterInJoint, feed.Unit, run, CauseSizes.Leak, own);
            Add(Cause.OpenConductor, feed.Unit, run, CauseSizes.One, own);
            Add(Cause.ShortCircuit, feed.Unit, run, CauseSizes.Short, isProtected ? own : withBox, isProtected ? null : feed.Box);
        }

        bool isDirect = feed.Feed.Box.Supply.Output.IsDc;
        for (int device = 0; device < feed.Devices; device++)
        {
            if (isDirect) Add(Cause.ReversedLeads, feed.Unit, device, CauseSizes.One, own);
            Add(Cause.LoadTooLarge, feed.Unit, device, CauseSizes.Draw, own);
            if (isDirect && feed.Feed.Devices[device].Device.Model.Kind == DeviceKind.Camera)
            {
                Add(Cause.ShieldCarriesReturn, feed.Unit, device, CauseSizes.Shield, own);
            }

            Device stated = feed.Feed.Devices[device].Device.Model;
            double[] others = [.. Enumerable.Range(0, _model.Models.Count).Where(m => !ReferenceEquals(_model.Models[m], stated))
                .Select(m => (double)m)];
            if (others.Length > 0) Add(Cause.WrongDevice, feed.Unit, device, CauseSizes.Discrete(others), own);
        }

        if (!isProtected) return;
        Add(Cause.ProtectiveDeviceOpen, feed.Unit, 0, CauseSizes.One, own);
        Add(Cause.ProtectiveDeviceHot, feed.Unit, 0, CauseSizes.One, own);
    }

    private void AddBox(BoxModel box)
    {
        int[] units = [.. _model.Feeds.Where(f => f.Box == box.Unit).Select(f => f.Unit), box.Unit];
        Add(Cause.SupplySetWrong, box.Unit, 0, CauseSizes.SetPoint(box.SetVolts), units);
        Add(Cause.SupplySags, box.Unit, 0, CauseSizes.Sag, units);
        Add(Cause.SupplyInLimit, box.Unit, 0, CauseSizes.Limit, units);
        if (box.Box.Battery is not null) Add(Cause.BatteryLow, box.Unit, 0, CauseSizes.Battery, units);
    }

    private void AddSwapped()
    {
        foreach (FeedModel feed in _model.Feeds)
        {
            for (int other = feed.Unit + 1; other < _model.Feeds.Length; other++)
            {
                if (_model.Feeds[other].Box == feed.Box)
                    Add(Cause.WrongOutput, feed.Unit, other, CauseSizes.One, [feed.Unit, other], other);
            }

            int used = _model.Feeds.Count(f => f.Box == feed.Box);
            if (feed.Feed.Box.Outputs.Count > used) Add(Cause.WrongOutput, feed.Unit, -1, CauseSizes.One, [feed.Unit]);
        }
    }

    private void AddMeter()
    {
        int[] all = [.. Enumerable.Range(0, _model.Units)];
        Add(Cause.MeterWrong, _model.Meter, (int)MeterQuantity.Ohms, CauseSizes.Leads, all);
        Add(Cause.MeterWrong, _model.Meter, (int)MeterQuantity.Amperes, CauseSizes.One, all);
        Add(Cause.MeterWrong, _model.Meter, (int)MeterQuantity.Volts, CauseSizes.One, all);
    }

    private void Add(Cause cause, int unit, int place, CauseSizes sizes, IReadOnlyList<int> units, int? second = null) =>
        _all.Add(new Hypothesis(cause, unit, place, sizes, logPrior: 0, units, second));
}
