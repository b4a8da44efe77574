using System;

namespace Classroom.Working;

/// <summary>The plain arithmetic of a derivation as it is written by hand.</summary>
public static class Equation
{
    /// <summary>Greek letters, a middle dot for times, a root sign and a raised two; the numbers stay as they are.</summary>
    public static string Of(string plain) => plain
        .Replace("rho20", "ρ₂₀", StringComparison.Ordinal)
        .Replace("alpha20", "α₂₀", StringComparison.Ordinal)
        .Replace("sqrt(", "√(", StringComparison.Ordinal)
        .Replace("^2", "²", StringComparison.Ordinal)
        .Replace("*", " · ", StringComparison.Ordinal)
        .Replace("/", " / ", StringComparison.Ordinal);
}
