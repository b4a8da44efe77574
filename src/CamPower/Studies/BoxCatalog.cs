using System;
using System.Collections.Generic;
using System.Linq;
using CamPower.Studies;
using UnitsNet;

namespace CamPower;

/// <summary>Boxes to choose from. A catalog is any list of boxes: make one of what your wholesaler has.</summary>
public static class BoxCatalog
{
    // The resettable fuse that the limit of its outputs comes from.
    private static ResettableFuse Protection { get; } =
        ResettableFuse.Generic16Volt.Single(fuse => fuse.HoldCurrent.Amperes.Equals(StudyConstants.GenericOutputLimit.Value));

    /// <summary>Typical 12 V DC boxes of 4, 8, 12 and 16 outputs, each output good for 1.1 A, with 1.25 A of supply an output: 5 A to 20
    /// A.</summary>
    /// <remarks>Common practice, no source: if a data sheet says something else, use it. Trimmed from 12 V to 14 V within 2 %, each
    /// output behind a resettable fuse that holds its limit at 20 °C and less in warmer air, derated by the generic curve of enclosed
    /// supplies, with the efficiency and power factor of usual ones without power factor correction.</remarks>
    public static IReadOnlyList<DistributionBox> Generic { get; } =
        Array.AsReadOnly([.. new[] { 4, 8, 12, 16 }.Select(outputs => Box(outputs, 1.25 * outputs))]);

    private static DistributionBox Box(int outputs, double amperes)
    {
        ElectricPotential lowest = ElectricPotential.FromVolts(StudyConstants.GenericTrimFrom.Value);
        var output = new DcOutput(lowest, ElectricCurrent.FromAmperes(amperes), Ratio.FromPercent(StudyConstants.GenericTolerance.Value),
            new VoltageRange(lowest, ElectricPotential.FromVolts(StudyConstants.GenericTrimTo.Value)));
        var supply = new Supply(FormattableString.Invariant($"12 V {amperes} A supply"), output, Derating.GenericEnclosed,
            new SupplyInput(efficiency: Curve(
                StudyConstants.GenericEfficiencyAtTenth, StudyConstants.GenericEfficiencyAtHalf, StudyConstants.GenericEfficiencyAtRating),
                powerFactor: Curve(StudyConstants.GenericPowerFactorAtTenth, StudyConstants.GenericPowerFactorAtHalf,
                    StudyConstants.GenericPowerFactorAtRating)));
        return DistributionBox.OfEqualOutputs(FormattableString.Invariant($"{outputs} outputs, {amperes} A"), supply, outputs,
            ElectricCurrent.FromAmperes(StudyConstants.GenericOutputLimit.Value), Protection);
    }

    private static ShareCurve<Ratio> Curve(CitedValue atTenth, CitedValue atHalf, CitedValue atRating) =>
        new(Point(10, atTenth), Point(50, atHalf), Point(100, atRating));

    private static SharePoint<Ratio> Point(double loadPercent, CitedValue share) =>
        new(Ratio.FromPercent(loadPercent), Ratio.FromPercent(share.Value));
}
