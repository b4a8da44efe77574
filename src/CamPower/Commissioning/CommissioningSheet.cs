using System;
using System.Collections.Generic;
using System.Linq;
using System.Threading;
using CamPower.Assessment;
using CamPower.Tolerance;

namespace CamPower.Commissioning;

/// <summary>What to read on a site before it is handed over, in the order in which it is safe and quick.</summary>
/// <remarks>
/// Immutable. First dead and unplugged: no short, the far end jumpered, the loop read, the jumper removed and the pair proved open. Then
/// the box without load, each output with its devices unplugged, the polarity at each plug, each device running; at the end infrared,
/// forced on. Local codes and licensed practice come first.
/// </remarks>
/// <example>
/// <code>
/// var sheet = new CommissioningSheet(site, SiteTolerance.Standard, Meter.Handheld, at: mild);
/// foreach (ExpectedReading line in sheet.Lines) Console.WriteLine(line);
/// </code>
/// </example>
public sealed class CommissioningSheet
{
    private readonly ReadingModel _model;
    private readonly Lazy<IReadOnlyList<Finding>> _dangers;

    /// <summary>Makes the sheet of a site.</summary>
    /// <param name="site">The site.</param>
    /// <param name="tolerance">How uncertain its parts are.</param>
    /// <param name="meter">The meter that it is read with.</param>
    /// <param name="at">The temperatures while it is read.</param>
    /// <param name="cancellationToken">Cancels it: the sheet of a large site with shared returns takes seconds.</param>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    /// <exception cref="OperationCanceledException"><paramref name="cancellationToken"/> was canceled.</exception>
    public CommissioningSheet(
        Site site, SiteTolerance tolerance, Meter meter, Surroundings at, CancellationToken cancellationToken = default)
    {
        Site = Require.NotNull(site, nameof(site));
        Tolerance = Require.NotNull(tolerance, nameof(tolerance));
        Meter = Require.NotNull(meter, nameof(meter));
        At = Require.NotNull(at, nameof(at));
        _model = new ReadingModel(site, tolerance, at);
        _dangers = new(DangersOf);
        Lines = SheetOrder.PointsOf(_model).ConvertAll(point =>
        {
            cancellationToken.ThrowIfCancellationRequested();
            return Expect(point);
        }).AsReadOnly();
    }

    /// <summary>The site.</summary>
    public Site Site { get; }

    /// <summary>How uncertain its parts are.</summary>
    public SiteTolerance Tolerance { get; }

    /// <summary>The meter that it is read with.</summary>
    public Meter Meter { get; }

    /// <summary>The temperatures while it is read.</summary>
    public Surroundings At { get; }

    /// <summary>The readings to take, in their order.</summary>
    public IReadOnlyList<ExpectedReading> Lines { get; }

    /// <summary>What the rules find dangerous in the plan, worst first. While there is any, the site is not energized: only the readings
    /// on dead wires are taken.</summary>
    public IReadOnlyList<Finding> Dangers => _dangers.Value;

    /// <summary>What the meter should show at a point, on the sheet or not.</summary>
    /// <param name="point">The point.</param>
    /// <exception cref="ArgumentNullException"><paramref name="point"/> is null.</exception>
    /// <exception cref="ArgumentException">The site has no such place, or nothing hangs on the output.</exception>
    public ExpectedReading Expect(ReadingPoint point)
    {
        if (!Require.NotNull(point, nameof(point)).IsOn(Site))
        {
            throw new ArgumentException($"The site {Site.Name} has no place for {point}.", nameof(point));
        }

        return ReadingSteps.Expect(_model, point, Meter);
    }

    /// <summary>Site and number of readings; never throws.</summary>
    public override string ToString() => FormattableString.Invariant($"{Site}: {Lines.Count} readings");

    private IReadOnlyList<Finding> DangersOf() =>
        [.. RuleSet.Standard.Check(SiteSolver.Solve(Site, CancellationToken.None)).Where(finding => finding.Severity == Severity.Danger)];
}
