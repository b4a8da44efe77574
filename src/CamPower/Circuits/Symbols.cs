using System.Text;
using static CamPower.DerivationStep;

namespace CamPower.Circuits;

/// <summary>A term of a formula: as plain symbols, as LaTeX and with its numbers.</summary>
internal sealed record Symbols(string Plain, string Latex, string Numbers)
{
    /// <summary>A quantity of a named thing: the voltage of a node, the current of a branch.</summary>
    internal static Symbols Of(string symbol, string name, double value) =>
        new(Plainly(symbol, name), $@"{symbol}_{{\text{{{Escaped(name)}}}}}", Number(value));

    /// <summary>The symbol of a quantity of a named thing, as plain text.</summary>
    private static string Plainly(string symbol, string name) => $"{symbol}({name})";

    /// <summary>Both, multiplied.</summary>
    internal Symbols Times(Symbols other) => new($"{Plain}*{other.Plain}", $@"{Latex}\,{other.Latex}", $"{Numbers}*{other.Numbers}");

    /// <summary>Its square.</summary>
    internal Symbols Squared() => new(Plain + "^2", Latex + "^2", Numbers + "^2");

    // What means something of its own in mathematics stands for itself again.
    private static string Escaped(string name)
    {
        var text = new StringBuilder();
        foreach (char c in name.Replace('\\', '/').Replace('^', '\'').Replace('~', '-'))
        {
            if (c is '_' or '%' or '#' or '&' or '$' or '{' or '}') text.Append('\\');
            text.Append(c);
        }

        return text.ToString();
    }
}
