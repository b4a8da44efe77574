using System;
using System.Globalization;

namespace CamPower;

/// <summary>One step of a derivation: the formula, the same with its numbers put in, and the value.</summary>
/// <remarks>Immutable. <see cref="Substitution"/> is plain arithmetic with + - * / ^ sqrt(), max() and min(), and evaluates
/// to <see cref="Value"/> at the six digits that are printed, but at the very limit of what a run can carry: there the
/// discriminant is a difference so small that the twelve digits put in do not give six.</remarks>
public sealed class DerivationStep
{
    internal DerivationStep(string symbol, string meaning, string formula, string latex, string substitution,
        double value, string unit, Citation source)
    {
        Symbol = symbol;
        Meaning = meaning;
        Formula = formula;
        Latex = latex;
        Substitution = substitution;
        Value = value;
        Unit = unit;
        Source = source;
    }

    /// <summary>The symbol that the step works out.</summary>
    public string Symbol { get; }

    /// <summary>Meaning of the symbol.</summary>
    public string Meaning { get; }

    /// <summary>The right-hand side in symbols, as plain text.</summary>
    public string Formula { get; }

    /// <summary>The whole equation in symbols, as LaTeX mathematics.</summary>
    public string Latex { get; }

    /// <summary>The right-hand side with the numbers put in, as plain arithmetic.</summary>
    public string Substitution { get; }

    /// <summary>The value, in <see cref="Unit"/>.</summary>
    public double Value { get; }

    /// <summary>The unit as printed; empty for a plain ratio.</summary>
    public string Unit { get; }

    /// <summary>Where the formula comes from.</summary>
    public Citation Source { get; }

    /// <summary>The value with its unit, at six digits, in the invariant culture.</summary>
    public string ValueText => (Value.ToString("G6", CultureInfo.InvariantCulture) + " " + Unit).TrimEnd();

    /// <summary>The step in one line, in the invariant culture; never throws.</summary>
    public override string ToString() => FormattableString.Invariant($"{Symbol} = {Formula} = {Substitution} = {ValueText}");

    /// <summary>A number as it is put into a formula.</summary>
    internal static string Number(double value)
    {
        string text = value.ToString("G12", CultureInfo.InvariantCulture);
        return value < 0 ? "(" + text + ")" : text;
    }
}
