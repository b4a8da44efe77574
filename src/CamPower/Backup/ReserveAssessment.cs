using System;
using System.Collections.Generic;
using System.Linq;
using System.Threading;
using CamPower.Assessment;
using UnitsNet;

namespace CamPower.Backup;

/// <summary>A box on two supplies through diodes: what each gives, and what the reserve does when the main supply fails.</summary>
/// <remarks>Immutable. What remains when the reserve fails is the assessment of the site itself: it counts on the main supply alone.
/// Nothing tells that one of two supplies has failed, unless something is fitted that does.</remarks>
/// <example>
/// <code>
/// foreach (ReserveAssessment reserve in site.Assess().StudyReserves()) Console.WriteLine(reserve);
/// </code>
/// </example>
public sealed class ReserveAssessment
{
    private ReserveAssessment(SiteAssessment solved, BoxAssessment box, CancellationToken cancellationToken)
    {
        Box = box.Box;
        OnReserve = SiteSolver.Solve(solved.Site.With(Box.OnReserve()), cancellationToken);
        BoxAssessment alone = OnReserve.Boxes.Single(b => string.Equals(b.Box.Name, Box.Name, StringComparison.Ordinal));
        InConditions = Array.AsReadOnly([.. box.InConditions.Select(
            (c, i) => new ReserveInCondition(Box, c, alone.InConditions[i], LostIn(i, solved)))]);
        Worst = InConditions.OrderByDescending(c => c.Lost.Count).ThenByDescending(c => c.Loading).First();
    }

    /// <summary>The box.</summary>
    public DistributionBox Box { get; }

    /// <summary>The site solved with the main supply of the box failed: its reserve feeds the box alone.</summary>
    public SiteAssessment OnReserve { get; }

    /// <summary>Both supplies in each condition, in the site's order.</summary>
    public IReadOnlyList<ReserveInCondition> InConditions { get; }

    /// <summary>The condition in which most devices are lost once the main supply has failed; of several, that which leaves the least of
    /// the reserve's rating.</summary>
    public ReserveInCondition Worst { get; }

    /// <summary>Every box of a site that has a second supply.</summary>
    internal static IReadOnlyList<ReserveAssessment> Of(SiteAssessment solved, CancellationToken cancellationToken) => Array.AsReadOnly(
        [.. solved.Boxes.Where(b => b.Box.Reserve is not null).Select(b => new ReserveAssessment(solved, b, cancellationToken))]);

    /// <summary>Both supplies and the worst condition in the invariant culture; never throws.</summary>
    public override string ToString() => $"{Box.Supply} and {Box.Reserve}; {Worst}";

    private SiteDevice[] LostIn(int condition, SiteAssessment solved) => [.. solved.Devices
        .Where((d, i) => IsServed(d.InConditions[condition]) && !IsServed(OnReserve.Devices[i].InConditions[condition]))
        .Select(d => d.Device)];

    private static bool IsServed(DeviceInCondition device) =>
        device.State == DeviceState.Up && !device.LowestVoltage(Ratio.Zero).IsViolated;
}
