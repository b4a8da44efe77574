using System.Collections.Generic;
using CamPower.Tests.Protection;
using CamPower.Tests.Faults;
using CamPower.Tests.Supplies;
using UnitsNet;

namespace CamPower.Tests;

/// <summary>One of each public type of protection and faults.</summary>
internal static class FaultSamples
{
    internal static IEnumerable<object> All()
    {
        Fuse fuse = SmallDevices.Fuse(FuseCharacteristic.IecQuickActing, 1.5, meltingIntegral: 4.5);
        FaultStudy study = SmallFault.Study(SmallFault.Run(12.5), fuse);
        PowerLimitAssessment limited = LimitedOutputs.Box(LimitedOutputs.Holding(12.5, 4.5, 6.5), fuse).AssessPowerLimit(1, PowerLimitClass.Class2);
        ShareCurve<Temperature> curve = ResettableFuse.GenericThermal;
        IReadOnlyList<OutputFaults> site = SmallFaultSite.TwoOutputs(SmallFault.QuickActing(2.5)).Assess().StudyFaults();
        return
        [
            fuse, fuse.Characteristic, .. fuse.Characteristic.TimeLimits, fuse.MinimumMeltingIntegral!.Value, SmallDevices.Printed(1.10), curve, curve.Points[0], ProtectiveDevice.None, ElectronicLimitTests.Limit(amperes: 1.25),
            fuse.OpeningAt(ElectricCurrent.FromAmperes(4.75), SmallDevices.Room), fuse.OpeningAt(ElectricCurrent.FromAmperes(2.5), SmallDevices.Room),
            fuse.OpeningAt(ElectricCurrent.FromAmperes(0.5), SmallDevices.Room),
            new Inrush(ElectricCurrent.FromAmperes(8.5), Duration.FromMilliseconds(2.5)), site[0], site[0].AtTerminals, site[0].AtTerminals.Supply, site[0].InConditions[0], site[0].InConditions[0].Load,
            OverloadBehavior.ConstantCurrent(ElectricCurrent.FromAmperes(2.5)), study, study.AtFarEnd, study.OverloadOf(ElectricCurrent.FromAmperes(4.5)), study.Supply, Insulation.Pvc70, limited, limited.Routes[0], limited.Routes[0].Figures[0],
        ];
    }
}
