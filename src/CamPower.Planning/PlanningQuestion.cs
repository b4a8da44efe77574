using System;
using System.Collections.Generic;
using System.Linq;
using System.Threading;
using UnitsNet;

namespace CamPower.Planning;

/// <summary>What must be fed, from where it may be fed, and what is sold: the question that a plan answers.</summary>
/// <remarks>Immutable. Each camera gets an output and a run of its own.</remarks>
/// <example>
/// <code>
/// var question = new PlanningQuestion("depot", conditions, cameras, places) { Cables = [CableCatalog.Pair18, CableCatalog.Pair16] };
/// SitePlan plan = question.Plan();
/// Console.WriteLine(plan.ToText());
/// </code>
/// </example>
public sealed class PlanningQuestion
{
    // A price above this is none.
    internal const double MostCost = 1e6;

    private const double MostWork = 1e5;

    private readonly IReadOnlyList<DistributionBox> _boxes = BoxCatalog.Generic;
    private readonly IReadOnlyList<Cable> _cables =
        [CableCatalog.Pair22, CableCatalog.Pair20, CableCatalog.Pair18, CableCatalog.Pair16, CableCatalog.Pair14];

    /// <summary>States what must be fed, and the places for boxes.</summary>
    /// <param name="name">Name of the site. Not empty.</param>
    /// <param name="conditions">The conditions that it must survive; at least one.</param>
    /// <param name="cameras">The cameras; at least one.</param>
    /// <param name="places">The places; at least one.</param>
    /// <exception cref="ArgumentNullException">A reference is null.</exception>
    /// <exception cref="ArgumentException"><paramref name="name"/> is empty, a list is empty, a name is used twice, or a camera must be fed
    /// from a place that is not in the list.</exception>
    public PlanningQuestion(
        string name, IEnumerable<Condition> conditions, IEnumerable<PlannedCamera> cameras, IEnumerable<BoxPlace> places)
    {
        Name = Given.Name(name, nameof(name));
        Conditions = NotEmpty(conditions, c => c.Name, nameof(conditions));
        Cameras = NotEmpty(cameras, c => c.Name, nameof(cameras));
        Places = NotEmpty(places, p => p.Name, nameof(places));
        PlannedCamera? lost = Cameras.FirstOrDefault(c => c.Place is not null && Places.All(p => !Same(p.Name, c.Place)));
        if (lost is null) return;
        throw new ArgumentException($"{lost} must be fed from {lost.Place}, which is not among the places.", nameof(cameras));
    }

    /// <summary>Name of the site.</summary>
    public string Name { get; }

    /// <summary>The conditions that it must survive.</summary>
    public IReadOnlyList<Condition> Conditions { get; }

    /// <summary>The cameras.</summary>
    public IReadOnlyList<PlannedCamera> Cameras { get; }

    /// <summary>The places for boxes.</summary>
    public IReadOnlyList<BoxPlace> Places { get; }

    /// <summary>The boxes that are sold, each set as it would be set on site: list one twice where it may be set to two voltages.
    /// <see cref="BoxCatalog.Generic"/> where nothing else is stated.</summary>
    /// <remarks>All outputs of a box are alike, its supply gives regulated direct voltage, and it is not fed from a run.</remarks>
    /// <exception cref="ArgumentNullException">The list or a box is null.</exception>
    /// <exception cref="ArgumentException">A box cannot be planned with.</exception>
    public IReadOnlyList<DistributionBox> Boxes
    {
        get => _boxes;
        init => _boxes = Given.Items(value, nameof(Boxes));
    }

    /// <summary>The cables that are sold. The pairs of <see cref="CableCatalog"/> from 22 to 14 AWG where nothing else is stated.</summary>
    /// <exception cref="ArgumentNullException">The list or a cable is null.</exception>
    public IReadOnlyList<Cable> Cables
    {
        get => _cables;
        init => _cables = Given.Items(value, nameof(Cables));
    }

    /// <summary>What things and work cost.</summary>
    public PriceList Prices { get; init; } = PriceList.Neutral;

    /// <summary>The rules that the plan must keep.</summary>
    public RuleSet Rules { get; init; } = RuleSet.Standard;

    /// <summary>The most severe finding that a plan may have: only notes where nothing else is stated.</summary>
    public Severity MostSevere { get; init; } = Severity.Note;

    /// <summary>Spare outputs, and the most that a supply is loaded with.</summary>
    public SizingPolicy Sizing { get; init; } = SizingPolicy.CommonPractice;

    /// <summary>What is ordered above what is drawn. Spare fuses are counted box by box.</summary>
    public MaterialPolicy Material { get; init; } = MaterialPolicy.CommonPractice;

    /// <summary>Installation method of the runs; null where it is not stated.</summary>
    public InstallationMethod? InstallationMethod { get; init; }

    /// <summary>Height above the sea; null where it does not matter. [m]</summary>
    public Length? Altitude { get; init; }

    /// <summary>The plan of least cost that keeps every rule in all conditions, with a proven lower bound of the cost.</summary>
    /// <param name="workLimit">Most work of the solver, above 0 and at most 100 000, in its own unit, which takes a second or some
    /// seconds. The same question with the same limit gets the same plan, on a busy machine too.</param>
    /// <param name="cancellationToken">Cancels it.</param>
    /// <returns>The plan, or the answer that there is none.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="workLimit"/> is outside its range.</exception>
    /// <exception cref="ArgumentException">A box cannot be planned with.</exception>
    /// <exception cref="OperationCanceledException"><paramref name="cancellationToken"/> was canceled.</exception>
    public SitePlan Plan(double workLimit = 10, CancellationToken cancellationToken = default)
    {
        Given.Within(workLimit, double.Epsilon, MostWork, nameof(workLimit), "");
        return new PlanSearch(new PlanningCase(this, cancellationToken), workLimit, cancellationToken).Plan();
    }

    /// <summary>The name; never throws.</summary>
    public override string ToString() => Name;

    internal static bool Same(string? one, string? other) => string.Equals(one, other, StringComparison.Ordinal);

    private static IReadOnlyList<T> NotEmpty<T>(IEnumerable<T> items, Func<T, string> nameOf, string parameter) where T : class
    {
        IReadOnlyList<T> all = Given.Items(items, parameter);
        if (all.Count == 0) throw new ArgumentException($"{parameter} must not be empty.", parameter);
        string? twice = all.GroupBy(nameOf, StringComparer.Ordinal).FirstOrDefault(g => g.Count() > 1)?.Key;
        return twice is null ? all : throw new ArgumentException($"{twice} is in {parameter} twice.", parameter);
    }
}
