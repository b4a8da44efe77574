using System;
using System.Collections.Generic;
using System.Threading;
using CamPower.Faults;
using CamPower.Mains;

namespace CamPower;

/// <summary>What a rule looks at.</summary>
/// <remarks>Immutable. It may come to hold more; a rule takes from it what it needs.</remarks>
/// <example>
/// <code>
/// IEnumerable&lt;Finding&gt; found = Rules.Undervoltage.Check(new Evidence(site.Assess()));
/// </code>
/// </example>
public sealed class Evidence
{
    private readonly Lazy<IReadOnlyList<OutputFaults>> _faults;
    private readonly Lazy<IReadOnlyList<ReceptacleAssessment>> _receptacles;

    /// <summary>The evidence that a solved site is.</summary>
    /// <param name="assessment">The solved site.</param>
    /// <param name="cancellationToken">Breaks off a check of it, and the study of faults.</param>
    /// <exception cref="ArgumentNullException"><paramref name="assessment"/> is null.</exception>
    public Evidence(SiteAssessment assessment, CancellationToken cancellationToken = default)
    {
        Assessment = Require.NotNull(assessment, nameof(assessment));
        CancellationToken = cancellationToken;
        _faults = new Lazy<IReadOnlyList<OutputFaults>>(() => SiteFaultStudy.Of(assessment, cancellationToken));
        _receptacles = new Lazy<IReadOnlyList<ReceptacleAssessment>>(() => ReceptacleStudy.Of(assessment));
    }

    /// <summary>The site solved in every condition.</summary>
    public SiteAssessment Assessment { get; }

    /// <summary>The faults of its outputs, studied once, when they are first asked for.</summary>
    public IReadOnlyList<OutputFaults> Faults => _faults.Value;

    /// <summary>What its boxes take from their receptacles, studied once, when it is first asked for.</summary>
    public IReadOnlyList<ReceptacleAssessment> Receptacles => _receptacles.Value;

    /// <summary>What breaks off a check of it, and the study of faults: a rule or a report that takes long asks it.</summary>
    public CancellationToken CancellationToken { get; }

    /// <summary>The name of the site; never throws.</summary>
    public override string ToString() => Assessment.ToString();
}
