#!/usr/bin/env dotnet
#:package CamPower@0.1.0
// Which size will do, and how far each goes. Usage: dotnet run choose-gauge.cs -- [length] [power] [supply] [lowest voltage]
using System.Globalization;
using CamPower;
using UnitsNet;
using static System.FormattableString;

CultureInfo invariant = CultureInfo.InvariantCulture;
string Argument(int number, string usual) => args.Length > number ? args[number] : usual;
Length length = Length.Parse(Argument(0, "120 ft"), invariant);
Load camera = Load.ConstantPower(Power.Parse(Argument(1, "9 W"), invariant));
ElectricPotential supply = ElectricPotential.Parse(Argument(2, "12 V"), invariant);
VoltageLimit accepted = VoltageLimit.AtLeast(ElectricPotential.Parse(Argument(3, "10.8 V"), invariant));
Temperature hot = Temperature.FromDegreesCelsius(40);

Console.WriteLine(Invariant($"{camera} over {length}, from {supply}, {accepted}, conductors at {hot}, stranded copper"));
Console.WriteLine($"thinnest AWG: {Run(WireSize.Awg(18)).ThinnestSize(WireSizeSeries.Awg, camera, supply, accepted, hot)}");
Console.WriteLine($"thinnest mm²: {Run(WireSize.Awg(18)).ThinnestSize(WireSizeSeries.SquareMillimeters, camera, supply, accepted, hot)}");
Console.WriteLine();
Console.WriteLine("size     at the camera   goes as far as");
foreach (int gauge in new[] { 22, 20, 18, 16, 14, 12 })
{
    CableRun run = Run(WireSize.Awg(gauge));
    RunResult fed = run.Feed(camera, supply, hot);
    string volts = fed.HasOperatingPoint ? Invariant($"{fed.LoadVoltage.Volts:0.00} V") : "nothing";
    Console.WriteLine(Invariant($"{gauge} AWG   {volts,13}   {run.LongestLength(camera, supply, accepted, hot).Value.Meters,12:0.0} m"));
}

CableRun Run(WireSize size) => new(Cable.Pair(size, Stranding.ClassB, ConductorMaterial.AnnealedCopper), length);
