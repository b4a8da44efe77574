using System.Collections.Generic;
using CamPower.Tests.Sites;
using UnitsNet;

namespace CamPower.Tests;

/// <summary>One of each public type that a site on a transformer is made of and answers with.</summary>
internal static class AlternatingSamples
{
    internal static IEnumerable<object> All()
    {
        AcOutput plate = AcOutput.Transformer(ElectricApparentPower.FromVoltamperes(40.5), SmallSite.Volts(24), SmallSite.Volts(27.5), Ratio.FromPercent(2.5), Frequency.FromHertz(60));
        AcStage stage = AcStage.FullWave(ElectricCapacitance.FromMicrofarads(470.5));
        var camera = new Device("model", DeviceKind.Camera, new ComponentDraw(SmallSite.Watts(4.5)), acInput: SmallSite.Wide, starting: SmallSite.Starts(18.5, 14.5), acStage: stage);
        AcInCondition ac = SmallSite.Single(1.25, camera, new Supply("transformer", plate, Derating.GenericEnclosed)).Assess().Devices[0].Worst.Ac!;
        return [plate, stage, ac, AcStage.HalfWave(), AcStage.Lagging(Ratio.FromPercent(62.5))];
    }
}
