using System;
using System.Collections.Generic;
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

    /// <summary>Moved along several directions at once, by so many standard deviations; nothing falls below nothing.</summary>
    internal FeedNumbers Moved(IReadOnlyList<Direction> directions, double[] by)
    {
        double[] ohms = (double[])RunOhms.Clone(), draw = (double[])DrawScale.Clone();
        double protection = ProtectionOhms;
        for (int i = 0; i < by.Length; i++)
        {
            if (by[i] == 0) continue;
            FeedNumbers moved = directions[i].Numbers;
            for (int run = 0; run < ohms.Length; run++) ohms[run] += by[i] * (moved.RunOhms[run] - RunOhms[run]);
            for (int device = 0; device < draw.Length; device++) draw[device] += by[i] * (moved.DrawScale[device] - DrawScale[device]);
            protection += by[i] * (moved.ProtectionOhms - ProtectionOhms);
        }

        for (int run = 0; run < ohms.Length; run++) ohms[run] = Math.Max(ohms[run], 0);
        for (int device = 0; device < draw.Length; device++) draw[device] = Math.Max(draw[device], 0);
        return new FeedNumbers(ohms, draw, Math.Max(protection, 0));
    }

    private static double[] Added(double[] values, int at, double added)
    {
        var changed = (double[])values.Clone();
        changed[at] += added;
        return changed;
    }
}
