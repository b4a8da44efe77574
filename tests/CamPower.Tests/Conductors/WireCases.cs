using FsCheck;
using FsCheck.Fluent;

namespace CamPower.Tests.Conductors;

/// <summary>Runs as they are wired: 12 to 24 AWG, up to 250 m, a load up to 1.2 of what the run can carry.</summary>
public static class WireCases
{
    public static Arbitrary<WireCase> Case() => (
        from gauge in Gen.Choose(12, 24)
        from decimeters in Gen.Choose(1, 2_500)
        from tenths in Gen.Choose(-500, 1_500)
        from millivolts in Gen.Choose(10_000, 56_000)
        from permille in Gen.Choose(1, 1_200)
        from stranded in Gen.Elements(true, false)
        let idle = new WireCase(gauge, decimeters / 10.0, tenths / 10.0, millivolts / 1e3, 0, stranded)
        select idle with { Watts = permille / 1e3 * idle.Volts * idle.Volts / (4 * idle.Loop.Ohms) }).ToArbitrary();
}
