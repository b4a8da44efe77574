using System;
using System.Globalization;
using System.Linq;
using System.Threading.Tasks;

namespace CamPower.Files.Tests;

/// <summary>The grammar of quantities and the spellings of their units.</summary>
public class QuantityTests
{
    // Conversions: the international foot, inch and yard of 1959 (0.3048 m, 0.0254 m, 0.9144 m).
    [Theory]
    [InlineData("2 m", 2)]
    [InlineData("2m", 2)]
    [InlineData("+2.50 m", 2.5)]
    [InlineData(".5 m", 0.5)]
    [InlineData("2e3 mm", 2)]
    [InlineData("2E-3 km", 2)]
    [InlineData("250 cm", 2.5)]
    [InlineData("10 ft", 3.048)]
    [InlineData("10 in", 0.254)]
    [InlineData("10 yd", 9.144)]
    [InlineData("0 m", 0)]
    public void Length_IsRead(string text, double meters) => Assert.Equal(meters, LengthOf(text), 12);

    [Theory]
    [InlineData("2. m")]
    [InlineData("2 m ")]
    [InlineData(" 2 m")]
    [InlineData("2\tm")]
    [InlineData("2\u00A0m")]
    [InlineData("- 2 m")]
    [InlineData("1 000 m")]
    [InlineData("1,000 m")]
    [InlineData("1'000 m")]
    [InlineData("٢ m")]
    [InlineData("2e m")]
    [InlineData("0x10 m")]
    [InlineData("NaN m")]
    [InlineData("Infinity m")]
    [InlineData("2 meters")]
    [InlineData("2'")]
    [InlineData("2 m\n")]
    [InlineData("")]
    public void WhatTheGrammarDoesNotKnow_IsAFault(string text)
    {
        SiteFileError fault = Assert.Single(SiteFile.Read(WithLength(text)).Errors);
        Assert.Equal("$.runs[0].parts[0].length", fault.Path);
    }

    [Theory]
    [InlineData("1.5 ohm", 1.5)]
    [InlineData("1.5 \u03A9", 1.5)]
    [InlineData("1.5 \u2126", 1.5)]
    [InlineData("1500 mohm", 1.5)]
    [InlineData("1500 m\u03A9", 1.5)]
    [InlineData("0.0015 kohm", 0.0015e3)]
    [InlineData("0.0015 k\u2126", 0.0015e3)]
    public void Resistance_IsReadInEverySpelling(string text, double ohms)
    {
        string file = Samples.Full.Replace("\"resistance\": \"10 mohm\"", $"\"resistance\": \"{text}\"", StringComparison.Ordinal);
        Joint joint = SiteFile.Read(file).Site!.Runs[1].Run.Parts.OfType<Joint>().Single();
        Assert.Equal(ohms, joint.LoopResistance.Ohms, 12);
    }

    [Theory]
    [InlineData("40 C", 40)]
    [InlineData("40 °C", 40)]
    [InlineData("-40 F", -40)]
    [InlineData("104 °F", 40)]
    [InlineData("313.15 K", 40)]
    public void Temperature_IsReadInEverySpelling(string text, double celsius)
    {
        string file = Samples.Full.Replace("\"cable\": \"104 F\"", $"\"cable\": \"{text}\"", StringComparison.Ordinal);
        Assert.Equal(celsius, SiteFile.Read(file).Site!.Conditions[0].At.Cable.DegreesCelsius, 10);
    }

    [Theory]
    [InlineData("36000 s")]
    [InlineData("600 min")]
    [InlineData("10 h")]
    [InlineData("0.4166666666666667 d")]
    public void Duration_IsReadInEverySpelling(string text)
    {
        string file = Samples.Full.Replace("\"duration\": \"10 h\"", $"\"duration\": \"{text}\"", StringComparison.Ordinal);
        Assert.Equal(10, SiteFile.Read(file).Site!.Conditions[1].Duration!.Value.Hours, 10);
    }

    [Theory]
    [InlineData("4 W", "4 W")]
    [InlineData("4000 mW", "4000 mW")]
    [InlineData("0.004 kW", "0.004 kW")]
    [InlineData("4e3 mW", "4000 mW")]
    [InlineData("0 mW", "0 mW")]
    [InlineData("0 A", "0 W")]
    [InlineData("1.25 mA", "1.25 mA")]
    [InlineData("36 \u03A9", "36 ohm")]
    public void Draw_IsWrittenBack(string text, string written)
    {
        string file = Samples.Full.Replace("\"base\": \"18 W\"", $"\"base\": \"{text}\"", StringComparison.Ordinal);
        Assert.Contains($"\"base\": \"{written}\"", SiteFile.Write(SiteFile.Read(file).Site!), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("tr-TR")]
    [InlineData("de-DE")]
    [InlineData("ar-SA")]
    public void TheCultureOfTheThread_ChangesNothing(string culture)
    {
        string broken = Samples.Full.Replace("\"180 ft\"", "\"-180.5 ft\"", StringComparison.Ordinal)
            .Replace("\"infrared\": \"5000 mW\"", "\"INFRARED\": \"5000 mW\"", StringComparison.Ordinal);
        (string Text, string Errors, string Schema) invariant = In(CultureInfo.InvariantCulture);
        Assert.Equal(invariant, In(CultureInfo.GetCultureInfo(culture)));
        Assert.Contains("did you mean 'infrared'?", invariant.Errors, StringComparison.Ordinal);

        (string, string, string) In(CultureInfo info)
        {
            CultureInfo before = CultureInfo.CurrentCulture;
            try
            {
                CultureInfo.CurrentCulture = info;
                return (SiteFile.Write(SiteFile.Read(Samples.Full).Site!), SiteFile.Read(broken).ToString(), SiteFile.Schema);
            }
            finally
            {
                CultureInfo.CurrentCulture = before;
            }
        }
    }

    [Fact]
    public void ManyThreads_ReadAndWriteTheSame()
    {
        string expected = SiteFile.Write(SiteFile.Read(Samples.Full).Site!);
        string[] texts = new string[200];
        Parallel.For(0, texts.Length, i => texts[i] = SiteFile.Write(SiteFile.Read(Samples.Full).Site!));
        Assert.All(texts, text => Assert.Equal(expected, text));
    }

    private static double LengthOf(string text) => SiteFile.Read(WithLength(text)).Site!.Runs[0].Run.Segments.Single().OneWayLength.Meters;

    private static string WithLength(string text) =>
        Samples.Full.Replace("\"180 ft\"", $"\"{text.Replace("\t", "\\t", StringComparison.Ordinal).Replace("\n", "\\n", StringComparison.Ordinal)}\"", StringComparison.Ordinal);
}
