using System;
using System.Diagnostics;
using System.Linq;
using System.Threading;
using CamPower.Tests.Sites;
using UnitsNet;

namespace CamPower.Tests.Assessment;

/// <summary>What takes long can be broken off, wherever it stands.</summary>
public class CancellationTests
{
    private static readonly CancellationToken Canceled = new(canceled: true);

    // Cameras on one box, each with the negative of the one before and far too long a way: they restart, one after the other.
    private static Site Restarting { get; } = Shared(meters: 100, cameras: 160);

    [Fact]
    public void CanceledBefore_NothingIsWorkedOut()
    {
        Site site = Shared(meters: 1);
        Assert.Throws<OperationCanceledException>(() => site.Assess(Canceled));
        Assert.Throws<OperationCanceledException>(() => site.TrimWindowOf(SmallSite.BoxName, Canceled));

        SiteAssessment assessment = site.Assess();
        Assert.NotEmpty(RuleSet.Standard.Check(assessment));
        Assert.Throws<OperationCanceledException>(() => RuleSet.Standard.Check(assessment, Canceled));
        Assert.Throws<OperationCanceledException>(() => assessment.StudyFaults(Canceled)[0].AtTerminals);
    }

    [Fact]
    public void Assessment_IsBrokenOffSoon() => IsBrokenOffSoon(token => Restarting.Assess(token));

    [Fact]
    public void TrimSearch_IsBrokenOffSoon() => IsBrokenOffSoon(token => Shared(meters: 10).TrimWindowOf(SmallSite.BoxName, token));

    [Fact]
    public void FaultStudy_IsBrokenOffSoon()
    {
        SiteAssessment assessment = Shared(meters: 10, cameras: 64).Assess();
        IsBrokenOffSoon(token =>
        {
            for (int i = 0; i < 1000; i++)
            {
                foreach (OutputFaults output in assessment.StudyFaults(token)) Assert.NotEmpty(output.Shorts);
            }
        });
    }

    // An untouched token changes nothing.
    [Fact]
    public void TokenThatIsNotCanceled_ChangesNoAnswer()
    {
        using var source = new CancellationTokenSource();
        Site site = Shared(meters: 10);
        Assert.Equal(site.Assess().Devices.Select(d => d.Worst.ToString()), site.Assess(source.Token).Devices.Select(d => d.Worst.ToString()));
        Assert.Equal(
            RuleSet.Standard.Check(site.Assess()).Select(f => f.Message),
            RuleSet.Standard.Check(site.Assess(), source.Token).Select(f => f.Message));
    }

    // Each of these takes seconds when it is let run. The bound is wide, for a busy machine.
    private static void IsBrokenOffSoon(Action<CancellationToken> action)
    {
        using var source = new CancellationTokenSource();
        var watch = Stopwatch.StartNew();

        // A thread of its own: a timer waits for one of those that other tests keep busy.
        var canceller = new Thread(() =>
        {
            Thread.Sleep(100);
            source.Cancel();
        });
        canceller.Start();
        try
        {
            Assert.Throws<OperationCanceledException>(() => action(source.Token));
        }
        finally
        {
            canceller.Join();
        }

        Assert.InRange(watch.Elapsed, TimeSpan.FromMilliseconds(50), TimeSpan.FromSeconds(5));
    }

    private static Site Shared(double meters, int cameras = 48)
    {
        Device camera = SmallSite.Camera(SmallSite.Watts(4.6), SmallSite.Range(10.8, 13.2), SmallSite.Starts(9, 8, soft: null));
        var supply = new Supply("supply", new DcOutput(SmallSite.Volts(12), ElectricCurrent.FromAmperes(50), Ratio.FromPercent(1), SmallSite.Range(12, 14),
            overload: OverloadBehavior.ConstantCurrent(ElectricCurrent.FromAmperes(30))), Derating.GenericEnclosed);
        var pair = Cable.Pair(WireSize.Awg(16), Stranding.ClassB, ConductorMaterial.AnnealedCopper);
        Condition[] conditions = [.. Enumerable.Range(0, 3).Select(i => new Condition(FormattableString.Invariant($"night {i}"), LoadComponents.Infrared, SmallSite.At()))];
        return new Site("shared", conditions, [DistributionBox.OfEqualOutputs(SmallSite.BoxName, supply, cameras, ElectricCurrent.FromAmperes(2))],
            Enumerable.Range(1, cameras).Select(i => new SiteRun(RunOrigin.Output(SmallSite.BoxName, i), At(i), new CableRun(pair, Length.FromMeters(meters)), i > 1 ? At(i - 1) : null)),
            Enumerable.Range(1, cameras).Select(i => new SiteDevice(At(i), camera, At(i))));

        static string At(int i) => FormattableString.Invariant($"camera {i}");
    }
}
