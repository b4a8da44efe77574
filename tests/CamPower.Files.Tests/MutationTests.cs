using System;
using System.Collections.Generic;
using System.IO;
using System.Linq;
using System.Text;
using System.Text.RegularExpressions;

namespace CamPower.Files.Tests;

/// <summary>Files broken at random: reading never throws, and gives either a site or errors that lie in the file, in our own words.</summary>
public class MutationTests
{
    private static readonly string[] Pieces =
    [
        "{", "}", "[", "]", ",", ":", "\"", "null", "true", "1", "-1", "1e999", "\"\"", "\" \"", "{}", "[]", "\\", "\\u0000", "\\ud800", "//", "\uFEFF", "\uFFFF", "\U0001F4F7",
        "\"-1 ft\"", "\"1e400 V\"", "\"1e308 km\"", "\"1e-320 mm2\"", "\"1e28 kW\"", "\"0 A\"", "\"0 ohm\"", "\"1e300 A\"", "\"1e300 V\"", "\"1.7976931348623157e308 V\"", "\"5e-324 V\"", "\"0 V\"", "\"-300 C\"", "\"1e308 F\"", "\"200 %\"", "2147483647", "99999999999", "0.5",
    ];

    [Theory]
    [InlineData(1)]
    [InlineData(2)]
    public void Bytes_ChangedAtRandom_NeverThrow(int seed)
    {
        var random = new Random(seed);
        byte[] original = Encoding.UTF8.GetBytes(Samples.Full);
        for (int i = 0; i < 1500; i++)
        {
            var bytes = new List<byte>(original);
            for (int n = random.Next(1, 4); n > 0; n--) ChangeBytes(bytes, random);
            AssertSiteXorErrors(Read([.. bytes]), [.. bytes]);
        }
    }

    [Theory]
    [InlineData(3)]
    [InlineData(4)]
    [InlineData(5)]
    public void Tokens_ChangedAtRandom_NeverThrow(int seed)
    {
        var random = new Random(seed);
        string[] original = [.. Regex.Matches(Samples.Full, "\"(\\\\.|[^\"\\\\])*\"|[-+0-9.eE]+|true|false|null|[{}\\[\\]:,]|\\s+").Select(m => m.Value)];
        Assert.Equal(Samples.Full, string.Concat(original));
        int read = 0;
        for (int i = 0; i < 2500; i++)
        {
            var tokens = new List<string>(original);
            for (int n = random.Next(1, 4); n > 0; n--) ChangeTokens(tokens, random);
            string text = string.Concat(tokens);
            SiteFileResult result = SiteFile.Read(text);
            AssertSiteXorErrors(result, Encoding.UTF8.GetBytes(text));
            if (result.Site is null) continue;
            read++;
            Assert.True(SchemaTests.Accepts(text), text);
            Same.Assert(result.Site, SiteFile.Read(SiteFile.Write(result.Site)).Site);
        }

        Assert.True(read > 20, "some of the changes must leave a site");
    }

    private static void ChangeBytes(List<byte> bytes, Random random)
    {
        int at = random.Next(bytes.Count);
        int length = Math.Min(random.Next(1, 20), bytes.Count - at);
        switch (random.Next(4))
        {
            case 0: bytes[at] = (byte)random.Next(256); break;
            case 1: bytes.RemoveRange(at, length); break;
            case 2: bytes.InsertRange(at, bytes.GetRange(random.Next(bytes.Count - length + 1), length)); break;
            default: bytes.InsertRange(at, Encoding.UTF8.GetBytes(Pieces[random.Next(Pieces.Length)])); break;
        }
    }

    private static void ChangeTokens(List<string> tokens, Random random)
    {
        int at = Value(tokens, random), other = Value(tokens, random);
        switch (random.Next(5))
        {
            case 0: tokens[at] = tokens[other]; break;
            case 1: (tokens[at], tokens[other]) = (tokens[other], tokens[at]); break;
            case 2: tokens[at] = Pieces[random.Next(Pieces.Length)]; break;
            case 3: tokens[at] = Regex.Replace(tokens[at], "[0-9]", random.Next(10).ToString(System.Globalization.CultureInfo.InvariantCulture)); break;
            default: RemoveMember(tokens, random); break;
        }
    }

    // A text, number or word, rarely a brace.
    private static int Value(List<string> tokens, Random random)
    {
        int at = random.Next(tokens.Count);
        while (random.Next(20) > 0 && !char.IsLetterOrDigit(tokens[at].Trim('"').FirstOrDefault(' '))) at = random.Next(tokens.Count);
        return at;
    }

    private static void RemoveMember(List<string> tokens, Random random)
    {
        int at = tokens.IndexOf(",", random.Next(tokens.Count));
        int end = at < 0 ? -1 : tokens.FindIndex(at + 1, t => t is "," or "}" or "]");
        if (end > 0) tokens.RemoveRange(at, end - at);
    }

    private static SiteFileResult Read(byte[] bytes) => SiteFile.Read(new MemoryStream(bytes));

    private static void AssertSiteXorErrors(SiteFileResult result, byte[] utf8)
    {
        Assert.Equal(result.Site is null, result.Errors.Count > 0);
        string text = Encoding.UTF8.GetString(utf8);
        string[] lines = text.Split('\n');
        foreach (SiteFileError fault in result.Errors)
        {
            Assert.InRange(fault.Line, 1, lines.Length);
            Assert.InRange(fault.Column, 1, lines[fault.Line - 1].Length + 1);
            Assert.StartsWith("$", fault.Path, StringComparison.Ordinal);
            Assert.NotEmpty(fault.Message);
            ForeignWords.AssertNone(fault.Message);

            // A stand-in never shows, unless the file has the same number.
            if (!text.Contains("5e-324", StringComparison.Ordinal)) Assert.DoesNotContain("E-324", fault.Message, StringComparison.Ordinal);
            if (!text.Contains("e308", StringComparison.Ordinal)) Assert.DoesNotContain("E+308", fault.Message, StringComparison.Ordinal);
        }
    }
}
