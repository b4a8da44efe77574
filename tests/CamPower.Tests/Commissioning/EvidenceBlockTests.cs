using System;
using CamPower.Commissioning;

namespace CamPower.Tests.Commissioning;

public class EvidenceBlockTests
{
    // Two units with one reading each, one common number z: r1 = z + e1, r2 = 2z + e2, with variances 1 and 4. Together they are normal with
    // covariance [[2, 2], [2, 8]]: determinant 12, inverse [[8, -2], [-2, 2]]/12. For r = (1, 3): (8 - 12 + 18)/12 = 14/12.
    [Fact]
    public void UnitsThatShareANumber_AreOneNormalDistribution()
    {
        EvidenceBlock both = EvidenceBlock.Of([1], [1], [], [[1]]);
        both.Add(EvidenceBlock.Of([3], [4], [], [[2]]), 1);
        Assert.Equal(-0.5 * ((14.0 / 12) + Math.Log(12)), both.LogLikelihood(), 1e-12);
    }

    // The unit's own number of standard deviation 3 beside a meter of variance 1: variance 10.
    [Fact]
    public void OwnNumber_WidensItsReadings()
    {
        EvidenceBlock block = EvidenceBlock.Of([2], [1], [[3]], [null]);
        Assert.Equal(-0.5 * ((4.0 / 10) + Math.Log(10)), block.LogLikelihood(), 1e-12);
    }

    [Fact]
    public void TakingAUnitOut_LeavesTheOther()
    {
        EvidenceBlock one = EvidenceBlock.Of([1], [1], [], [[1]]), other = EvidenceBlock.Of([3], [4], [], [[2]]);
        var sum = new EvidenceBlock(1);
        sum.Add(one, 1);
        sum.Add(other, 1);
        sum.Add(other, -1);
        Assert.Equal(EvidenceBlock.Of([1], [1], [], [[1]]).LogLikelihood(), sum.LogLikelihood(), 1e-12);
    }

    // 2 with variance 1, and a common number that may be anything of variance 3: 4/(1 + 3) = 1.
    [Fact]
    public void Misfit_LeavesWhatTheCommonNumberExplains() =>
        Assert.Equal(1, EvidenceBlock.Of([2], [1], [], [[Math.Sqrt(3)]]).MisfitSquare(), 1e-12);
}
