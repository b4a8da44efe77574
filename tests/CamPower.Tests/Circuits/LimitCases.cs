using FsCheck;
using FsCheck.Fluent;

namespace CamPower.Tests.Circuits;

/// <summary>Limits above and below where the run collapses, and above the source.</summary>
public static class LimitCases
{
    private static readonly double[] LowestShares = [0.1, 0.3, 0.45, 0.55, 0.8, 0.9, 0.97, 0.97, 1.02];

    private static readonly double[] DropShares = [1, 1, 1, 0.7, 0.4, 0.1, 0.03];

    public static Arbitrary<LimitCase> Case() => (
        from feeding in FeedCases.Case().Generator
        from lowest in Gen.Elements(LowestShares)
        from drop in Gen.Elements(DropShares)
        from onlyDrop in Gen.Choose(0, 2)
        from joint in Gen.Elements(0, 0, 0.01, 0.3, 1)
        from celsius in Gen.Choose(-40, 90)
        select new LimitCase(feeding, onlyDrop == 0 && drop < 1 ? 0 : lowest, drop, joint, celsius)).ToArbitrary();
}
