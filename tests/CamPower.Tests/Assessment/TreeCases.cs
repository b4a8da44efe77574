using System;
using System.Linq;
using FsCheck;
using FsCheck.Fluent;

namespace CamPower.Tests.Assessment;

/// <summary>Random trees of up to six runs and ten devices, from easily carried to far beyond what the runs can carry.</summary>
public static class TreeCases
{
    public static Arbitrary<TreeCase> Case() => Gen.Choose(0, int.MaxValue - 1).Select(seed => Make(new Random(seed))).ToArbitrary();

    internal static TreeCase Make(Random random)
    {
        double volts = random.NextDouble() < 0.5 ? 12 : 24;
        int runs = random.Next(1, 7), devices = random.Next(1, 11);
        double heavy = Math.Pow(10, (random.NextDouble() * 1.6) - 0.9), declared = random.NextDouble();
        return new TreeCase(
            volts,
            [.. Enumerable.Range(0, runs).Select(i => random.Next(-1, i))],
            [.. Enumerable.Range(0, runs).Select(_ => 0.05 + random.NextDouble())],
            [.. Enumerable.Range(0, devices).Select(_ => Device())],
            FromOff: random.NextDouble() < 0.5,
            ProtectionOhms: random.NextDouble() < 0.5 ? 0 : 0.3 * random.NextDouble());

        TreeDevice Device()
        {
            double turnOn = volts * (0.2 + (0.79 * random.NextDouble()));
            bool declares = random.NextDouble() < declared;
            return new TreeDevice(random.Next(runs), heavy * volts * random.NextDouble(), random.NextDouble() < 0.3 ? heavy * random.NextDouble() : 0,
                declares ? turnOn : 0, declares ? turnOn * (0.5 + (0.5 * random.NextDouble())) : 0, random.Next(3) switch { 0 => null, 1 => false, _ => true });
        }
    }
}
