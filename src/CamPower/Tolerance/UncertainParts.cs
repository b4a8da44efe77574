using System;
using System.Collections.Generic;
using System.Linq;

namespace CamPower.Tolerance;

/// <summary>Every uncertain number of a site, each once, in one order: a vector x of deviations has one entry for each.</summary>
/// <remarks>Immutable.</remarks>
internal sealed class UncertainParts
{
    /// <summary>The place of what is not uncertain, because it is not there.</summary>
    internal const int None = -1;

    private readonly Dictionary<(UncertainQuantity, string), int> _places = [];
    private readonly List<UncertainPart> _all = [];

    internal UncertainParts(Site site, SiteTolerance tolerance)
    {
        Site = site;
        Tolerance = tolerance;
        Temperature = Add(UncertainQuantity.CableTemperature, "all cables", Usual.Temperature);
        foreach (DistributionBox box in site.Boxes) AddBox(box);
        foreach (SiteRun run in site.Runs) AddRun(run);
        foreach (SiteDevice device in site.Devices)
        {
            Add(UncertainQuantity.DeviceDraw, device.Name, Usual.DrawOf(device.Model));
        }

        All = [.. _all];
        Expected = Array.ConvertAll(All, p => p.Range.Expected);
    }

    internal Site Site { get; }

    internal SiteTolerance Tolerance { get; }

    internal UncertainPart[] All { get; }

    /// <summary>The expected deviation of each.</summary>
    internal double[] Expected { get; }

    /// <summary>The place of the temperature of all cables.</summary>
    internal int Temperature { get; }

    internal int SupplyOf(DistributionBox box) => PlaceOf(UncertainQuantity.SupplyVoltage, box.Name);

    internal int ReelOf(Cable cable) => PlaceOf(UncertainQuantity.ConductorResistance, cable.ToString());

    internal int LengthOf(SiteRun run) => PlaceOf(UncertainQuantity.RunLength, run.To);

    internal int JointsOf(SiteRun run) => PlaceOf(UncertainQuantity.JointResistance, run.To);

    internal int ProtectionOf(DistributionBox box, BoxOutput output) =>
        PlaceOf(UncertainQuantity.ProtectionResistance, RunOrigin.NameOf(box.Name, output.Number));

    internal int DrawOf(SiteDevice device) => PlaceOf(UncertainQuantity.DeviceDraw, device.Name);

    private int PlaceOf(UncertainQuantity quantity, string name) => _places.TryGetValue((quantity, name), out int place) ? place : None;

    private void AddBox(DistributionBox box)
    {
        SupplyOutput supply = box.Supply.Output;
        Add(UncertainQuantity.SupplyVoltage, box.Name, UncertainRange.Of((supply.LowestVolts / supply.SetVolts) - 1,
            (supply.HighestVolts / supply.SetVolts) - 1, UncertaintyShape.Uniform, Sources.StatedBySite));
        foreach (BoxOutput output in box.Outputs.Where(o => o.Protection is { GreatestOhms: > 0 } && Site.Index.RunsFrom(box, o).Any()))
        {
            Add(UncertainQuantity.ProtectionResistance, RunOrigin.NameOf(box.Name, output.Number), Usual.Protection);
        }
    }

    private void AddRun(SiteRun run)
    {
        foreach (Cable cable in run.Run.Segments.Select(s => s.Cable))
        {
            if (ReelOf(cable) == None) Add(UncertainQuantity.ConductorResistance, cable.ToString(), Usual.ResistanceOf(cable));
        }

        Add(UncertainQuantity.RunLength, run.To, Usual.Length);
        if (run.Run.Parts.OfType<Joint>().Any(j => j.OhmsAt20C > 0)) Add(UncertainQuantity.JointResistance, run.To, Usual.Joints);
    }

    private int Add(UncertainQuantity quantity, string name, UncertainRange usual)
    {
        _places.Add((quantity, name), _all.Count);
        _all.Add(new UncertainPart(quantity, name, Tolerance.RangeOf(quantity, name, usual)));
        return _all.Count - 1;
    }

    // The usual ranges, from the cited numbers.
    private static class Usual
    {
        internal static UncertainRange Temperature { get; } = UncertainRange.OfTemperature(
            UnitsNet.TemperatureDelta.FromKelvins(-ToleranceConstants.Temperature.Value),
            UnitsNet.TemperatureDelta.FromKelvins(ToleranceConstants.Temperature.Value), UncertaintyShape.Uniform,
            ToleranceConstants.Temperature.Source);

        internal static UncertainRange Length { get; } = Uniform(ToleranceConstants.Length, ToleranceConstants.Length);

        internal static UncertainRange Joints { get; } = Uniform(ToleranceConstants.JointBelow, ToleranceConstants.JointAbove);

        private static UncertainRange OfDataSheet { get; } = Uniform(ToleranceConstants.DrawBelow, ToleranceConstants.DrawAbove);

        private static UncertainRange OfLabel { get; } = Below(ToleranceConstants.DrawBelowLabel);

        private static UncertainRange OfConverter { get; } = Below(ToleranceConstants.DrawBelowFullLoad);

        internal static UncertainRange Protection { get; } = UncertainRange.Of(0, 1, UncertaintyShape.Uniform, Sources.StatedBySite);

        private static UncertainRange NominalResistance { get; } =
            Uniform(ToleranceConstants.NominalResistance, ToleranceConstants.NominalResistance);

        private static UncertainRange MaximumResistance { get; } = Below(ToleranceConstants.BelowMaximum);

        internal static UncertainRange ResistanceOf(Cable cable) =>
            cable.Outgoing.Basis.IsMaximum || cable.Return.Basis.IsMaximum ? MaximumResistance : NominalResistance;

        internal static UncertainRange DrawOf(Device model) => model.Kind == DeviceKind.Converter
            ? OfConverter
            : model.Draw is LabelDraw ? OfLabel : OfDataSheet;

        private static UncertainRange Below(CitedValue below) =>
            UncertainRange.Of(-below.Value / 100, 0, UncertaintyShape.Uniform, below.Source);

        private static UncertainRange Uniform(CitedValue below, CitedValue above) =>
            UncertainRange.Of(-below.Value / 100, above.Value / 100, UncertaintyShape.Uniform, above.Source);
    }
}
