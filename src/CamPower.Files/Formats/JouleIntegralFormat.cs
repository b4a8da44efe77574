using System;
using System.Text.Json.Nodes;

namespace CamPower.Files.Formats;

/// <summary>An I²t as data sheets write it: a number and A2s.</summary>
internal sealed class JouleIntegralFormat() : TextFormat<JouleIntegral>($"an I2t in {Unit}", JouleIntegral.FromAmpereSquaredSeconds(1))
{
    private const string Unit = "A2s", WithSuperscript = "A\u00B2s";

    internal override JsonObject Schema() => Matching($"{Number.Pattern} ?({Unit}|{WithSuperscript})");

    internal override JouleIntegral Parse(string text)
    {
        if (!Number.TrySplit(text, out string number, out string unit) || unit is not (Unit or WithSuperscript))
        {
            throw new FormatException($"{Phrase.Quoted(text)} is not {Description}: write a number with a decimal point, and {Unit}");
        }

        return Number.Value(number) is double value and >= 0
            ? JouleIntegral.FromAmpereSquaredSeconds(value)
            : throw new FormatException(
                $"{Phrase.Quoted(text)} is an impossible quantity: an I2t is at least 0, and no larger than a number can be");
    }

    internal override string Text(JouleIntegral value) => $"{Number.Text(value.AmpereSquaredSeconds)} {Unit}";
}
