using System.Collections.Generic;

namespace CamPower.Loads;

/// <summary>What the input of a converter draws: constant power, by condition, as what is behind it was solved.</summary>
/// <remarks>In a condition that was not solved it is what the converter draws at its rating. At least it is nothing: its standby is not
/// counted against a voltage that is too high.</remarks>
internal sealed class ConverterDraw(Load rated, IReadOnlyDictionary<Condition, Load> solved) : Draw
{
    public override bool HasMotor => false;

    public override Load Lightest => Load.None;

    /// <summary>Whether what is behind it was solved.</summary>
    internal bool IsSolved => solved.Count > 0;

    public override Load LoadWith(LoadComponents components) => rated;

    public override string ToString() => $"at its rating {rated}";

    internal override Load LoadIn(Condition condition, LoadComponents components) =>
        solved.TryGetValue(condition, out Load? load) ? load : rated;
}
