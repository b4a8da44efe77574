using CamPower.Assessment;
using CamPower.Circuits;
using CamPower.Sites;

namespace CamPower.Tolerance;

/// <summary>Outputs whose returns meet: a network of both poles, built anew for each vector of deviations.</summary>
internal sealed class UncertainNetwork(FeedGroup group, UncertainParts parts, Condition condition)
    : UncertainCircuit(group, parts, condition)
{
    /// <remarks>Shared negatives are a tree of their own; shields and bonds close rings.</remarks>
    internal override bool HasOneWayBack => Group.Links.Count == 0;

    internal override bool TrySolve(double[] deviations, Load[] loads, double[] deviceVolts)
    {
        NetworkSolution solution = NetworkOf(deviations, loads).Solve();
        for (int i = 0; i < deviceVolts.Length; i++)
        {
            deviceVolts[i] = solution.HasOperatingPoint ? solution.VoltsAt(i) : RunKernel.NoOperatingPoint;
        }

        return solution.HasOperatingPoint;
    }

    private DcNetwork NetworkOf(double[] deviations, Load[] loads) => new PoleNetwork(Group)
    {
        Protection = feed => ($"protection of {PoleNetwork.NameOf(Group.Feeds[feed])}", ProtectionOhms(feed, deviations)),
        SourceVolts = feed => SourceVolts(feed, deviations),
        RunOhms = (_, run) => (Runs[run].OutgoingOhms(deviations), Runs[run].ReturnOhms(deviations)),
        LoadOf = device => loads[device].Scaled(DrawScale(device, deviations)),
    }.Build();
}
