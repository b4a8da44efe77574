using System;
using System.Linq;

namespace CamPower.Files.Tests;

/// <summary>Faults do not hide one another, and none is reported that only follows from another.</summary>
public class SeveralFaultsTests
{
    [Fact]
    public void IndependentFaults_AreAllReportedInTheOrderOfTheFile()
    {
        string text = Samples.Full
            .Replace("\"formatVersion\": 1", "\"formatVersion\": 7", StringComparison.Ordinal)
            .Replace("\"size\": \"22 AWG\"", "\"size\": \"22 gauge\"", StringComparison.Ordinal)
            .Replace("\"lowest\": \"21.6 V\", \"highest\": \"26.4 V\"", "\"lowest\": \"-21.6 V\", \"highest\": \"-26.4 V\"", StringComparison.Ordinal)
            .Replace("\"duration\": \"10 h\"", "\"duration\": \"10 W\"", StringComparison.Ordinal)
            .Replace("\"nominal\": \"24 V\", \"ratedCurrent\": \"4 A\"", "\"nominal\": \"0 V\", \"ratedCurrent\": \"-4 A\"", StringComparison.Ordinal)
            .Replace("\"length\": \"40 ft\"", "\"lenght\": \"40 ft\"", StringComparison.Ordinal)
            .Replace("\"output\": 2", "\"output\": 9", StringComparison.Ordinal)
            .Replace("\"model\": \"old box camera\"", "\"model\": \"old bx camera\"", StringComparison.Ordinal)
            .Replace("\"at\": \"desk\"", "\"at\": \"dsk\"", StringComparison.Ordinal);
        string[] expected =
        [
            "$.formatVersion", "$.cables[2].size", "$.models[0].ac.lowest", "$.models[0].ac.highest", "$.conditions[1].duration",
            "$.boxes[1].supply.nominal", "$.boxes[1].supply.ratedCurrent", "$.runs[1].parts[0].length", "$.runs[1].parts[0].lenght",
            "$.runs[2].from.output", "$.devices[1].model", "$.devices[3].at",
        ];
        Assert.Equal(expected, SiteFile.Read(text).Errors.Select(f => f.Path));
    }

