using System;

namespace Classroom.Bench;

/// <summary>What a field takes, in the words and the unit that stand beside it.</summary>
/// <param name="Name">Label of the field.</param>
/// <param name="Unit">Unit of its number.</param>
/// <param name="Lowest">The smallest number.</param>
/// <param name="Highest">The largest number.</param>
/// <param name="IsAbove">Whether the number must be above the smallest.</param>
public sealed record FieldRange(string Name, string Unit, double Lowest, double Highest = double.PositiveInfinity, bool IsAbove = false)
{
    public bool Holds(double value) => (IsAbove ? value > Lowest : value >= Lowest) && value <= Highest;

    public string Refusal(double value) => FormattableString.Invariant($"{Name} must be {Words}, but is {value:G6} {Unit}.");

    public string NotANumber => $"{Name}: write a plain number in {Unit} with a decimal point, such as 120 or 12.5.";

    private string Words => (double.IsInfinity(Highest), IsAbove) switch
    {
        (true, true) => FormattableString.Invariant($"more than {Lowest:G6} {Unit}"),
        (true, false) => FormattableString.Invariant($"{Lowest:G6} {Unit} or more"),
        _ => FormattableString.Invariant($"from {Lowest:G6} {Unit} to {Highest:G6} {Unit}"),
    };
}
