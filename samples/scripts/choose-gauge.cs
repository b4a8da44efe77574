#!/usr/bin/env dotnet
#:package CamPower.Files@0.1.0
// Which size will do, and how far each goes. Lengths come out in the unit that the length was given in.
using System.Globalization;
using CamPower;
using CamPower.Files;
using UnitsNet;
using static System.FormattableString;

const string Usage = "Usage: dotnet run choose-gauge.cs -- [length] [power] [supply] [lowest voltage], such as \"120 ft\" \"9 W\" \"12 V\" \"10.8 V\"";
if (args.Length > 4)
{
    Console.Error.WriteLine($"There are {args.Length} arguments; put quotes around each. {Usage}");
    return 3;
}

try
{
    Print(Argument<Length>(0, "120 ft"), Argument<Power>(1, "9 W"), Argument<ElectricPotential>(2, "12 V"), Argument<ElectricPotential>(3, "10.8 V"));
    return 0;
}
catch (Exception e) when (e is FormatException or ArgumentException)
{
    Console.Error.WriteLine($"{e.Message}\n{Usage}");
    return 3;
}

// Written as in a site file: no comma, and a unit that the message names.
T Argument<T>(int number, string usual)
    where T : struct, IQuantity => QuantityText.Read<T>(args.Length > number ? args[number] : usual);

static void Print(Length length, Power power, ElectricPotential supply, ElectricPotential lowest)
{
    Load camera = Load.ConstantPower(power);
    VoltageLimit accepted = VoltageLimit.AtLeast(lowest);
    Temperature hot = Temperature.FromDegreesCelsius(40);
    CableRun Run(WireSize size) => new(Cable.Pair(size, Stranding.ClassB, ConductorMaterial.AnnealedCopper), length);
    CableRun any = Run(WireSize.Awg(18));

    Console.WriteLine(Invariant($"{camera} over {length}, from {supply}, {accepted}, conductors at {hot}, stranded copper"));
    Console.WriteLine($"smallest AWG: {any.SmallestSize(WireSizeSeries.Awg, camera, supply, accepted, hot)}");
    Console.WriteLine($"smallest mm²: {any.SmallestSize(WireSizeSeries.SquareMillimeters, camera, supply, accepted, hot)}");
    Console.WriteLine();
    Console.WriteLine("size     at the camera   goes as far as");
    foreach (int gauge in new[] { 22, 20, 18, 16, 14, 12 })
    {
        CableRun run = Run(WireSize.Awg(gauge));
        RunResult fed = run.Feed(camera, supply, hot);
        string volts = fed.HasOperatingPoint ? Invariant($"{fed.LoadVoltage.Volts:0.00} V") : "nothing";
        Length reach = run.LongestLength(camera, supply, accepted, hot).Value.ToUnit(length.Unit);
        Console.WriteLine(Invariant($"{gauge} AWG   {volts,13}   {reach.Value,11:0.0} {Length.GetAbbreviation(length.Unit, CultureInfo.InvariantCulture)}"));
    }
}
