using UnitsNet;
using UnitsNet.Units;

namespace CamPower.Reports.Charts;

/// <summary>Feet where the author counts in feet, yards or inches; else meters.</summary>
internal static class LengthScale
{
    internal static LengthUnit UnitOf(Length given) =>
        given.Unit is LengthUnit.Foot or LengthUnit.Inch or LengthUnit.Yard ? LengthUnit.Foot : LengthUnit.Meter;

    internal static string Symbol(LengthUnit unit) => unit == LengthUnit.Foot ? "ft" : "m";
}
