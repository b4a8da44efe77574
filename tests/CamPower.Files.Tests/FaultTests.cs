using System;
using System.Linq;

namespace CamPower.Files.Tests;

/// <summary>Every kind of fault, alone in the full example: exactly one fault, at its path, line and column.</summary>
public class FaultTests
{
    [Theory]
    // Unknown property, with the nearest known name.
    [InlineData("\"to\": \"mast\"", "\"to\": \"mast\", ¶\"color\": \"red\"", "$.runs[2].color", "'color' is not known here; the members are from, to, parts, returnAt and installationMethod")]
    [InlineData("\"outputs\": 16", "\"outputs\": 18, ¶\"outputLimt\": 1", "$.boxes[0].outputLimt", "did you mean 'outputLimit'?")]
    [InlineData("\"outputs\": 16", "\"outputs\": 18, ¶\"odd 'name'\": 1", "$.boxes[0]['odd \\'name\\'']", "is not known here")]
    // Duplicate property.
    [InlineData("\"to\": \"mast\"", "\"to\": \"mast\", ¶\"to\": \"mast\"", "$.runs[2].to", "'to' is written twice in the same object")]
    // Dangling references, with the nearest known name.
    [InlineData("\"cable\": \"ready-made lead\"", "\"cable\": ¶\"ready-made laed\"", "$.runs[3].parts[0].cable", "there is no cable named 'ready-made laed'; did you mean 'ready-made lead'?")]
    [InlineData("\"model\": \"yard recorder\"", "\"model\": ¶\"Yard Recorder\"", "$.devices[3].model", "there is no model named 'Yard Recorder'; did you mean 'yard recorder'?")]
    [InlineData("\"box\": \"odd box\"", "\"box\": ¶\"old box\"", "$.runs[2].from.box", "there is no box named old box; did you mean 'odd box'?")]
    [InlineData("\"junction\": \"slipway\"", "\"junction\": ¶\"slip way\"", "$.runs[1].from.junction", "no run ends at a junction named slip way; did you mean 'slipway'?")]
    [InlineData("\"at\": \"mast\"", "\"at\": ¶\"mats\"", "$.devices[2].at", "no run ends at a junction named mats; did you mean 'mast'?")]
    [InlineData("\"output\": 2", "\"output\": ¶3", "$.runs[2].from.output", "odd box has 2 outputs, there is no output 3")]
    [InlineData("\"other\": { \"box\": \"spare box\"", "\"other\": { \"box\": ¶\"spar box\"", "$.ties[0].other.box", "there is no box named spar box; did you mean 'spare box'?")]
    [InlineData("\"one\": { \"box\": \"yard box\", \"output\": 3", "\"one\": { \"box\": \"yard box\", \"output\": ¶19", "$.ties[0].one.output", "yard box has 16 outputs, there is no output 19")]
    [InlineData("\"one\": { \"box\": \"yard box\", \"output\": 3", "\"one\": { \"box\": \"yard box\", \"output\": ¶0", "$.ties[0].one.output", "output must be from 1")]
    [InlineData("\"other\": { \"box\": \"spare box\", \"output\": 1 }", "\"other\": ¶{ \"box\": \"yard box\", \"output\": 3 }", "$.ties[0].other", "an output is not joined to itself")]
    // What the cable and the connector are made for.
    [InlineData("\"usual\": \"screw terminal\"", "\"usual\": ¶\"screw terminals\"", "$.models[0].connector.usual", "did you mean 'screw terminal'?")]
    [InlineData("\"ratedCurrent\": \"2.5 A\"", "\"ratedCurrent\": ¶\"0 A\"", "$.models[1].connector.ratedCurrent", "ratedCurrent must be above 0 A")]
    [InlineData("\"name\": \"barrel plug of the box camera\"", "\"name\": ¶\"\"", "$.models[1].connector.name", "a name must not be empty")]
    // A run that feeds itself, a junction fed twice.
    [InlineData("{ \"junction\": \"slipway\" }", "{ \"junction\": ¶\"slip end\" }", "$.runs[1].from.junction", "goes round in a ring")]
    [InlineData("\"to\": \"desk\"", "\"to\": ¶\"slip end\"", "$.runs[3].to", "slip end is fed already", "$.devices[3].at")]
    // Breakers and energy.
    [InlineData("\"instantaneousTo\": 11", "\"instantaneousTo\": ¶5", "$.breakers[0].instantaneousTo", "instantaneousTo must be from 6 to 100, but is 5")]
    [InlineData("\"instantaneousFrom\": 6", "\"instantaneousFrom\": ¶0.5", "$.breakers[0].instantaneousFrom", "instantaneousFrom must be from 1 to 100, but is 0.5")]
    [InlineData("\"type\": \"B\"", "\"type\": ¶\"E\"", "$.breakers[1].type", "'E' is not a type of breaker")]
    [InlineData("\"residualCurrent\": \"30 mA\"", "\"residualCurrent\": ¶\"0 mA\"", "$.breakers[1].residualCurrent", "residualCurrent must be above 0 A")]
    [InlineData("\"breaker\": \"shed breaker\"", "\"breaker\": ¶\"shed braker\"", "$.receptacles[0].breaker", "did you mean 'shed breaker'?")]
    [InlineData("\"inrushCurrent\": \"40 A\", \"inrushIntegral\": ", "\"inrushIntegral\": ¶", "$.boxes[0].supply.input.inrushIntegral", "needs its peak current")]
    [InlineData("\"leakageCurrent\": \"0.75 mA\"", "\"leakageCurrent\": ¶\"-1 mA\"", "$.boxes[0].supply.input.leakageCurrent", "leakageCurrent must be at least 0 A")]
    [InlineData("\"standbyPower\": \"500 mW\"", "\"standbyPower\": ¶\"-5 mW\"", "$.boxes[0].supply.input.standbyPower", "standbyPower must be at least 0 W")]
    [InlineData("\"hoursAYear\": \"20 d\"", "\"hoursAYear\": ¶\"200 d\"", "$.conditions[3].hoursAYear", "with it the conditions hold for 8800 h, and a year has 8784 h")]
    [InlineData("\"hoursAYear\": \"4000 h\"", "\"hoursAYear\": ¶\"9000 h\"", "$.conditions[1].hoursAYear", "hoursAYear must be from 0 h to 8784 h")]
    [InlineData("\"perKilowattHour\": 0.32", "\"perKilowattHour\": ¶-1", "$.energyPrice.perKilowattHour", "perKilowattHour must be from 0 to 1000000000")]
    // Unregulated supplies.
    [InlineData("\"openVoltage\": \"16.4 V\"", "\"openVoltage\": ¶\"11 V\"", "$.boxes[3].supply.openVoltage", "openVoltage must be at least 0.1 % above the rated 12 V, at most 120 V, but is 11 V")]
    [InlineData("\"openVoltage\": \"16.4 V\"", "\"openVoltage\": \"16.4 V\", \"ratedPower\": ¶\"12 W\"", "$.boxes[3].supply.ratedPower", "an unregulated output is rated by its current alone")]
    // Converters.
    [InlineData("\"junction\": \"gate\"", "\"junction\": ¶\"gat\"", "$.boxes[5].feed.junction", "no run ends at a junction named gat; did you mean 'gate'?")]
    [InlineData("\"junction\": \"gate\"", "\"junction\": ¶\"\"", "$.boxes[5].feed.junction", "a name must not be empty")]
    [InlineData("\"dropOut\": \"8.2 V\"", "\"dropOut\": ¶\"8.7 V\"", "$.boxes[5].feed.starting.dropOut", "dropOut must be at most the turn-on voltage, 8.6 V")]
    // Reserves.
    [InlineData("\"diodeDrop\": \"0.45 V\"", "\"diodeDrop\": ¶\"2.5 V\"", "$.boxes[6].reserve.diodeDrop", "diodeDrop must be from 0.001 V to 2 V, but is 2.5 V")]
    [InlineData("\"diodeDrop\": \"0.45 V\"", "\"diodeDrop\": ¶\"0.45 A\"", "$.boxes[6].reserve.diodeDrop", "has the wrong unit")]
    [InlineData("\"name\": \"12 V 5 A reserve\", \"output\": \"DC\"", "\"name\": \"12 V 5 A reserve\", \"output\": ¶\"alternating\"", "$.boxes[6].reserve.supply.output", "alternating")]
    // Uninterruptible supplies.
    [InlineData("\"apparentPower\": \"600 VA\"", "\"apparentPower\": ¶\"600 W\"", "$.uninterruptibleSupplies[0].apparentPower", "has the wrong unit: an apparent power is written in VA or kVA")]
    [InlineData("\"apparentPower\": \"600 VA\"", "\"apparentPower\": ¶\"0 VA\"", "$.uninterruptibleSupplies[0].apparentPower", "apparentPower must be above 0 VA")]
    [InlineData("\"crestFactor\": 3", "\"crestFactor\": ¶0.5", "$.uninterruptibleSupplies[0].crestFactor", "crestFactor must be from 1 to 100, but is 0.5")]
    [InlineData("\"crestFactor\": 2.6", "\"crestFactor\": ¶0.5", "$.boxes[0].supply.input.crestFactor", "crestFactor must be from 1 to 100, but is 0.5")]
    [InlineData("\"runtimes\": [ { \"load\": \"100 W\"", "\"runtimes\": ¶[ { \"load\": \"400 W\"", "$.uninterruptibleSupplies[0].runtimes", "in rising load and falling time")]
    [InlineData("\"uninterruptible\": \"office unit\"", "\"uninterruptible\": ¶\"ofice unit\"", "$.receptacles[1].uninterruptible", "did you mean 'office unit'?")]
    // Batteries.
    [InlineData("\"capacity\": \"26 Ah\"", "\"capacity\": ¶\"26 A\"", "$.boxes[0].battery.capacity", "has the wrong unit: a charge is written in Ah or mAh")]
    [InlineData("\"capacity\": \"26 Ah\"", "\"capacity\": ¶\"0 Ah\"", "$.boxes[0].battery.capacity", "capacity must be above 0 Ah")]
    [InlineData("\"cells\": 6", "\"cells\": ¶0", "$.boxes[0].battery.cells", "cells must be from 1 to 400")]
    [InlineData("\"chemistry\": \"valve-regulated lead-acid\"", "\"chemistry\": ¶\"valve regulated lead-acid\"", "$.boxes[0].battery.chemistry", "did you mean 'valve-regulated lead-acid'?")]
    [InlineData("\"backupTime\": \"8 h\"", "\"backupTime\": ¶\"0 h\"", "$.boxes[0].battery.backupTime", "backupTime must be above 0 s")]
    [InlineData("\"rateExponent\": 1.05", "\"rateExponent\": ¶0.9", "$.boxes[4].battery.chemistry.rateExponent", "rateExponent must be from 1 to 2, but is 0.9")]
    [InlineData("\"rateExponent\": 1.05", "\"rateExponent\": ¶\"1.05\"", "$.boxes[4].battery.chemistry.rateExponent", "expected a number, but found text")]
    [InlineData("\"rateExponent\": 1.05", "\"rateExponent\": ¶1e999", "$.boxes[4].battery.chemistry.rateExponent", "impossible number")]
    [InlineData("\"polarization\": \"50 mV\"", "\"polarization\": ¶\"2.7 V\"", "$.boxes[4].battery.chemistry.charge[0].polarization", "polarization must be from 0 V to 2.599")]
    [InlineData("\"lastingResistance\": 2", "\"lastingResistance\": ¶0.5", "$.boxes[4].battery.chemistry.lastingResistance", "lastingResistance must be from 1 to 10")]
    [InlineData("\"highestCharging\": \"3.65 V\"", "\"highestCharging\": ¶\"0 V\"", "$.boxes[4].battery.chemistry.highestCharging", "highestCharging must be above 0 V")]
    [InlineData("\"highestChargingRate\": 0.5", "\"highestChargingRate\": ¶0", "$.boxes[4].battery.chemistry.highestChargingRate", "highestChargingRate must be above 0")]
    [InlineData("\"charge\": [ { \"charge\": \"0 %\", \"voltage\": \"2.6 V\"", "\"charge\": ¶[ { \"charge\": \"0 %\", \"voltage\": \"3.6 V\"", "$.boxes[4].battery.chemistry.charge", "The voltage may not fall as the charge rises")]
    [InlineData("\"charging\": { \"rise\": \"0.75 V\"", "\"charging\": { \"rise\": ¶\"-0.75 V\"", "$.boxes[0].supply.charging.rise", "rise must be at least 0 V")]
    [InlineData("\"overload\": \"unlimited\"", "\"overload\": \"unlimited\", \"charging\": ¶{ \"rise\": \"1 V\", \"current\": \"1 A\" }", "$.boxes[1].supply.charging", "only a DC output charges a battery")]
    // Impossible quantities.
    [InlineData("\"length\": \"180 ft\"", "\"length\": ¶\"-180 ft\"", "$.runs[0].parts[0].length", "length must be at least 0 m, but is -54.86")]
    [InlineData("\"resistance\": \"10 mohm\"", "\"resistance\": ¶\"-10 mohm\"", "$.runs[1].parts[1].resistance", "resistance must be at least 0 Ω, but is -0.01 Ω")]
    [InlineData("\"length\": \"180 ft\"", "\"length\": ¶\"1e999 ft\"", "$.runs[0].parts[0].length", "impossible quantity")]
    [InlineData("\"length\": \"180 ft\"", "\"length\": ¶\"1e-999 ft\"", "$.runs[0].parts[0].length", "impossible quantity")]
    [InlineData("\"length\": \"180 ft\"", "\"length\": ¶\"1e307 km\"", "$.runs[0].parts[0].length", "impossible quantity")]
    [InlineData("\"base\": \"18 W\"", "\"base\": ¶\"1e40 W\"", "$.models[2].draw.base", "impossible quantity")]
    [InlineData("\"base\": \"18 W\"", "\"base\": ¶\"1e-40 W\"", "$.models[2].draw.base", "impossible quantity")]
    [InlineData("\"base\": \"18 W\"", "\"base\": ¶\"9e28 kW\"", "$.models[2].draw.base", "impossible quantity")]
    [InlineData("\"base\": \"18 W\"", "\"base\": ¶\"-18 W\"", "$.models[2].draw.base", "power must be from 0 W to 1000000000 W, but is -18 W")]
    [InlineData("\"motor\": [\"6 W\", \"0.1 A\"]", "\"motor\": [\"6 W\", ¶\"-0.1 A\"]", "$.models[0].draw.motor[1]", "current must be from 0 A")]
    [InlineData("\"current\": \"0.35 A\"", "\"current\": ¶\"-0.35 A\"", "$.models[1].label.current", "current must be from 0 A to 1000000000 A")]
    [InlineData("\"current\": \"0.35 A\"", "\"current\": ¶\"1e300 A\"", "$.models[1].label.current", "current must be from 0 A")]
    [InlineData("\"dropOut\": \"8 V\"", "\"dropOut\": ¶\"9.6 V\"", "$.models[0].starting.dropOut", "dropOut must be at most the turn-on voltage, 9.5 V")]
    [InlineData("\"delay\": \"4 s\"", "\"delay\": ¶\"-4 s\"", "$.models[0].starting.delay", "delay must be at least 0 s, but is -4 s")]
    [InlineData("\"capacitance\": \"470 uF\"", "\"capacitance\": ¶\"20 F\"", "$.models[0].acStage.capacitance", "capacitance must be from 1E-09 F to 10 F")]
    [InlineData("\"rectifier\": \"full-wave\"", "\"rectifier\": ¶\"bridge\"", "$.models[0].acStage.rectifier", "is not a rectifier")]
    [InlineData("\"powerFactor\": \"80 %\"", "\"powerFactor\": ¶\"2 %\"", "$.models[1].acStage.powerFactor", "powerFactor must be from 5 %")]
    [InlineData("\"openVoltage\": \"26 V\"", "\"openVoltage\": ¶\"50 V\"", "$.boxes[1].supply.openVoltage", "openVoltage must be from 24 V to 48 V")]
    [InlineData("\"frequency\": \"60 Hz\"", "\"frequency\": ¶\"5 Hz\"", "$.boxes[1].supply.frequency", "frequency must be from 10 Hz to 1000 Hz")]
    [InlineData("\"openVoltage\": \"26 V\", \"frequency\": \"60 Hz\"", "\"frequency\": ¶\"60 Hz\"", "$.boxes[1].supply.frequency", "only a transformer with an openVoltage has a frequency")]
    [InlineData("\"holdUp\": \"20 ms\"", "\"holdUp\": ¶\"-20 ms\"", "$.models[0].starting.holdUp", "holdUp must be at least 0 s, but is -0.02 s")]
    [InlineData("\"highest\": \"26.4 V\"", "\"highest\": ¶\"20 V\"", "$.models[0].ac.highest", "highest must be above the lowest voltage of 21.6 V")]
    [InlineData("\"setPoint\": \"12.6 V\"", "\"setPoint\": ¶\"15 V\"", "$.boxes[0].supply.setPoint", "setPoint must be from 12 V to 14 V")]
    [InlineData("\"trim\": { \"lowest\": \"12 V\", \"highest\": \"14 V\" }, \"setPoint\": \"12.6 V\"", "\"setPoint\": ¶\"12.6 V\"", "$.boxes[0].supply.setPoint", "A set point needs a trim range")]
    [InlineData("\"ratedCurrent\": \"20 A\", \"tolerance\": \"2 %\"", "\"ratedCurrent\": \"20 A\", \"tolerance\": ¶\"60 %\"", "$.boxes[0].supply.tolerance", "tolerance must be from 0")]
    [InlineData("\"outputs\": 16", "\"outputs\": ¶0", "$.boxes[0].outputs", "outputs must be from 1 to 1000")]
    [InlineData("\"outputLimit\": \"1.1 A\", ", "\"outputLimit\": ¶\"0 A\", ", "$.boxes[0].outputLimit", "outputLimit must be above 0 A")]
    [InlineData("{ \"limit\": \"2 A\" }", "{ \"limit\": ¶\"0 A\" }", "$.boxes[1].outputList[1].limit", "limit must be above 0 A")]
    [InlineData("{ \"limit\": \"1.1 A\", \"protection\": \"quick fuse 2 A\", \"claimedClass\": \"limited power source\" }, { \"limit\": \"2 A\" }", "", "$.boxes[1].outputList", "a box needs at least one output", "", "\"outputList\": [", "\"outputList\": ¶[")]
    // The supply's sheet.
    [InlineData("{ \"at\": \"70 C\", \"share\": \"50 %\" }", "{ \"at\": \"70 C\", \"share\": ¶\"150 %\" }", "$.boxes[1].supply.derating.ambient[2].share", "share must be from 0")]
    [InlineData("\"ambient\": [ { \"at\": \"-20 C\"", "\"ambient\": ¶[ { \"at\": \"60 C\"", "$.boxes[1].supply.derating.ambient", "The points of a curve must rise")]
    [InlineData("\"ambient\": [ { \"at\": \"-20 C\"", "\"ambient\": ¶[ { \"at\": \"-280 C\"", "$.boxes[1].supply.derating.ambient", "ambient must be from -273.15 °C to 1000 °C, but is -280 °C")]
    [InlineData("\"lineVoltage\": [ { \"at\": \"90 V\"", "\"lineVoltage\": ¶[ { \"at\": \"0 V\"", "$.boxes[1].supply.derating.lineVoltage", "lineVoltage must be from")]
    [InlineData("\"above\": \"2000 m\"", "\"above\": ¶\"20 km\"", "$.boxes[1].supply.derating.altitude.above", "above must be from -500 m to 9000 m, but is 20000 m")]
    [InlineData("\"perThousandMeters\": \"5 K\"", "\"perThousandMeters\": ¶\"5 C\"", "$.boxes[1].supply.derating.altitude.perThousandMeters", "has the wrong unit: a rise of temperature is written in K")]
    [InlineData("\"derating\": \"generic enclosed\", \"trim\"", "\"derating\": ¶\"generic closed\", \"trim\"", "$.boxes[0].supply.derating", "did you mean 'generic enclosed'?")]
    [InlineData("\"derating\": \"generic enclosed\", \"trim\"", "\"derating\": ¶[], \"trim\"", "$.boxes[0].supply.derating", "expected an object, or text: a derating: 'generic enclosed', but found a list")]
    [InlineData("\"overload\": \"unlimited\"", "\"overload\": ¶\"unlimted\"", "$.boxes[1].supply.overload", "did you mean 'unlimited'?")]
    [InlineData("\"overload\": \"unlimited\"", "\"overload\": ¶{}", "$.boxes[1].supply.overload", "missing: constantCurrent, foldback and shortCircuit, hiccup, pulse and period or shutdown and within")]
    [InlineData("\"constantCurrent\": \"3.3 A\"", "\"constantCurrent\": ¶\"0 A\"", "$.boxes[2].supply.overload.constantCurrent", "constantCurrent must be above 0 A")]
    [InlineData("\"constantCurrent\": \"3.3 A\"", "\"constantCurrent\": \"3.3 A\", \"hiccup\": ¶\"3 A\"", "$.boxes[2].supply.overload.hiccup", "only one of these can be given")]
    [InlineData("\"shortCircuit\": \"0.4 A\"", "\"shortCircuit\": ¶\"1.4 A\"", "$.boxes[3].supply.overload.shortCircuit", "shortCircuit must be above 0, at most 1.2 A")]
    [InlineData("\"period\": \"1.2 s\"", "\"period\": ¶\"50 ms\"", "$.boxes[0].supply.overload.period", "period must be above 0.1 s")]
    [InlineData("\"within\": \"50 ms\"", "\"within\": ¶\"0 ms\"", "$.boxes[4].supply.overload.within", "within must be above 0 s")]
    [InlineData("\"sourceResistance\": \"20 mohm\"", "\"sourceResistance\": ¶\"0 ohm\"", "$.boxes[0].supply.sourceResistance", "sourceResistance must be from")]
    [InlineData("\"capacitance\": \"4700 uF\"", "\"capacitance\": ¶\"4700 uf\"", "$.boxes[0].supply.capacitance", "; write '4700 uF'")]
    [InlineData("\"capacitance\": \"4700 uF\"", "\"capacitance\": ¶\"-1 F\"", "$.boxes[0].supply.capacitance", "capacitance must be at least 0 F")]
    [InlineData("\"overload\": \"unlimited\"", "\"overload\": \"unlimited\", \"capacitance\": ¶\"1 mF\"", "$.boxes[1].supply.capacitance", "only a DC output has a capacitance")]
    [InlineData("\"rise\": \"30 ms\"", "\"rise\": ¶\"-30 ms\"", "$.boxes[0].supply.rise", "rise must be at least 0 s, but is -0.03 s")]
    [InlineData("\"rise\": \"1 ms\"", "\"rise\": ¶\"-1 ms\"", "$.boxes[1].supply.rise", "rise must be at least 0 s, but is -0.001 s")]
    [InlineData("\"overload\": \"unlimited\"", "\"overload\": \"unlimited\", \"setPoint\": ¶\"25 V\"", "$.boxes[1].supply.setPoint", "an AC output cannot be adjusted")]
    [InlineData("\"inrushCurrent\": \"40 A\"", "\"inrushCurrent\": ¶\"0 A\"", "$.boxes[0].supply.input.inrushCurrent", "inrushCurrent must be above 0 A")]
    [InlineData("{ \"at\": \"20 %\", \"share\": \"80 %\" }", "¶{ \"share\": \"80 %\" }", "$.boxes[0].supply.input.efficiency[0].at", "'at' is missing")]
    [InlineData("\"efficiency\": [ { \"at\": \"20 %\", \"share\": \"80 %\" }", "\"efficiency\": ¶[ { \"at\": \"20 %\", \"share\": \"0 %\" }", "$.boxes[0].supply.input.efficiency", "efficiency must be from")]
    // Altitude and line.
    [InlineData("\"altitude\": \"2300 m\"", "\"altitude\": ¶\"23 km\"", "$.altitude", "altitude must be from -500 m to 9000 m, but is 23000 m")]
    [InlineData("\"lineVoltage\": \"104 V\"", "\"lineVoltage\": ¶\"0 V\"", "$.conditions[0].lineVoltage", "lineVoltage must be from")]
    // Protective devices and terminals.
    [InlineData("\"outputProtection\": \"generic 16 V resettable fuse, 1.10 A\"", "\"outputProtection\": ¶\"generic 16 V resettable fuse, 1.1 A\"", "$.boxes[0].outputProtection", "did you mean 'generic 16 V resettable fuse, 1.10 A'?")]
    [InlineData("\"protection\": \"quick fuse 2 A\"", "\"protection\": ¶\"quik fuse 2 A\"", "$.boxes[1].outputList[0].protection", "there is no protective device named 'quik fuse 2 A'; did you mean 'quick fuse 2 A'?")]
    [InlineData("\"claimedClass\": \"Class 2\"", "\"claimedClass\": ¶\"class 3\"", "$.boxes[0].claimedClass", "a power-limit class")]
    [InlineData("\"claimedClass\": \"limited power source (IEC 60950-1)\"", "\"claimedClass\": ¶\"limited power source (IEC 60950)\"", "$.boxes[2].claimedClass", "did you mean 'limited power source (IEC 60950-1)'?")]
    [InlineData("\"name\": \"odd box\"", "\"name\": \"odd box\", \"claimedClass\": ¶\"Class 2\"", "$.boxes[1].claimedClass", "with outputList, write claimedClass in each output, not in the box")]
    [InlineData("\"leadProtection\": \"none\"", "\"leadProtection\": ¶\"None\"", "$.boxes[2].leadProtection", "did you mean 'none'?")]
    [InlineData("\"name\": \"resettable 0.75 A\"", "\"name\": ¶\"none\"", "$.protectiveDevices[1].name", "the name 'none' is used twice", "$.boxes[3].leadProtection")]
    [InlineData("\"outputs\": 16", "\"outputs\": 18, \"leadProtection\": ¶\"none\"", "$.boxes[0].leadProtection", "only one of these can be given")]
    [InlineData("\"leadProtection\": \"none\"", "\"leadProtection\": \"none\", \"terminals\": ¶{ \"smallest\": \"24 AWG\", \"largest\": \"14 AWG\" }", "$.boxes[2].terminals", "an adapter has no terminals")]
    [InlineData("\"largest\": \"14 AWG\"", "\"largest\": ¶\"26 AWG\"", "$.boxes[0].terminals.largest", "largest must be at least 0.20")]
    [InlineData("\"characteristic\": \"IEC 60127-2 F\"", "\"characteristic\": ¶\"IEC 60127-2 G\"", "$.protectiveDevices[0].fuse.characteristic", "did you mean 'IEC 60127-2 F'?")]
    [InlineData("\"ratedCurrent\": \"2 A\", \"voltageRating\"", "\"ratedCurrent\": ¶\"16 A\", \"voltageRating\"", "$.protectiveDevices[0].fuse.ratedCurrent", "ratedCurrent must be from 0.125 A to 10 A, but is 16 A")]
    [InlineData("\"breakingCapacity\": \"35 A\"", "\"breakingCapacity\": ¶\"-35 A\"", "$.protectiveDevices[0].fuse.breakingCapacity", "breakingCapacity must be above 0 A")]
    [InlineData("\"minimumMeltingIntegral\": \"1.5 A2s\"", "\"minimumMeltingIntegral\": ¶\"1.5 As\"", "$.protectiveDevices[0].fuse.minimumMeltingIntegral", "'1.5 As' is not an I2t in A2s")]
    [InlineData("\"minimumMeltingIntegral\": \"1.5 A2s\"", "\"minimumMeltingIntegral\": ¶\"-1.5 A2s\"", "$.protectiveDevices[0].fuse.minimumMeltingIntegral", "impossible quantity")]
    [InlineData("{ \"at\": \"-20 C\", \"share\": \"110 %\" }", "{ \"at\": \"-20 C\", \"share\": ¶\"900 %\" }", "$.protectiveDevices[0].fuse.rerating.points[0].share", "share must be from 0 % to 500 %, but is 900 %")]
    [InlineData("{ \"at\": \"-20 C\", \"share\": \"110 %\" }, { \"at\": \"25 C\", \"share\": \"100 %\" }, ", "", "$.protectiveDevices[0].fuse.rerating.points", "A curve needs at least two points", "", "\"points\": [", "\"points\": ¶[")]
    [InlineData("\"tripCurrent\": \"1.5 A\"", "\"tripCurrent\": ¶\"0.5 A\"", "$.protectiveDevices[1].resettable.tripCurrent", "tripCurrent must be above 0.75 A")]
    [InlineData("\"maximumVoltage\": \"30 V\"", "\"maximumVoltage\": ¶\"-30 V\"", "$.protectiveDevices[1].resettable.maximumVoltage", "maximumVoltage must be above 0 V")]
    [InlineData("\"maximumCurrent\": \"40 A\"", "\"maximumCurrent\": ¶\"0 A\"", "$.protectiveDevices[1].resettable.maximumCurrent", "maximumCurrent must be above 0 A")]
    [InlineData("\"limit\": \"1.5 A\"", "\"limit\": ¶\"0 A\"", "$.protectiveDevices[2].electronicLimit.limit", "limit must be above 0 A")]
    [InlineData("\"opensNotBefore\": \"20 ms\"", "\"opensNotBefore\": ¶\"51 ms\"", "$.protectiveDevices[2].electronicLimit.opensNotBefore", "opensNotBefore must be from 0 s to 0.05 s")]
    [InlineData("\"retriesAfter\": \"2 s\"", "\"retriesAfter\": ¶\"0 s\"", "$.protectiveDevices[2].electronicLimit.retriesAfter", "retriesAfter must be above 0 s")]
    [InlineData("\"installationMethod\": \"2 current-carrying", "\"installationMethod\": ¶\"two current-carrying", "$.runs[0].installationMethod", "is not an installation method; write '2 current-carrying")]
    [InlineData("\"installationMethod\": \"installation method C\"", "\"installationMethod\": ¶\"installation method D\"", "$.runs[4].installationMethod", "'installation method D' is not an installation method")]
    [InlineData("\"installationMethod\": \"installation method B2, 3 circuits\"", "\"installationMethod\": ¶\"installation method B2, 21 circuits\"", "$.runs[2].installationMethod", "for up to 20 circuits together")]
    [InlineData("\"thermal\": \"generic resettable\"", "\"thermal\": ¶\"generic\"", "$.protectiveDevices[1].resettable.thermal", "is not an ambient curve; did you mean 'generic resettable'?")]
    [InlineData("\"motorsMoving\": 1", "\"motorsMoving\": ¶-1", "$.conditions[1].motorsMoving", "motorsMoving must be at least 0 motors")]
    [InlineData("\"duration\": \"10 h\"", "\"duration\": ¶\"-10 h\"", "$.conditions[1].duration", "duration must be at least 0 s")]
    [InlineData("\"camera\": \"308.15 K\"", "\"camera\": ¶\"-1 K\"", "$.conditions[0].camera", "camera must be from -273.15 °C")]
    [InlineData("\"cable\": \"104 F\"", "\"cable\": ¶\"900 C\"", "$.conditions[0].cable", "outside the range of its conductors")]
    [InlineData("\"box\": \"yard box\", \"output\": 1", "\"box\": \"yard box\", \"output\": ¶0", "$.runs[0].from.output", "output must be from 1")]
    [InlineData("\"rating\": \"15 A\"", "\"rating\": ¶\"0 A\"", "$.receptacles[0].rating", "rating must be above 0 A")]
    [InlineData("\"rating\": \"16 A\", \"share\": \"100 %\"", "\"rating\": \"16 A\", \"share\": ¶\"120 %\"", "$.receptacles[1].share", "share must be from 0 % to 100 %, but is 120 %")]
    [InlineData("\"receptacle\": \"office socket\"", "\"receptacle\": ¶\"office soket\"", "$.boxes[2].receptacle", "did you mean 'office socket'?")]
    [InlineData("\"width\": \"300 mm\"", "\"width\": ¶\"0 mm\"", "$.boxes[0].enclosure.width", "width must be from 0.001 m to 100 m, but is 0 m")]
    [InlineData("\"sunlitArea\": \"0.12 m2\"", "\"sunlitArea\": ¶\"2 m2\"", "$.boxes[0].enclosure.sunlitArea", "sunlitArea must be at most its surface of 0.45 m²")]
    [InlineData("\"wall\": \"painted steel\"", "\"wall\": ¶\"paint steel\"", "$.boxes[0].enclosure.wall", "did you mean 'painted steel'?")]
    [InlineData("\"freeFaces\": [\"front\", \"bottom\"]", "\"freeFaces\": ¶[]", "$.boxes[1].enclosure.freeFaces", "an enclosure needs at least one free face")]
    [InlineData("\"freeFaces\": [\"front\", \"bottom\"]", "\"freeFaces\": [\"front\", ¶\"lid\"]", "$.boxes[1].enclosure.freeFaces[1]", "'lid' is not a face")]
    [InlineData("\"thermalResistance\": \"0.015 m2K/W\"", "\"thermalResistance\": ¶\"-1 m2K/W\"", "$.boxes[1].enclosure.wall.thermalResistance", "thermalResistance must be from 0 m²·K/W to 10 m²·K/W")]
    // Cabinets and inrush.
    [InlineData("\"width\": \"600 mm\"", "\"width\": ¶\"0 mm\"", "$.cabinets[0].enclosure.width", "width must be from 0.001 m to 100 m, but is 0 m")]
    [InlineData("\"cabinet\": \"loft cabinet\" }", "\"cabinet\": ¶\"loft cabinets\" }", "$.boxes[3].cabinet", "there is no cabinet named 'loft cabinets'; did you mean 'loft cabinet'?")]
    [InlineData("\"cabinet\": \"loft cabinet\" }", "\"cabinet\": \"loft cabinet\", \"enclosure\": ¶{ \"width\": \"1 m\", \"height\": \"1 m\", \"depth\": \"1 m\", \"wall\": \"plastic\", \"freeFaces\": \"free in air\" } }", "$.boxes[3].enclosure", "a box in a cabinet has no enclosure of its own")]
    [InlineData("\"freeFaces\": \"on the floor\" } }", "\"freeFaces\": \"on the floor\" } }, { \"name\": ¶\"loft cabinet\", \"enclosure\": { \"width\": \"1 m\", \"height\": \"1 m\", \"depth\": \"1 m\", \"wall\": \"plastic\", \"freeFaces\": \"free in air\" } }", "$.cabinets[1].name", "the name 'loft cabinet' is used twice")]
    [InlineData("\"peak\": \"8 A\"", "\"peak\": ¶\"0 A\"", "$.models[0].inrush.peak", "peak must be from 1E-06 A to 1000000 A")]
    [InlineData("\"duration\": \"2 ms\"", "\"duration\": ¶\"0 ms\"", "$.models[0].inrush.duration", "duration must be from 1E-09 s")]
    [InlineData("\"integral\": \"0.02 A2s\"", "\"integral\": ¶\"0 A2s\"", "$.models[1].inrush.integral", "integral must be from 1E-12 A²·s")]
    [InlineData("{ \"peak\": \"8 A\", \"duration\": \"2 ms\" }", "¶{ \"peak\": \"8 A\" }", "$.models[0].inrush", "missing: duration or integral")]
    [InlineData("\"sun\": \"800 W/m2\"", "\"sun\": ¶\"2001 W/m2\"", "$.conditions[0].sun", "sun must be from 0 W/m² to 2000 W/m²")]
    // Wrong unit, wrong case, no unit, no number.
    [InlineData("\"length\": \"180 ft\"", "\"length\": ¶\"250 W\"", "$.runs[0].parts[0].length", "'250 W' has the wrong unit: a length is written in m, cm, mm, km, ft, in or yd")]
    [InlineData("\"length\": \"180 ft\"", "\"length\": ¶\"180 FT\"", "$.runs[0].parts[0].length", "; write '180 ft'")]
    [InlineData("\"base\": \"18 W\"", "\"base\": ¶\"18 w\"", "$.models[2].draw.base", "; write '18 W'")]
    [InlineData("\"base\": \"18 W\"", "\"base\": ¶\"18 ft\"", "$.models[2].draw.base", "'18 ft' is no draw: write a power in W, mW or kW, a current in A or mA, or a resistance")]
    [InlineData("\"length\": \"180 ft\"", "\"length\": ¶\"180\"", "$.runs[0].parts[0].length", "'180' has no unit")]
    [InlineData("\"length\": \"180 ft\"", "\"length\": ¶\"1,5 m\"", "$.runs[0].parts[0].length", "'1,5 m' has a comma: write a decimal point, as in 1.5 m")]
    [InlineData("\"base\": \"18 W\"", "\"base\": ¶\"1,8 W\"", "$.models[2].draw.base", "'1,8 W' has a comma: write a decimal point, as in 1.5 W")]
    [InlineData("\"material\": \"copper-clad aluminum 10 %\"", "\"material\": ¶\"copper\"", "$.cables[2].material", "did you mean 'annealed copper'?")]
    [InlineData("\"length\": \"180 ft\"", "\"length\": ¶\"98 ft 6 in\"", "$.runs[0].parts[0].length", "has the wrong unit")]
    [InlineData("\"length\": \"180 ft\"", "\"length\": ¶\"long\"", "$.runs[0].parts[0].length", "'long' is not a length: write a number")]
    [InlineData("\"length\": \"180 ft\"", "\"length\": ¶\"180  ft\"", "$.runs[0].parts[0].length", "has the wrong unit")]
    [InlineData("\"size\": \"22 AWG\"", "\"size\": ¶\"99 AWG\"", "$.cables[2].size", "'99 AWG' is not a wire size")]
    [InlineData("\"material\": \"copper-clad aluminum 10 %\"", "\"material\": ¶\"copper-clad alumnium 10 %\"", "$.cables[2].material", "did you mean 'copper-clad aluminum 10 %'?")]
    [InlineData("\"stage\": \"linear\"", "\"stage\": ¶\"Linear\"", "$.models[1].label.stage", "did you mean 'linear'?")]
    [InlineData("\"given\": \"day\"", "\"given\": ¶\"dya\"", "$.conditions[0].given", "did you mean 'day'?")]
    [InlineData("\"also\": [\"heater\"]", "\"also\": [¶\"heating\"]", "$.conditions[2].also[0]", "did you mean 'heater'?")]
    // Missing members, at the object that lacks them.
    [InlineData("{ \"cable\": \"yard pair\", \"length\": \"180 ft\" }", "¶{ \"cable\": \"yard pair\" }", "$.runs[0].parts[0].length", "'length' is missing")]
    [InlineData("\"dropOut\": \"8 V\", \"softStart\": \"unknown\"", "\"dropOut\": \"8 V\"", "$.models[0].starting.softStart", "'softStart' is missing", "", "\"starting\": { \"turnOn\": \"9.5 V\"", "\"starting\": ¶{ \"turnOn\": \"9.5 V\"")]
    [InlineData("\"name\": \"boat shed and yard\",", "", "$.name", "'name' is missing", "", "{\n  \"formatVersion\"", "¶{\n  \"formatVersion\"")]
    [InlineData("\"10 mohm\", \"ratedCurrent\": \"5 A\"", "\"10 mohm\", \"ratedCurrent\": ¶\"0 A\"", "$.runs[1].parts[1].ratedCurrent", "ratedCurrent must be above 0 A")]
    [InlineData("{ \"joint\": \"gel splice\", \"resistance\": \"10 mohm\", \"ratedCurrent\": \"5 A\" }", "¶{}", "$.runs[1].parts[1]", "missing: cable and length, joint and resistance or usualJoint")]
    // Wrong JSON type.
    [InlineData("\"length\": \"180 ft\"", "\"length\": ¶180", "$.runs[0].parts[0].length", "expected text: a length in m, cm, mm, km, ft, in or yd, but found a number")]
    [InlineData("\"outputs\": 16", "\"outputs\": ¶\"18\"", "$.boxes[0].outputs", "expected a whole number, but found text")]
    [InlineData("\"outputs\": 16", "\"outputs\": ¶18.5", "$.boxes[0].outputs", "'18.5' is not a whole number")]
    [InlineData("\"outputs\": 16", "\"outputs\": ¶18000000000", "$.boxes[0].outputs", "is not a whole number")]
    [InlineData("\"preTerminated\": true", "\"preTerminated\": ¶\"yes\"", "$.cables[2].preTerminated", "expected true or false, but found text")]
    [InlineData("\"preTerminated\": true", "\"preTerminated\": ¶null", "$.cables[2].preTerminated", "expected true or false, but found null")]
    [InlineData("\"also\": [\"heater\"]", "\"also\": ¶\"heater\"", "$.conditions[2].also", "expected a list, but found text")]
    [InlineData("{ \"junction\": \"slipway\" }", "¶\"slipway\"", "$.runs[1].from", "expected an object, but found text")]
    [InlineData("\"base\": \"18 W\"", "\"base\": ¶18", "$.models[2].draw.base", "expected a list, or text: a power in W")]
    // Unknown version.
    [InlineData("\"formatVersion\": 1", "\"formatVersion\": ¶2", "$.formatVersion", "version 2 is unknown")]
    // Members that exclude each other.
    [InlineData("\"draw\": { \"base\": \"18 W\" }", "\"draw\": { \"base\": \"18 W\" }, \"label\": ¶{ \"voltage\": \"12 V\", \"current\": \"1 A\", \"stage\": \"linear\" }", "$.models[2].label", "only one of these can be given: draw or label")]
    [InlineData("\"outputs\": 16", "\"adapter\": ¶true, \"outputs\": 18", "$.boxes[0].adapter", "only one of these can be given: outputs and outputLimit or adapter")]
    [InlineData("\"junction\": \"slipway\" }", "\"junction\": ¶\"slipway\", \"box\": \"yard box\" }", "$.runs[1].from.junction", "only one of these")]
    [InlineData("\"on\": [\"infrared\", \"heater\"]", "\"on\": ¶[], \"given\": \"night\"", "$.conditions[3].on", "only one of these can be given: given or on")]
    [InlineData("\"name\": \"frosty night\", ", "", "$.conditions[3].name", "'name' is missing", "", "{ \"on\": [\"infrared\", \"heater\"]", "¶{ \"on\": [\"infrared\", \"heater\"]")]
    [InlineData("\"name\": \"office adapter\", \"adapter\": true", "\"name\": \"office adapter\", \"adapter\": ¶false", "$.boxes[2].adapter", "adapter can only be true")]
    [InlineData("\"motor\": [\"6 W\", \"0.1 A\"]", "\"motor\": [\"6 W\", ¶\"1 kW\"]", "$.models[0].draw.motor[1]", "at most one power")]
    [InlineData("\"motor\": [\"6 W\", \"0.1 A\"]", "\"motor\": ¶[]", "$.models[0].draw.motor", "needs at least one quantity")]
    // Tables, wires in parallel and the usual constructions.
    [InlineData("\"wires\": 2", "\"wires\": ¶0", "$.cables[3].back.wires", "wires must be from 1")]
    [InlineData("\"size\": \"16 AWG\"", "\"size\": ¶\"6.5 mm2\"", "$.cables[3].out.size", "No coated 6.5 mm2 class B stranded conductor is held of NEC Chapter 9 Table 8")]
    [InlineData("\"stranding\": \"class B stranded\", \"material\": \"annealed copper\", \"table\"", "\"stranding\": \"class B stranded\", \"material\": ¶\"aluminum\", \"table\"", "$.cables[3].out.material", "NEC Chapter 9 Table 8, coated is of annealed copper, not of aluminum")]
    [InlineData("\"table\": \"NEC Chapter 9 Table 8, coated\"", "\"table\": ¶\"NEC Chapter 9 Table 8\"", "$.cables[3].out.table", "did you mean 'NEC Chapter 9 Table 8, coated'?")]
    [InlineData("\"usual\": \"category 5e, 4 pairs ganged\"", "\"usual\": ¶\"category 5e, 5 pairs ganged\"", "$.cables[4].usual", "is not a usual cable")]
    [InlineData("\"usual\": \"category 5e, 4 pairs ganged\"", "\"usual\": ¶\"category 5e, 4 pairs ganged\", \"size\": \"18 AWG\"", "$.cables[4].usual", "only one of these can be given")]
    [InlineData("\"usualJoint\": \"screw terminals\"", "\"usualJoint\": ¶\"screws\"", "$.runs[5].parts[1].usualJoint", "is not a usual joint")]
    // Repeated and empty names.
    [InlineData("\"name\": \"odd pair\"", "\"name\": ¶\"yard pair\"", "$.cables[1].name", "the name 'yard pair' is used twice", "$.runs[1].parts[2].cable|$.runs[2].parts[0].cable")]
    [InlineData("\"name\": \"mast camera\"", "\"name\": ¶\"slipway camera\"", "$.devices[2].name", "the name slipway camera is used twice")]
    [InlineData("\"name\": \"frosty night\"", "\"name\": ¶\"day\"", "$.conditions[3].name", "the name day is used twice")]
    [InlineData("\"name\": \"mast camera\"", "\"name\": ¶\" \"", "$.devices[2].name", "a name must not be empty")]
    [InlineData("\"name\": \"mast camera\"", "\"name\": ¶\"mast\\u001b[2Jcamera\"", "$.devices[2].name", "a name must not hold the control or direction character U+001B")]
    [InlineData("\"name\": \"mast camera\"", "\"name\": ¶\"mast\u202Eamerac\"", "$.devices[2].name", "a name must not hold the control or direction character U+202E")]
    [InlineData("\"name\": \"mast camera\"", "\"name\": ¶\"mast\\tcamera\"", "$.devices[2].name", "a name must not hold the control or direction character U+0009")]
    // Nothing to work with.
    [InlineData("{ \"cable\": \"odd pair\", \"length\": \"25 m\" }", "", "$.runs[2].parts", "A run needs at least one length of cable", "", "\"to\": \"mast\", \"parts\": [", "\"to\": \"mast\", \"parts\": ¶[")]
    [InlineData("\"dc\": { \"lowest\": \"11 V\", \"highest\": \"14 V\" },", "", "$.models[2].dc", "needs a DC input, an AC input or both", "", "{ \"name\": \"yard recorder\"", "¶{ \"name\": \"yard recorder\"")]
    public void OneFault_IsFoundAtItsPlace(string piece, string with, string path, string message, string others = "",
        string markPiece = "", string markWith = "")
    {
        string text = Samples.Full;
        if (markPiece.Length > 0)
        {
            text = text.Replace(piece, with, StringComparison.Ordinal);
            (piece, with) = (markPiece, markWith);
        }

        Marked file = Marked.Replace(text, piece, with);
        SiteFileResult result = SiteFile.Read(file.Text);

        Assert.Null(result.Site);
        SiteFileError fault = Assert.Single(result.Errors, f => f.Path == path);
        Assert.Equal(others.Split('|', StringSplitOptions.RemoveEmptyEntries), result.Errors.Where(f => f != fault).Select(f => f.Path));
        Assert.Contains(message, fault.Message, StringComparison.Ordinal);
        Assert.Equal((file.Line, file.Column), (fault.Line, fault.Column));
    }

