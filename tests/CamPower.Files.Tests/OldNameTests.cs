using System;
using System.Collections.Generic;
using System.Linq;
using CamPower.Files.Formats;

namespace CamPower.Files.Tests;

/// <summary>A file that was written before the names of the format were settled, or by somebody who writes British English.</summary>
public class OldNameTests
{
    // One error each, at its place, that names the new word; a member is read on under its new name, so that it is not missing as well.
    [Theory]
    [InlineData("\"receptacles\":", "¶\"outlets\":", "$.outlets", "'outlets' is now called 'receptacles'")]
    [InlineData("\"receptacle\": \"shed receptacle\"", "¶\"outlet\": \"shed receptacle\"", "$.boxes[0].outlet", "'outlet' is now called 'receptacle'")]
    [InlineData("\"installationMethod\": \"installation method C\"", "¶\"laying\": \"installation method C\"", "$.runs[4].laying", "'laying' is now called 'installationMethod'")]
    [InlineData("\"input\": { \"voltage\": { \"lowest\": \"90 V\"", "¶\"inlet\": { \"voltage\": { \"lowest\": \"90 V\"", "$.boxes[0].supply.inlet", "'inlet' is now called 'input'")]
    [InlineData("\"testCurrent\"", "¶\"timedCurrent\"", "$.protectiveDevices[1].resettable.timedCurrent", "'timedCurrent' is now called 'testCurrent'")]
    [InlineData("\"minimumResistance\"", "¶\"leastResistance\"", "$.protectiveDevices[1].resettable.leastResistance", "'leastResistance' is now called 'minimumResistance'")]
    [InlineData("\"minimumMeltingIntegral\"", "¶\"leastMeltingIntegral\"", "$.protectiveDevices[0].fuse.leastMeltingIntegral", "'leastMeltingIntegral' is now called 'minimumMeltingIntegral'")]
    [InlineData("\"maximumResistance\"", "¶\"greatestResistance\"", "$.protectiveDevices[1].resettable.greatestResistance", "'greatestResistance' is now called 'maximumResistance'")]
    [InlineData("\"perThousandMeters\"", "¶\"perThousandMetres\"", "$.boxes[1].supply.derating.altitude.perThousandMetres", "'perThousandMetres' is now called 'perThousandMeters'")]
    [InlineData("\"characteristic\": \"IEC 60127-2 F\"", "\"characteristic\": ¶\"blade fuse, ATO class\"", "$.protectiveDevices[0].fuse.characteristic", "'blade fuse, ATO class' is now called 'ISO 8820-3 type C'")]
    [InlineData("\"copper-clad aluminum 10 %\"", "¶\"copper-clad aluminium 10 %\"", "$.cables[2].material", "'copper-clad aluminium 10 %' is now called 'copper-clad aluminum 10 %'")]
    [InlineData("\"wall\": \"galvanized steel\"", "\"wall\": ¶\"galvanised steel\"", "$.cabinets[0].enclosure.wall", "'galvanised steel' is now called 'galvanized steel'")]
    [InlineData("\"usual\": \"category 5e, 4 pairs ganged\"", "\"usual\": ¶\"75 Ω coax, copper-clad steel centre, + 18 AWG/2\"", "$.cables[4].usual", "'75 Ω coax, copper-clad steel centre, + 18 AWG/2' is now called '75 Ω coax, copper-clad steel center, + 18 AWG/2'")]
    public void OldName_IsAnErrorThatNamesTheNewOne(string piece, string with, string path, string message)
    {
        Marked file = Marked.Replace(Samples.Full, piece, with);
        SiteFileError error = Assert.Single(SiteFile.Read(file.Text).Errors);
        Assert.Equal((path, message, file.Line, file.Column), (error.Path, error.Message, error.Line, error.Column));
    }

    // What an old member holds is read too.
    [Fact]
    public void OldMember_WithAWrongValue_HasBothErrors() => Assert.Equal(
        ["'timedCurrent' is now called 'testCurrent'", "'8' has no unit: a current is written in A or mA"],
        SiteFile.Read(Samples.Full.Replace("\"testCurrent\": \"8 A\"", "\"timedCurrent\": \"8\"", StringComparison.Ordinal)).Errors.Select(f => f.Message));

    // No row of the table is idle: each old name leads to a word that the schema has.
    [Fact]
    public void EveryNewName_IsOneOfTheFormat_OrASpellingOfItsDescriptions() =>
        Assert.All(OldName.Table.Take(8), row => Assert.Contains($"\"{row.New}\"", SiteFile.Schema, StringComparison.Ordinal));

    [Theory]
    [InlineData("outletLimit")]
    [InlineData("centred")]
    [InlineData("")]
    public void WhatWasNeverAName_IsNoOldOne(string name) => Assert.Null(OldName.Of(name, new List<string> { "receptacle", "outputLimit" }));
}
