using Classroom.Working;

namespace Classroom.Tests;

public class EquationTests
{
    [Theory]
    [InlineData("rho20*k*(1 + alpha20*(T - 20))/A", "ρ₂₀ · k · (1 + α₂₀ · (T - 20)) / A")]
    [InlineData("(Vs + sqrt(D))/2", "(Vs + √(D)) / 2")]
    [InlineData("12^2 - 4*1.68590946941*9", "12² - 4 · 1.68590946941 · 9")]
    [InlineData("1E-05", "1E-05")]
    public void PlainArithmetic_ReadsAsWrittenByHand(string plain, string written) => Assert.Equal(written, Equation.Of(plain));
}
