using System.Linq;

namespace CamPower.Commissioning;

/// <summary>The numbers of a feed that its tolerances move. SI doubles.</summary>
internal sealed class FeedNumbers(double[] runOhms, double[] drawScale, double protectionOhms)
{
    /// <summary>Loop resistance of each run. [Ω]</summary>
    internal double[] RunOhms { get; } = runOhms;

    /// <summary>What each device draws, over what its data sheet states. [1]</summary>
    internal double[] DrawScale { get; } = drawScale;

    /// <summary>Resistance of the protective device of the output. [Ω]</summary>
    internal double ProtectionOhms { get; } = protectionOhms;

    internal FeedNumbers WithProtection(double ohms) => new(RunOhms, DrawScale, ohms);

    internal FeedNumbers WithRun(int run, double added) => new(Added(RunOhms, run, added), DrawScale, ProtectionOhms);

    internal FeedNumbers WithRuns(double[] added) => new([.. RunOhms.Select((r, i) => r + added[i])], DrawScale, ProtectionOhms);

    internal FeedNumbers WithDraw(int device, double added) => new(RunOhms, Added(DrawScale, device, added), ProtectionOhms);

    private static double[] Added(double[] values, int at, double added)
    {
        var changed = (double[])values.Clone();
        changed[at] += added;
        return changed;
    }
}
