using System.Globalization;
using UnitsNet;

namespace CamPower;

/// <summary>One reason why a box will not do: what is needed and what it has.</summary>
/// <remarks>Immutable.</remarks>
public sealed class BoxShortfall
{
    internal BoxShortfall(BoxConstraint constraint, IQuantity needed, IQuantity has, Condition? condition = null)
    {
        Constraint = constraint;
        Needed = needed;
        Has = has;
        Condition = condition;
    }

    /// <summary>Constraint that is not satisfied.</summary>
    public BoxConstraint Constraint { get; }

    /// <summary>What is needed: outputs as a number, a current, a voltage, or a load as a share of the rating.</summary>
    public IQuantity Needed { get; }

    /// <summary>What the box has, in the same quantity.</summary>
    public IQuantity Has { get; }

    /// <summary>The condition that needs it; null where it is none.</summary>
    public Condition? Condition { get; }

    /// <summary>What is needed and what there is, in the invariant culture; never throws.</summary>
    public override string ToString()
    {
        string needed = Needed.ToString("s3", CultureInfo.InvariantCulture), has = Has.ToString("s3", CultureInfo.InvariantCulture);
        string where = Condition is null ? "" : $" in {Condition}";
        return Constraint switch
        {
            BoxConstraint.Voltage => $"it gives another voltage or kind of current: {has}, and {needed} is wanted",
            BoxConstraint.Outputs => $"too few outputs: {has}, and {needed} are wanted",
            BoxConstraint.OutputLimit => $"an output is too weak: {has}, and {needed} is wanted{where}",
            BoxConstraint.Protection => $"a protective device may open: it carries {has}, and {needed} is wanted{where}",
            BoxConstraint.InsideTemperature => "how warm it gets inside is not known: "
                + $"its efficiency is declared up to {has} of its rating, and {needed} is wanted{where}",
            _ => $"its supply is too weak: {has}, and {needed} is wanted{where}",
        };
    }
}
