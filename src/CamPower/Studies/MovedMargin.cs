using UnitsNet;
using static System.FormattableString;

namespace CamPower;

/// <summary>The room that one thing has up to a limit, in two versions of a site.</summary>
/// <remarks>Immutable. <see cref="SiteComparison"/> makes it.</remarks>
/// <example><code>Console.WriteLine(comparison.Margins[0]);</code></example>
public sealed class MovedMargin
{
    private readonly double _change;

    internal MovedMargin(Subject about, string what, IQuantity before, IQuantity after, double limit)
    {
        About = about;
        What = what;
        Before = before;
        After = after;
        _change = (after.As(before.Unit) - (double)before.Value) / limit;
    }

    /// <summary>The device, output or box.</summary>
    public Subject About { get; }

    /// <summary>What the room is of, in words: "room to its lowest voltage".</summary>
    public string What { get; }

    /// <summary>The room before; negative where the limit was passed.</summary>
    public IQuantity Before { get; }

    /// <summary>The room after, of the same quantity.</summary>
    public IQuantity After { get; }

    /// <summary>How much more room there is, in percent of the limit; negative where there is less. [%]</summary>
    public Ratio Change => Ratio.FromPercent(100 * _change);

    internal double ChangeShare => _change;

    /// <summary>The thing, both rooms and the change, in the invariant culture; never throws.</summary>
    public override string ToString() =>
        Invariant($"{About}: {What} {(double)Before.Value:0.00} -> {After.As(Before.Unit):0.00} ") +
        Invariant($"{UnitAbbreviation} ({100 * _change:+0.0;-0.0;0.0} %)");

    private string UnitAbbreviation => Before is ElectricPotential ? "V" : "A";
}
