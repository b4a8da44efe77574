using System;
using FsCheck.Xunit;

namespace CamPower.Tests;

/// <summary>
/// A property tried with the same cases on every run and every machine, so that a change passes or fails for what it
/// changes. New cases: CAMPOWER_SEED=random, or the seed that a failure printed, as 123,457.
/// </summary>
public sealed class SeededPropertyAttribute : PropertyAttribute
{
    public SeededPropertyAttribute()
    {
        string seed = Environment.GetEnvironmentVariable("CAMPOWER_SEED") ?? "20261126,1";
        if (seed != "random") Replay = seed;
    }
}
