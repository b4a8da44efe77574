using System.Text;

namespace CamPower.Circuits;

/// <summary>A sum of terms as it grows: as plain symbols, as LaTeX and with its numbers.</summary>
internal sealed class SymbolSum
{
    private readonly StringBuilder _plain = new(), _latex = new(), _numbers = new();

    /// <summary>The sum; 0 where nothing was added.</summary>
    internal Symbols Total =>
        _plain.Length == 0 ? new Symbols("0", "0", "0") : new Symbols(_plain.ToString(), _latex.ToString(), _numbers.ToString());

    internal SymbolSum Plus(Symbols term) => Add(term, minus: false);

    internal SymbolSum Minus(Symbols term) => Add(term, minus: true);

    internal SymbolSum Add(Symbols term, bool minus)
    {
        string sign = _plain.Length == 0 ? (minus ? "-" : string.Empty) : minus ? " - " : " + ";
        _plain.Append(sign).Append(term.Plain);
        _latex.Append(sign).Append(term.Latex);
        _numbers.Append(sign).Append(term.Numbers);
        return this;
    }
}
