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
            Add(UncertainQuantity.DeviceDraw, device.Name, device.Model.Draw is LabelDraw ? Usual.LabelDraw : Usual.Draw);
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
        PlaceOf(UncertainQuantity.ProtectionResistance, NameOf(box, output));

    internal int DrawOf(SiteDevice device) => PlaceOf(UncertainQuantity.DeviceDraw, device.Name);

    /// <summary>What an output is called: "yard box output 3".</summary>
    internal static string NameOf(DistributionBox box, BoxOutput output) =>
        FormattableString.Invariant($"{box.Name} output {output.Number}");

    private int PlaceOf(UncertainQuantity quantity, string name) => _places.TryGetValue((quantity, name), out int place) ? place : None;

    private void AddBox(DistributionBox box)
    {
        SupplyOutput supply = box.Supply.Output;
        Add(UncertainQuantity.SupplyVoltage, box.Name, UncertainRange.Of((supply.LowestVolts / supply.SetVolts) - 1,
            (supply.HighestVolts / supply.SetVolts) - 1, UncertaintyShape.Uniform, Sources.StatedBySite));
        foreach (BoxOutput output in box.Outputs.Where(o => o.Protection is { GreatestOhms: > 0 } && Site.Index.RunsFrom(box, o).Any()))
        {
            Add(UncertainQuantity.ProtectionResistance, NameOf(box, output), Usual.Protection);
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

        internal static UncertainRange Draw { get; } = Uniform(ToleranceConstants.DrawBelow, ToleranceConstants.DrawAbove);

        internal static UncertainRange LabelDraw { get; } = UncertainRange.Of(
            -ToleranceConstants.DrawBelowLabel.Value / 100, 0, UncertaintyShape.Uniform, ToleranceConstants.DrawBelowLabel.Source);

        internal static UncertainRange Protection { get; } = UncertainRange.Of(0, 1, UncertaintyShape.Uniform, Sources.StatedBySite);

        private static UncertainRange NominalResistance { get; } =
            Uniform(ToleranceConstants.NominalResistance, ToleranceConstants.NominalResistance);

        private static UncertainRange MaximumResistance { get; } = UncertainRange.Of(
            -ToleranceConstants.BelowMaximum.Value / 100, 0, UncertaintyShape.Uniform, ToleranceConstants.BelowMaximum.Source);

        internal static UncertainRange ResistanceOf(Cable cable) =>
            cable.Outgoing.Basis.IsMaximum || cable.Return.Basis.IsMaximum ? MaximumResistance : NominalResistance;

        private static UncertainRange Uniform(CitedValue below, CitedValue above) =>
            UncertainRange.Of(-below.Value / 100, above.Value / 100, UncertaintyShape.Uniform, above.Source);
    }
}
