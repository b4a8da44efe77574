using System.Collections.Generic;

namespace CamPower;

/// <summary>The faults of every used output of a site.</summary>
/// <remarks>Immutable. <para>Faults start fires. A study on paper does not replace the local code and a licensed electrician.</para></remarks>
public sealed class SiteFaults
{
    internal SiteFaults(SiteAssessment assessment, IReadOnlyList<OutputFaults> outputs)
    {
        Assessment = assessment;
        Outputs = outputs;
    }

    /// <summary>The solved site.</summary>
    public SiteAssessment Assessment { get; }

    /// <summary>Its used outputs, box by box in the site's order.</summary>
    public IReadOnlyList<OutputFaults> Outputs { get; }

    /// <summary>Every output on a line of its own, in the invariant culture; never throws.</summary>
    public override string ToString() => Outputs.Count == 0 ? "no outputs" : string.Join("\n", Outputs);
}
