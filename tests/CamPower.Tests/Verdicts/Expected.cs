using System;
using System.Linq;

namespace CamPower.Tests.Verdicts;

/// <summary>A finding that an engineer would write down.</summary>
/// <param name="Rule">Identifier of the rule; several, with a bar between them, where the engineer does not mind which one speaks; "*"
/// for any.</param>
/// <param name="Severity">How bad it is.</param>
/// <param name="About">Whom it names; "*" for anybody.</param>
/// <param name="Measured">What a hand calculation gives, in the unit of the finding; null where there is no number.</param>
/// <param name="Limit">The limit by hand; null where there is none.</param>
internal sealed record Expected(string Rule, Severity Severity, string About, double? Measured = null, double? Limit = null)
{
    // Wire tables of four digits, and three steps of a pocket calculator.
    private const double HandShare = 0.01;

    internal bool IsMetBy(Finding finding) => finding.Severity == Severity && Names(finding) && IsNear(Measured, finding.Measured)
        && IsNear(Limit, finding.Limit);

    public override string ToString() =>
        FormattableString.Invariant($"{Severity}: {Rule} about {About}, measured {Measured:0.###}, limit {Limit:0.###}");

    private bool Names(Finding finding) =>
        (Rule == "*" || Rule.Split('|').Contains(finding.Rule))
            && (About == "*" || string.Equals(About, finding.About.Name, StringComparison.Ordinal));

    private static bool IsNear(double? expected, UnitsNet.IQuantity? found) =>
        expected is not double number || (found is not null && Math.Abs(Number(found) - number) <= HandShare * Math.Abs(number));

    // A policy may be stated in millivolts.
    private static double Number(UnitsNet.IQuantity quantity) => quantity is UnitsNet.ElectricPotential potential
        ? potential.Volts : (double)quantity.Value;
}
