using System;
using System.Globalization;
using System.Linq;
using System.Text.RegularExpressions;

namespace CamPower.Tests.Working;

/// <summary>What holds for the steps of every derivation.</summary>
internal static class Steps
{
    /// <summary>Every step, with its numbers put in, is worked out again and must give the printed value.</summary>
    internal static void AssertEvaluate(Derivation derivation) => Assert.All(derivation.Steps, step =>
    {
        double evaluated = Arithmetic.Evaluate(step.Substitution);
        string number = step.ValueText.Split(' ')[0];
        double printed = double.Parse(number, CultureInfo.InvariantCulture);

        double halfSixthDigit = printed == 0 ? 1e-12 : 0.5 * Math.Pow(10, Math.Floor(Math.Log10(Math.Abs(printed))) - 5);
        double allowed = (halfSixthDigit * 1.05) + LostByRounding(step.Substitution, evaluated);
        Assert.True(Math.Abs(evaluated - printed) <= allowed, FormattableString.Invariant($"{step} evaluates to {evaluated:R}"));
        Assert.True(step.ValueText == (number + " " + step.Unit).TrimEnd());
    });

    // Numbers are put in at twelve digits: where they cancel, what that moves is measured by moving each of them as far.
    private static double LostByRounding(string substitution, double evaluated)
    {
        double lost = 0;
        foreach (Match number in Regex.Matches(substitution, @"\d+(\.\d+)?(E[+-]?\d+)?"))
        {
            string moved = (double.Parse(number.Value, CultureInfo.InvariantCulture) * (1 + 5e-12)).ToString("R", CultureInfo.InvariantCulture);
            double change = Arithmetic.Evaluate(substitution[..number.Index] + moved + substitution[(number.Index + number.Length)..]) - evaluated;
            lost += double.IsFinite(change) ? Math.Abs(change) : 0;
        }

        return lost;
    }

    /// <summary>The mathematics is such that a notebook or a site of documentation renders it: whole, and with nothing empty in it.</summary>
    internal static void AssertRenders(Derivation derivation)
    {
        Assert.All(derivation.Steps, step =>
        {
            Assert.DoesNotContain("{}", step.Latex, StringComparison.Ordinal);
            Assert.DoesNotContain("$", step.Latex, StringComparison.Ordinal);
            Assert.DoesNotContain("\n", step.Latex, StringComparison.Ordinal);
            Assert.Contains("=", step.Latex, StringComparison.Ordinal);
            Assert.Equal(step.Latex.Count(c => c == '{'), step.Latex.Count(c => c == '}'));
            Assert.Equal(step.Latex.Split("\\left").Length, step.Latex.Split("\\right").Length);
            Assert.All(step.Latex, c => Assert.True(char.IsAscii(c), step.Latex));
        });
        string[] lines = derivation.ToMarkdown().Split('\n');
        Assert.Equal(2 * derivation.Steps.Count, lines.Count(l => l.Trim() == "$$"));
    }
}
