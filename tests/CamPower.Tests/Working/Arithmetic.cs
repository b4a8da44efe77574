using System;
using System.Globalization;

namespace CamPower.Tests.Working;

/// <summary>Evaluates plain arithmetic with + - * / ^ sqrt(), max() and min(), as a reader with a calculator would.</summary>
internal ref struct Arithmetic
{
    private readonly string _text;
    private int _at;

    private Arithmetic(string text)
    {
        _text = text;
        _at = 0;
    }

    internal static double Evaluate(string text)
    {
        var reader = new Arithmetic(text.Replace(" ", string.Empty, StringComparison.Ordinal));
        double value = reader.Sum();
        return reader._at == reader._text.Length ? value : throw reader.Unexpected();
    }

    private double Sum()
    {
        double value = Product();
        while (true)
        {
            if (Take('+')) value += Product();
            else if (Take('-')) value -= Product();
            else return value;
        }
    }

    private double Product()
    {
        double value = Power();
        while (true)
        {
            if (Take('*')) value *= Power();
            else if (Take('/')) value /= Power();
            else return value;
        }
    }

    private double Power()
    {
        double value = Atom();
        return Take('^') ? Math.Pow(value, Power()) : value;
    }

    private double Atom()
    {
        if (Take('-')) return -Atom();
        if (Take("sqrt(")) return Math.Sqrt(Close(Sum()));
        if (Take("max(")) return Math.Max(First(), Close(Sum()));
        if (Take("min(")) return Math.Min(First(), Close(Sum()));

        return Take('(') ? Close(Sum()) : Number();
    }

    private double First()
    {
        double value = Sum();
        return Take(',') ? value : throw Unexpected();
    }

    private double Number()
    {
        int start = _at;
        while (_at < _text.Length && (char.IsAsciiDigit(_text[_at]) || _text[_at] == '.')) _at++;
        if (_at < _text.Length && _text[_at] == 'E')
        {
            _at++;
            if (_at < _text.Length && _text[_at] is '+' or '-') _at++;
            while (_at < _text.Length && char.IsAsciiDigit(_text[_at])) _at++;
        }

        return _at > start ? double.Parse(_text.AsSpan(start, _at - start), CultureInfo.InvariantCulture) : throw Unexpected();
    }

    private double Close(double value) => Take(')') ? value : throw Unexpected();

    private bool Take(char c) => Take(c.ToString());

    private bool Take(string token)
    {
        bool found = string.CompareOrdinal(_text, _at, token, 0, token.Length) == 0;
        if (found) _at += token.Length;
        return found;
    }

    private readonly FormatException Unexpected() => new($"Not arithmetic at character {_at}: {_text}");
}
