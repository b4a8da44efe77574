using System;

namespace CamPower.Tests.Quantities;

/// <summary>What impossible input is answered with.</summary>
internal static class Refusal
{
    /// <summary>The parameter by its name, the value as it is shown, and the same words in every culture.</summary>
    internal static void AssertNames(Action call, string parameter, string shown)
    {
        var thrown = Assert.Throws<ArgumentOutOfRangeException>(call);
        Assert.Equal(parameter, thrown.ParamName);
        Assert.Equal(shown, thrown.ActualValue);
        Cultures.AssertSame(() => Assert.Throws<ArgumentOutOfRangeException>(call).Message);
    }
}