    [Fact]
    public void NoCondition_IsFound()
    {
        string text = System.Text.RegularExpressions.Regex.Replace(Samples.Minimal, "\"conditions\": \\[.*?\\]", "\"conditions\": []", System.Text.RegularExpressions.RegexOptions.Singleline);
        SiteFileError fault = Assert.Single(SiteFile.Read(text).Errors);
        Assert.Equal("$.conditions: a site needs at least one condition", $"{fault.Path}: {fault.Message}");
    }

    [Fact]
    public void TooDeep_IsFoundWhereItBegins()
    {
        Marked file = Marked.Replace(Samples.Minimal, "\"name\": \"garden gate\"", "\"name\": \"garden gate\", \"x\": [[[¶[[]]]]]");
        SiteFileResult result = SiteFile.Read(file.Text, new SiteFileOptions { MaxDepth = 4 });
        Assert.Contains(result.Errors, f => f.Path == "$.x" && f.Message.Contains("is not known here", StringComparison.Ordinal));
        Assert.Contains(result.Errors, f => f.Path == "$.x" && f.Message == "nested too deep: more than 4 levels" && f.Line == file.Line && f.Column == file.Column);
    }

    [Fact]
    public void ShallowLimit_RefusesEvenKnownParts()
    {
        SiteFileResult result = SiteFile.Read(Samples.Minimal, new SiteFileOptions { MaxDepth = 1 });
        Assert.Null(result.Site);
        Assert.All(result.Errors, f => Assert.Equal("nested too deep: more than 1 levels", f.Message));
        Assert.Equal(6, result.Errors.Count);
    }

    [Fact]
    public void ALetterOutsideTheFirstPlane_CountsTwoColumns()
    {
        Marked file = Marked.Replace(Samples.Minimal, "{ \"name\": \"gate\", \"model\": \"gate camera\"", "{ \"name\": \"g\U0001F6AAte é\", \"model\": ¶\"gone\"");
        SiteFileError fault = Assert.Single(SiteFile.Read(file.Text).Errors);
        Assert.Equal((file.Line, file.Column), (fault.Line, fault.Column));
    }
}