    [Theory]
    // A faulty model, cable, box or run is still what others refer to.
    [InlineData("\"lowest\": \"21.6 V\"", "\"lowest\": \"tall\"", "$.models[0].ac.lowest")]
    [InlineData("\"kind\": \"recorder\"", "\"kind\": \"recoder\"", "$.models[2].kind")]
    [InlineData("\"size\": \"1.5 mm2\"", "\"size\": \"1,5 mm2\"", "$.cables[1].back.size")]
    [InlineData("\"ratedCurrent\": \"20 A\"", "\"ratedCurrent\": \"20 V\"", "$.boxes[0].supply.ratedCurrent")]
    [InlineData("\"output\": \"AC\"", "\"output\": \"ac\"", "$.boxes[1].supply.output")]
    [InlineData("\"length\": \"180 ft\"", "\"length\": 180", "$.runs[0].parts[0].length")]
    [InlineData("\"output\": 2", "\"output\": 0", "$.runs[2].from.output")]
    [InlineData("{ \"box\": \"yard box\", \"output\": 1 }", "3", "$.runs[0].from")]
    [InlineData("\"trim\": { \"lowest\": \"12 V\"", "\"trim\": { \"lowest\": \"0 V\"", "$.boxes[0].supply.trim.lowest")]
    [InlineData("\"holdCurrent\": \"750 mA\"", "\"holdCurrent\": \"750\"", "$.protectiveDevices[1].resettable.holdCurrent")]
    [InlineData("\"tripCurrent\": \"1.5 A\"", "\"tripCurrent\": \"1.5\"", "$.protectiveDevices[1].resettable.tripCurrent")]
    [InlineData("\"testCurrent\": \"8 A\"", "\"testCurrent\": \"8 V\"", "$.protectiveDevices[1].resettable.testCurrent")]
    [InlineData("\"minimumResistance\": \"90 mohm\"", "\"minimumResistance\": \"90\"", "$.protectiveDevices[1].resettable.minimumResistance")]
    [InlineData("\"maximumResistance\": \"0.25 ohm\"", "\"maximumResistance\": \"0.25 V\"", "$.protectiveDevices[1].resettable.maximumResistance")]
    [InlineData("\"characteristic\": \"IEC 60127-2 F\", \"ratedCurrent\": \"2 A\"", "\"characteristic\": \"\", \"ratedCurrent\": \"200 A\"", "$.protectiveDevices[0].fuse.characteristic")]
    [InlineData("\"name\": \"quick fuse 2 A\"", "\"name\": 1", "$.protectiveDevices[0].name")]
    [InlineData("\"hiccup\": \"26 A\"", "\"hiccup\": \"26\"", "$.boxes[0].supply.overload.hiccup")]
    [InlineData("\"pulse\": \"100 ms\"", "\"pulse\": \"100\"", "$.boxes[0].supply.overload.pulse")]
    [InlineData("\"foldback\": \"1.2 A\"", "\"foldback\": \"1.2\"", "$.boxes[3].supply.overload.foldback")]
    [InlineData("\"smallest\": \"24 AWG\"", "\"smallest\": \"24\"", "$.boxes[0].terminals.smallest")]
    [InlineData("\"largest\": \"14 AWG\"", "\"largest\": \"14\"", "$.boxes[0].terminals.largest")]
    [InlineData("\"altitude\": \"2300 m\"", "\"altitude\": \"2300\"", "$.altitude")]
    [InlineData("\"outputs\": 16, \"outputLimit\": \"1.1 A\"", "\"outputs\": 0, \"outputLimit\": \"1.1 A\"", "$.boxes[0].outputs")]
    // Where a name is missing, the reference to it is not to blame.
    [InlineData("\"name\": \"yard pair\"", "\"name\": 1", "$.cables[0].name")]
    [InlineData("\"name\": \"infrared dome\"", "\"name\": null", "$.models[0].name")]
    [InlineData("\"name\": \"yard box\"", "\"name\": []", "$.boxes[0].name")]
    [InlineData("\"to\": \"slipway\"", "\"to\": 0", "$.runs[0].to")]
    [InlineData("\"cable\": \"104 F\"", "\"cable\": \"104\"", "$.conditions[0].cable")]
    public void AFaultyPart_GivesNoFaultElsewhere(string piece, string with, string path)
    {
        string text = Samples.Full;
        Assert.Contains(piece, text, StringComparison.Ordinal);
        SiteFileError fault = Assert.Single(SiteFile.Read(text.Replace(piece, with, StringComparison.Ordinal)).Errors);
        Assert.Equal(path, fault.Path);
    }

    // The member that it was meant to be is not missing as well.
    [Theory]
    [InlineData("\"cables\": [", "cabels")]
    [InlineData("\"models\": [", "modles")]
    [InlineData("\"boxes\": [", "boxs")]
    [InlineData("\"runs\": [", "rnus")]
    public void AMisspeltList_GivesNoFaultElsewhere(string piece, string misspelt)
    {
        string text = Samples.Full.Replace(piece, $"\"{misspelt}\": [", StringComparison.Ordinal);
        Assert.Equal("$." + misspelt, Assert.Single(SiteFile.Read(text).Errors).Path);
    }

    [Theory]
    [InlineData("null")]
    [InlineData("[]")]
    [InlineData("12")]
    [InlineData("\"site\"")]
    public void ARootThatIsNoObject_IsOneFault(string text)
    {
        SiteFileError fault = Assert.Single(SiteFile.Read(text).Errors);
        Assert.Equal("$", fault.Path);
        Assert.StartsWith("expected an object", fault.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void AnEmptyObject_LacksEveryMember()
    {
        string[] expected = ["$.formatVersion", "$.name", "$.cables", "$.models", "$.conditions", "$.boxes", "$.runs", "$.devices"];
        Assert.Equal(expected, SiteFile.Read("{}").Errors.Select(f => f.Path));
    }

    [Fact]
    public void ListsOfNothingButNulls_GiveOneFaultEach()
    {
        const string Text = """
            { "formatVersion": 1, "name": "x", "cables": [null], "models": [null], "conditions": [null], "boxes": [null], "runs": [null], "devices": [null] }
            """;
        string[] expected = ["$.cables[0]", "$.models[0]", "$.conditions[0]", "$.boxes[0]", "$.runs[0]", "$.devices[0]"];
        Assert.Equal(expected, SiteFile.Read(Text).Errors.Select(f => f.Path));
    }
}
