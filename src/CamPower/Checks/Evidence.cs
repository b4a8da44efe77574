using System;
using System.Collections.Generic;
using System.Linq;
using System.Threading;
using CamPower.Backup;
using CamPower.Checks;
using CamPower.Faults;
using CamPower.Mains;

namespace CamPower;

/// <summary>Input of a rule: a solved site and the studies of it.</summary>
/// <remarks>Immutable. Later versions may add members.</remarks>
/// <example>
/// <code>
/// IEnumerable&lt;Finding&gt; found = Rules.Undervoltage.Check(new Evidence(site.Assess()));
/// </code>
/// </example>
public sealed class Evidence
{
    private readonly Lazy<IReadOnlyList<OutputFaults>> _faults;
    private readonly Lazy<IReadOnlyList<ReceptacleAssessment>> _receptacles;
    private readonly Lazy<IReadOnlyList<BreakerAssessment>> _breakers;
    private readonly Lazy<IReadOnlyList<UninterruptibleAssessment>> _uninterruptible;
    private readonly Lazy<EnergyAssessment> _energy;
    private readonly Lazy<IReadOnlyList<BackupAssessment>> _backups;
    private readonly Lazy<IReadOnlyList<ReserveAssessment>> _reserves;
    private readonly Lazy<IReadOnlyList<Unstated>> _unstated;
    private readonly Lazy<RunCurrents> _runCurrents;

    /// <summary>Makes the evidence of a solved site.</summary>
    /// <param name="assessment">The solved site.</param>
    /// <param name="cancellationToken">Cancels a check of it, and the study of faults.</param>
    /// <exception cref="ArgumentNullException"><paramref name="assessment"/> is null.</exception>
    public Evidence(SiteAssessment assessment, CancellationToken cancellationToken = default)
    {
        Assessment = Require.NotNull(assessment, nameof(assessment));
        CancellationToken = cancellationToken;
        _faults = new Lazy<IReadOnlyList<OutputFaults>>(() => SiteFaultStudy.Of(assessment, cancellationToken));
        _receptacles = new Lazy<IReadOnlyList<ReceptacleAssessment>>(() => ReceptacleAssessment.AllOf(assessment));
        _breakers = new Lazy<IReadOnlyList<BreakerAssessment>>(() => BreakerAssessment.Of(Receptacles));
        _uninterruptible = new Lazy<IReadOnlyList<UninterruptibleAssessment>>(() => UninterruptibleAssessment.Of(Receptacles));
        _energy = new Lazy<EnergyAssessment>(() => new EnergyAssessment(assessment));
        _backups = new Lazy<IReadOnlyList<BackupAssessment>>(() => BackupStudy.Of(assessment));
        _reserves = new Lazy<IReadOnlyList<ReserveAssessment>>(() => ReserveAssessment.Of(assessment, cancellationToken));
        _unstated = new Lazy<IReadOnlyList<Unstated>>(() => Checks.Unstated.Of(this));
        _runCurrents = new Lazy<RunCurrents>(() => new RunCurrents(this));
    }

    /// <summary>The site solved in every condition.</summary>
    public SiteAssessment Assessment { get; }

    /// <summary>The faults of its outputs. They are studied once, at the first use.</summary>
    public IReadOnlyList<OutputFaults> Faults => _faults.Value;

    /// <summary>What its boxes draw from their receptacles. It is studied once, at the first use.</summary>
    public IReadOnlyList<ReceptacleAssessment> Receptacles => _receptacles.Value;

    /// <summary>The circuit breakers of its receptacles. They are studied once, at the first use.</summary>
    public IReadOnlyList<BreakerAssessment> Breakers => _breakers.Value;

    /// <summary>The uninterruptible supplies before its boxes. They are studied once, at the first use.</summary>
    public IReadOnlyList<UninterruptibleAssessment> Uninterruptible => _uninterruptible.Value;

    /// <summary>What it takes from the mains over time. It is studied once, at the first use.</summary>
    public EnergyAssessment Energy => _energy.Value;

    /// <summary>Its boxes with a battery. They are studied once, at the first use.</summary>
    public IReadOnlyList<BackupAssessment> Backups => _backups.Value;

    /// <summary>Its boxes with a second supply. They are studied once, at the first use.</summary>
    public IReadOnlyList<ReserveAssessment> Reserves => _reserves.Value;

    /// <summary>What is not stated and leaves a verdict unknown; of each, the boxes, outputs or models that it is not stated of.</summary>
    public ILookup<string, string> NotStated => Unstated.ToLookup(item => item.What, item => item.Where, StringComparer.Ordinal);

    internal IReadOnlyList<Unstated> Unstated => _unstated.Value;

    /// <summary>The current in each pole of each run. It is worked out once, at the first use.</summary>
    internal RunCurrents RunCurrents => _runCurrents.Value;

    /// <summary>Cancels a check of it, and the study of faults. A rule or a report that takes long asks it.</summary>
    public CancellationToken CancellationToken { get; }

    /// <summary>The name of the site; never throws.</summary>
    public override string ToString() => Assessment.ToString();
}
