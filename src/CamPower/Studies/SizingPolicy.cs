using System;
using CamPower.Checks;
using CamPower.Studies;
using UnitsNet;

namespace CamPower;

/// <summary>Margins that a chosen box must leave.</summary>
/// <remarks>Immutable.</remarks>
public sealed class SizingPolicy
{
    /// <summary>States a policy.</summary>
    /// <param name="spareOutputs">Spare outputs, as a share of those in use, from 0 to 10; the number is rounded up. [1]</param>
    /// <param name="loading">The most that the supply may be loaded with, as a share of its derated rating, above 0 and at most 1.
    /// [1]</param>
    /// <exception cref="ArgumentOutOfRangeException">A share is outside its range.</exception>
    public SizingPolicy(Ratio spareOutputs, Ratio loading)
    {
        SpareShare = Require.Within(spareOutputs.DecimalFractions, 0, 10, nameof(spareOutputs), "");
        LoadingShare = Require.Positive(Require.Within(loading.DecimalFractions, 0, 1, nameof(loading), ""), nameof(loading), "");
        SpareOutputs = spareOutputs;
        Loading = loading;
    }

    /// <summary>A quarter more outputs than are used, and 80 % of the derated rating.</summary>
    /// <remarks>Common practice, no source.</remarks>
    public static SizingPolicy CommonPractice { get; } =
        new(Ratio.FromPercent(StudyConstants.SpareOutputs.Value), Ratio.FromPercent(CheckConstants.Headroom.Value));

    /// <summary>Spare outputs, as a share of those in use. [1]</summary>
    public Ratio SpareOutputs { get; }

    /// <summary>The most that the supply may be loaded with, as a share of its derated rating. [1]</summary>
    public Ratio Loading { get; }

    internal double LoadingShare { get; }

    private double SpareShare { get; }

    /// <summary>Both shares in the invariant culture; never throws.</summary>
    public override string ToString() =>
        FormattableString.Invariant($"{SpareShare * 100:0.###} % spare outputs, loaded to {LoadingShare * 100:0.###} %");

    /// <summary>Whether the supply of a box is loaded no further than this; where its warmth is not known that is for another constraint to
    /// say.</summary>
    internal bool IsKeptBy(BoxInCondition box) => box.Load(Loading).Verdict is Verdict.Holds or Verdict.Unknown;

    // What a binary fraction is above the decimal one is no output.
    internal int OutputsFor(int used) => (int)Math.Ceiling((used * (1 + SpareShare)) - 1e-9);
}
