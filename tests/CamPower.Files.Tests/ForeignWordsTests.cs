using System;
using System.Linq;
using System.Text;
using UnitsNet;

namespace CamPower.Files.Tests;

/// <summary>What a library below refuses reaches a user in the words of this one; files broken at random are in <see cref="MutationTests"/>.</summary>
public class ForeignWordsTests
{
    private const string Headings = "name,watts,lowest,highest,box,output,cable,length\n";

    [Theory]
    [InlineData("1e400 m")]
    [InlineData("1e308 km")]
    [InlineData("NaN m")]
    [InlineData("30,5 m")]
    [InlineData("5 parsec")]
    [InlineData("")]
    public void QuantityText_RefusesInItsOwnWords(string text)
    {
        ForeignWords.AssertNone(Assert.Throws<FormatException>(() => QuantityText.Read<Length>(text)).Message);
        ForeignWords.AssertNone(Assert.Throws<FormatException>(() => QuantityText.Read<Power>(text)).Message);
    }

    [Theory]
    [InlineData("{ // a comment\n}")]
    [InlineData("{ \"name\": 'x' }")]
    [InlineData("{ \"name\": \"\u0001\" }")]
    [InlineData("{ \"name\": \"\\x\" }")]
    [InlineData("{ \"formatVersion\": 01 }")]
    [InlineData("{ \"formatVersion\": 1e999 }")]
    [InlineData("\u00A0{}")]
    [InlineData("nul")]
    public void SiteFile_RefusesInItsOwnWords(string json) => AssertOwnWords(SiteFile.Read(json));

    [Theory]
    [InlineData("ramp,5 W,10 V,14 V,quay box,1,18 AWG/2 stranded,1e400 ft")]
    [InlineData("ramp,1e29 W,10 V,14 V,quay box,1,18 AWG/2 stranded,9 ft")]
    [InlineData("ramp,5 W,14 V,10 V,quay box,1,18 AWG/2 stranded,9 ft")]
    [InlineData("ramp,5 W,10 V,14 V,quay box,99999999999,18 AWG/2 stranded,9 ft")]
    [InlineData("ra\"mp,5 W,10 V,14 V,quay box,1,18 AWG/2 stranded,9 ft")]
    [InlineData("\"ramp,5 W,10 V")]
    public void Schedule_RefusesInItsOwnWords(string row) => AssertOwnWords(SiteSchedule.Read(Samples.Minimal, Headings + row));

    [Fact]
    public void BytesThatAreNoText_AreRefusedInItsOwnWords() =>
        AssertOwnWords(SiteFile.Read(new System.IO.MemoryStream([.. Encoding.UTF8.GetBytes("{ \"name\": \""), 0xE2, 0x28, 0xA1, .. "\" }"u8])));

    private static void AssertOwnWords(SiteFileResult result)
    {
        Assert.NotEmpty(result.Errors);
        Assert.All(result.Errors.Select(e => e.ToString()), ForeignWords.AssertNone);
    }
}
